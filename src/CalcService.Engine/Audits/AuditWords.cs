namespace CalcService.Engine.Audits;

/// <summary>What somebody did.</summary>
public enum WorkRole
{
    /// <summary>Not said.</summary>
    Unknown,

    /// <summary>Led the work.</summary>
    Lead,

    /// <summary>Prepared rope and socket.</summary>
    Preparer,

    /// <summary>Mixed the compound.</summary>
    Mixer,

    /// <summary>Poured it.</summary>
    Pourer,

    /// <summary>Looked at the work and released it.</summary>
    Inspector,

    /// <summary>Loaded the end to its proof load.</summary>
    ProofTester,

    /// <summary>Was there for the owner or a surveyor.</summary>
    Witness,
}

/// <summary>What came of a look at the work.</summary>
public enum LookResult
{
    /// <summary>Not said.</summary>
    Unknown,

    /// <summary>In order.</summary>
    Pass,

    /// <summary>Not in order.</summary>
    Fail,
}
