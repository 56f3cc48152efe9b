namespace CalcService.Engine.Compounds;

/// <summary>When a dose goes into the mix.</summary>
public enum DoseMoment
{
    /// <summary>Somebody was asked and doesn't know.</summary>
    Unknown,

    /// <summary>Into the resin, stirred in before the hardener.</summary>
    BeforeHardener,

    /// <summary>After the hardener.</summary>
    AfterHardener,
}
