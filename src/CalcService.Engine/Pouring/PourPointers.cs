namespace CalcService.Engine.Pouring;

/// <summary>Names of the members that findings of a pour point to.</summary>
internal static class PourPointers
{
    public const string Air = "/conditions/airTemperature";
    public const string Steel = "/conditions/steelTemperature";
    public const string Compound = "/conditions/compoundTemperature";
    public const string Humidity = "/conditions/relativeHumidity";
    public const string Room = "/conditions/room";
    public const string PourTime = "/crew/pourTime";
    public const string Mixers = "/crew/mixers";
    public const string Uncertainty = "/conditions/uncertainty";
    public const string IgnitionSource = "/conditions/ignitionSource";
    public const string Workplace = "/conditions/workplace";
    public const string Jurisdiction = "/conditions/jurisdiction";
    public const string Place = "/conditions/place";
    public const string MixingFactor = "/conditions/mixingFactor";
    public const string AirSpeed = "/conditions/airSpeed";
    public const string Sheet = "/compound";
    public const string PouringRange = "/compound/sheet/pouring";
    public const string Doses = "/compound/sheet/doses";
    public const string GelTimes = "/compound/sheet/gelTimes";
    public const string PotLife = "/compound/sheet/potLife";
    public const string Mixing = "/compound/sheet/mixing";
    public const string Vapour = "/compound/sheet/vapour";
    public const string StorageRange = "/compound/sheet/storage";
    public const string Reference = "/reference";
    public const string PourAt = "/pourAt";
    public const string Stock = "/stock";
    public const string Ends = "/ends";
    public const string ReadAt = "/conditions/readAt";
    public const string IssuedOn = "/compound/sheet/issuedOn";
    public const string PotLifeVolume = "/compound/sheet/potLifeVolume";
    public const string DosePerKit = "/dose/perKit";
    public const string DoseAdded = "/dose/added";
    public const string OwnAirLimits = "/conditions/airLimits";
}
