namespace CalcService.Engine.Findings;

/// <summary>A caution that is always said with an answer of this kind. A calculation lists its own beside those that all share.</summary>
public sealed record SafetyNote(string Code, string Text)
{
    public static SafetyNote WhoDecides { get; } = new("who-decides",
        "The compound's data sheet, the rope and socket makers' instructions, local codes and a competent person stand above this answer.");

    public static SafetyNote TestLoad { get; } = new("test-load", "Nobody stands under or in line with a test load.");
}
