namespace CalcService.Engine.Findings;

/// <summary>A caution that is always said with an answer of this kind.</summary>
public sealed record SafetyNote(string Code, string Text);
