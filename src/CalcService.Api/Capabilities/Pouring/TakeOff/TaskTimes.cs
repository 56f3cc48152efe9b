using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Engine.Provenance;

namespace CalcService.Api.Capabilities.Pouring.TakeOff;

/// <summary>Time of one person for each task. What is absent is assumed; the assumptions say what.</summary>
public sealed record TaskTimes
{
    /// <summary>Time to set up the place and take the readings, once for the job; if absent, 30 min.</summary>
    [Kind(QuantityKind.Duration, 0, 10080, "min")]
    public Quantity? SetUp { get; init; }

    /// <summary>Time to measure and seize, for each end; if absent, 15 min.</summary>
    [Kind(QuantityKind.Duration, 0, 10080, "min")]
    public Quantity? MeasureAndSeize { get; init; }

    /// <summary>Time to cut and open the broom, for each end; if absent, 20 min.</summary>
    [Kind(QuantityKind.Duration, 0, 10080, "min")]
    public Quantity? CutAndOpen { get; init; }

    /// <summary>Time to clean and dry the broom and the basket, for each end; if absent, 15 min.</summary>
    [Kind(QuantityKind.Duration, 0, 10080, "min")]
    public Quantity? CleanAndDry { get; init; }

    /// <summary>Time to position and seal, for each end; if absent, 15 min.</summary>
    [Kind(QuantityKind.Duration, 0, 10080, "min")]
    public Quantity? PositionAndSeal { get; init; }

    /// <summary>Time to mix and pour, for each end; if absent, as the plan tells.</summary>
    [Kind(QuantityKind.Duration, 0, 10080, "min")]
    public Quantity? MixAndPour { get; init; }

    /// <summary>Time to wait until the last cone has gelled, once for the job; if absent, the latest gel time in the cone.</summary>
    [Kind(QuantityKind.Duration, 0, 10080, "min")]
    public Quantity? WaitForGel { get; init; }

    /// <summary>Time to take off the seal, clean and look over, for each end; if absent, 10 min.</summary>
    [Kind(QuantityKind.Duration, 0, 10080, "min")]
    public Quantity? Finish { get; init; }

    /// <summary>Time to load to proof, for each end; if absent, the task is left out.</summary>
    [Kind(QuantityKind.Duration, 0, 10080, "min")]
    public Quantity? ProofLoad { get; init; }

    /// <summary>Time to write the record, for each end; if absent, 10 min.</summary>
    [Kind(QuantityKind.Duration, 0, 10080, "min")]
    public Quantity? Record { get; init; }
}

/// <summary>Money for an hour of a task, where it differs from the hourly rate.</summary>
public sealed record TaskRates
{
    /// <summary>For an hour to set up the place and take the readings.</summary>
    public decimal? SetUp { get; init; }

    /// <summary>For an hour to measure and seize.</summary>
    public decimal? MeasureAndSeize { get; init; }

    /// <summary>For an hour to cut and open the broom.</summary>
    public decimal? CutAndOpen { get; init; }

    /// <summary>For an hour to clean and dry the broom and the basket.</summary>
    public decimal? CleanAndDry { get; init; }

    /// <summary>For an hour to position and seal.</summary>
    public decimal? PositionAndSeal { get; init; }

    /// <summary>For an hour to mix and pour.</summary>
    public decimal? MixAndPour { get; init; }

    /// <summary>For an hour to wait until the last cone has gelled.</summary>
    public decimal? WaitForGel { get; init; }

    /// <summary>For an hour to take off the seal, clean and look over.</summary>
    public decimal? Finish { get; init; }

    /// <summary>For an hour to load to proof.</summary>
    public decimal? ProofLoad { get; init; }

    /// <summary>For an hour to write the record.</summary>
    public decimal? Record { get; init; }
}
