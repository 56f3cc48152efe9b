namespace CalcService.Engine.Findings;

/// <summary>What an answer is for: it decides which facts have to be stated.</summary>
public enum Purpose
{
    /// <summary>The work is being done, or was: every fact behind a stop rule counts.</summary>
    Pour,

    /// <summary>The work lies ahead: what it makes itself is a hold point.</summary>
    Plan,

    /// <summary>Money and materials: nobody has to have looked or measured.</summary>
    Quote,
}
