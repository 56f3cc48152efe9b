namespace CalcService.Engine.Compounds;

/// <summary>How fast a compound cures.</summary>
public interface ICureRate
{
    /// <summary>dα/dt at a degree of cure and a temperature, 1/s.</summary>
    double RatePerS(double degree, double temperatureK);
}
