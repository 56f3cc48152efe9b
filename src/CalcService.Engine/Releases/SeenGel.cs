using CalcService.Engine.Compounds;

namespace CalcService.Engine.Releases;

/// <summary>A gel that somebody saw, in seconds from mixing.</summary>
/// <param name="Seconds">When it had gelled.</param>
/// <param name="StillSoftS">The last look at which it had not; null where nobody looked before.</param>
/// <param name="Place">Where.</param>
public sealed record SeenGel(double Seconds, double? StillSoftS, GelPlace Place)
{
    /// <summary>When it gelled, as far as the looks tell.</summary>
    public double MiddleS => StillSoftS is { } soft ? (soft + Seconds) / 2 : Seconds;

    /// <summary>Whether it stands for a cone: what is seen in a cup or in the vessel warms itself.</summary>
    public bool IsOfCone => Place is GelPlace.Cone or GelPlace.Mouth;

    /// <summary>Whether it warmed itself.</summary>
    public bool IsOfMix => Place is GelPlace.Cup or GelPlace.Vessel;
}
