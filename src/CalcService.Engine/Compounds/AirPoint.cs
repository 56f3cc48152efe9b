namespace CalcService.Engine.Compounds;

/// <summary>A temperature of the air at a time.</summary>
public sealed record AirPoint(DateTimeOffset At, double Kelvins);
