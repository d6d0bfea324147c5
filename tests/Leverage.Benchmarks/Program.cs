using BenchmarkDotNet.Running;
using Leverage.Benchmarks;

if (args is ["outcomes"])
{
    OutcomeTiming.Print();
    return;
}

if (args is ["pick"])
{
    PickTiming.Print();
    return;
}

if (args is ["big-chest"])
{
    Console.Write(BigChest.Text());
    return;
}

BenchmarkSwitcher.FromTypes([typeof(TighteningBenchmark), typeof(OutcomeBenchmark)]).Run(args);
