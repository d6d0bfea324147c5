namespace Leverage.Requests;

/// <summary>What turns the nut.</summary>
public enum ToolKind
{
    /// <summary>A socket on a bar.</summary>
    Socket,

    /// <summary>A ring spanner.</summary>
    Ring,

    /// <summary>An open spanner.</summary>
    Open,

    /// <summary>A hexagon key.</summary>
    Key,
}
