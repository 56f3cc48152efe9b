namespace CalcService.Engine.Pouring.TakeOff;

/// <summary>Names of the members that a take-off points to.</summary>
internal static class QuotePointers
{
    public const string SeizingWire = "/quote/seizing/wireDiameter";
    public const string SeizingCount = "/quote/seizing/count";
    public const string SealPerEnd = "/quote/sealPerEnd";
    public const string CleanerPerEnd = "/quote/cleanerPerEnd";
    public const string HourlyRate = "/quote/hourlyRate";
    public const string TaskTimes = "/quote/taskTimes/";
    public const string Prices = "/quote/prices/";

    public static string KitCost(int kit) => $"/compound/sheet/kits/{kit}/cost";
}
