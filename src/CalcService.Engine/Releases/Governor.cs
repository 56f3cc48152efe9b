namespace CalcService.Engine.Releases;

/// <summary>What sets a time of the cure.</summary>
public static class Governor
{
    public const string Air = "air";
    public const string Steel = "steel";
    public const string Compound = "compound";
    public const string ObservedGel = "observedGel";
    public const string MinimumHold = "minimumHold";
    public const string Sheet = "sheet";
    public const string LeastCuredPlace = "leastCuredPlace";
    public const string Cooling = "cooling";
}
