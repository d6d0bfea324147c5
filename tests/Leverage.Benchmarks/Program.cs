using BenchmarkDotNet.Running;
using Leverage.Benchmarks;

if (args is ["outcomes"])
{
    OutcomeTiming.Print();
    return;
}

BenchmarkSwitcher.FromTypes([typeof(TighteningBenchmark), typeof(OutcomeBenchmark)]).Run(args);
