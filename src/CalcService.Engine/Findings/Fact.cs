namespace CalcService.Engine.Findings;

/// <summary>A fact that may not be known. Where a request doesn't give it at all it is null, which is not the same as unknown.</summary>
public enum Fact
{
    /// <summary>Somebody was asked and doesn't know.</summary>
    Unknown,

    /// <summary>It is not so.</summary>
    No,

    /// <summary>It is so.</summary>
    Yes,
}
