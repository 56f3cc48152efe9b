namespace CalcService.Engine.Numerics.Conduction;

/// <summary>How a run came to its end.</summary>
public enum ConductionEnd
{
    /// <summary>The time asked for is reached.</summary>
    Reached,

    /// <summary>Who watched the steps had seen enough.</summary>
    Stopped,

    /// <summary>The budget is spent.</summary>
    OutOfBudget,

    /// <summary>No step is small enough: the body runs away.</summary>
    RanAway,
}

/// <summary>How close a step must come.</summary>
/// <param name="TemperatureK">Error of a step in any node's temperature.</param>
/// <param name="Progress">Error of a step in any node's progress.</param>
public sealed record ConductionTolerance(double TemperatureK, double Progress);

/// <summary>Where the heat went, J.</summary>
/// <param name="ReleasedJ">Set free by the reaction.</param>
/// <param name="StoredJ">Kept by the body.</param>
/// <param name="LostJ">Given to the air.</param>
public sealed record EnergyBalance(double ReleasedJ, double StoredJ, double LostJ)
{
    /// <summary>What doesn't add up, over the heat released, or over the heat moved where nothing reacts.</summary>
    public double RelativeError =>
        Math.Abs(ReleasedJ - StoredJ - LostJ) / Math.Max(ReleasedJ > 0 ? ReleasedJ : Math.Max(Math.Abs(StoredJ), Math.Abs(LostJ)),
        double.Epsilon);
}

/// <summary>What a run came to.</summary>
public sealed record ConductionRun(ConductionEnd End, double TimeS, int Steps, int Rejected, EnergyBalance Balance);
