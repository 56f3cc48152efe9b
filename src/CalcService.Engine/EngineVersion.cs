namespace CalcService.Engine;

/// <summary>The version of the computation.</summary>
public static class EngineVersion
{
    /// <summary>Changes only when a number in an answer can; docs/changed-numbers.md says which.</summary>
    public const string Current = "2";
}
