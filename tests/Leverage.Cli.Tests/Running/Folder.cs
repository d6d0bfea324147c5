using System.Runtime.CompilerServices;

namespace Leverage.Cli.Tests.Running;

/// <summary>Tests run beside copies of the shared files, so that the examples of the help find theirs.</summary>
internal static class Folder
{
    [ModuleInitializer]
    internal static void Enter() => Environment.CurrentDirectory = AppContext.BaseDirectory;
}
