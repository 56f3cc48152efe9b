namespace CalcService.Api.Contract;

/// <summary>The version of the contract, which only grows within 1.</summary>
public static class ContractVersion
{
    /// <summary>As answers name it.</summary>
    public const string Text = "0.9";

    public static Version Current { get; } = new(Text);
}
