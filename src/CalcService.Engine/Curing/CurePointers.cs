namespace CalcService.Engine.Curing;

/// <summary>Names of the members that findings of a cure point to.</summary>
internal static class CurePointers
{
    public const string Sheet = "/compound";
    public const string PouringRange = "/compound/sheet/pouring";
    public const string GelTimes = "/compound/sheet/gelTimes";
    public const string FullStrength = "/compound/sheet/fullStrength";
    public const string LowestCure = "/compound/sheet/lowestCure";
    public const string MinimumHold = "/compound/sheet/minimumHold";
    public const string PeakLimit = "/compound/sheet/peakLimit";
    public const string Hardness = "/compound/sheet/hardness";
    public const string SheetDoses = "/compound/sheet/doses";
    public const string Doses = "/doses";
    public const string MixedAt = "/mixedAt";
    public const string Air = "/conditions/air";
    public const string AirSeries = "/conditions/air/series";
    public const string Steel = "/conditions/steelTemperature";
    public const string Compound = "/conditions/compoundTemperature";
    public const string PourTime = "/pourTime";
    public const string Observations = "/observations";
    public const string Ends = "/ends";
    public const string Shifts = "/shop/shifts";
}
