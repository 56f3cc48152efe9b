namespace CalcService.Engine.Findings;

/// <summary>Who can do something about a finding, so that it reaches those people and nobody else.</summary>
public enum Actor
{
    /// <summary>Those who prepare, mix, pour and load.</summary>
    Crew,

    /// <summary>Whoever leads the work.</summary>
    Lead,

    /// <summary>Whoever judges an end, a socket or a record.</summary>
    Inspector,

    /// <summary>Whoever buys, quotes and keeps papers.</summary>
    Office,

    /// <summary>Whoever calls the service.</summary>
    Integrator,
}
