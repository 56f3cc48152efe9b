namespace CalcService.Engine.Compounds;

/// <summary>An activation energy with the band it may lie in, J/mol.</summary>
public sealed record ActivationEnergyBand(double LowJPerMol, double ExpectedJPerMol, double HighJPerMol);

/// <summary>A gel time with its band, s.</summary>
/// <param name="EarliestS">Nothing gels before.</param>
/// <param name="ExpectedS">What the sheet's rows give.</param>
/// <param name="LatestS">Gelled by then.</param>
public readonly record struct GelBand(double EarliestS, double ExpectedS, double LatestS);
