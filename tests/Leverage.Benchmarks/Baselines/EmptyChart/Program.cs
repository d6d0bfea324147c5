// An empty figure of the size the program draws, written to a file.
new ScottPlot.Plot().SavePng(args[0], 1200, 800);
