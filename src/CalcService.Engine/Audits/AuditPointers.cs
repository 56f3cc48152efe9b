namespace CalcService.Engine.Audits;

/// <summary>Names of the members that findings of an audit point to.</summary>
internal static class AuditPointers
{
    public const string AuditedOn = "/auditedOn";
    public const string Sheet = "/compound";
    public const string SheetDoses = "/compound/sheet/doses";
    public const string SheetPotLife = "/compound/sheet/potLife";
    public const string SheetGelTimes = "/compound/sheet/gelTimes";
    public const string SheetFullStrength = "/compound/sheet/fullStrength";
    public const string Number = "/record/number";
    public const string End = "/record/end";
    public const string Rope = "/rope";
    public const string RopeCertificate = "/rope/certificate/number";
    public const string RopeStrength = "/rope/certificate/breakingForce";
    public const string SocketId = "/socket/id";
    public const string SocketCertificate = "/socket/certificate";
    public const string Basket = "/socket/basket";
    public const string SocketMetal = "/socket/material/kind";
    public const string SocketStrength = "/socket/breakingForce";
    public const string ProofRating = "/socket/proofRating";
    public const string Air = "/conditions/air";
    public const string AirSeries = "/conditions/air/series";
    public const string Steel = "/conditions/steelTemperature";
    public const string Compound = "/conditions/compoundTemperature";
    public const string Humidity = "/conditions/relativeHumidity";
    public const string IgnitionSource = "/conditions/ignitionSource";
    public const string Kits = "/mix/kits";
    public const string Doses = "/mix/dosesPerKit";
    public const string DoseAdded = "/mix/doseAdded";
    public const string Baskets = "/mix/baskets";
    public const string Volume = "/mix/volume";
    public const string GelSeenIn = "/gelSeenIn";
    public const string Hardness = "/hardness";
    public const string HardnessValue = "/hardness/value";
    public const string ProofAsked = "/proof/asked";
    public const string RatedLoad = "/proof/ratedLoad";
    public const string AskedLoad = "/proof/askedLoad";
    public const string ProofLoad = "/proof/load";
    public const string Seating = "/proof/seating";
    public const string SeatingPlace = "/proof/seatingReadAt";
    public const string UnderLoad = "/proof/readUnderLoad";
    public const string WireSlip = "/proof/wireSlip";
    public const string Creep = "/proof/creepUnderHold";
    public const string Cracks = "/proof/cracks";
    public const string Asymmetry = "/proof/asymmetry";
    public const string People = "/people";

    public static string Time(string member) => "/times/" + member;

    public static string Look(string member) => "/looks/" + member;
}
