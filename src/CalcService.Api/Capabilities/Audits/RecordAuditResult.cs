using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Engine.Audits;
using CalcService.Engine.Provenance;

namespace CalcService.Api.Capabilities.Audits;

/// <summary>What the record of an end comes to.</summary>
public sealed record RecordAuditResult
{
    /// <summary>
    /// One to one with the decision: accepted → proceed, acceptedWithRemarks → proceedWithCare, incomplete → undetermined, refused →
    /// doNotProceed.
    /// </summary>
    public required RecordStanding Standing { get; init; }

    /// <summary>What the record has to hold.</summary>
    public required RecordItems Items { get; init; }

    /// <summary>Every check with its evidence, always in the same order.</summary>
    public required IReadOnlyList<CheckResult> Checks { get; init; }

    /// <summary>Numbers of the plan, computed again from the record.</summary>
    public required RecomputedNumbers Recomputed { get; init; }
}

/// <summary>What a record has to hold.</summary>
public sealed record RecordItems
{
    /// <summary>How many items were asked for.</summary>
    public required int Asked { get; init; }

    /// <summary>Pointers to those that are missing.</summary>
    public required IReadOnlyList<string> Missing { get; init; }
}

/// <summary>Numbers of the plan, computed again; null where the record doesn't hold enough.</summary>
public sealed record RecomputedNumbers
{
    /// <summary>Resin in the basket, from basket and rope.</summary>
    public required RecomputedVolume ResinVolume { get; init; }

    /// <summary>What the kits of the mix gave.</summary>
    [Kind(QuantityKind.Volume)]
    public required Quantity? Mixed { get; init; }

    /// <summary>What its baskets needed, with the allowance.</summary>
    [Kind(QuantityKind.Volume)]
    public required Quantity? Needed { get; init; }

    /// <summary>Doses for each kit by the sheet.</summary>
    public required int? DosesPerKit { get; init; }

    /// <summary>Pot life by dose and temperature in the vessel.</summary>
    [Kind(QuantityKind.Duration)]
    public required Quantity? PotLife { get; init; }

    /// <summary>Dew point of the air at mixing.</summary>
    [Kind(QuantityKind.Temperature)]
    public required Quantity? DewPoint { get; init; }

    /// <summary>Frost point, where the dew point lies below 0 °C.</summary>
    [Kind(QuantityKind.Temperature)]
    public required Quantity? FrostPoint { get; init; }

    /// <summary>The gel that was seen beside the one to be expected.</summary>
    public required RecomputedGel Gel { get; init; }

    /// <summary>The end had to rest until then.</summary>
    public required DateTimeOffset? UndisturbedUntil { get; init; }

    /// <summary>It was not to be loaded until then.</summary>
    public required DateTimeOffset? LoadFrom { get; init; }

    /// <summary>Least test load that counts.</summary>
    [Kind(QuantityKind.Force)]
    public required Quantity? LeastTestLoad { get; init; }

    /// <summary>Highest test load that is meant.</summary>
    [Kind(QuantityKind.Force)]
    public required Quantity? MostTestLoad { get; init; }

    /// <summary>Least seating to be expected under the test load.</summary>
    [Kind(QuantityKind.Length)]
    public required Quantity? LeastSeating { get; init; }

    /// <summary>Most seating to be expected under the test load.</summary>
    [Kind(QuantityKind.Length)]
    public required Quantity? MostSeating { get; init; }
}

/// <summary>Resin in the basket over the tolerance of its sizes.</summary>
public sealed record RecomputedVolume
{
    /// <summary>Least.</summary>
    [Kind(QuantityKind.Volume)]
    public required Quantity? Low { get; init; }

    /// <summary>At the sizes as given.</summary>
    [Kind(QuantityKind.Volume)]
    public required Quantity? Nominal { get; init; }

    /// <summary>Most.</summary>
    [Kind(QuantityKind.Volume)]
    public required Quantity? High { get; init; }
}

/// <summary>Gel times from mixing.</summary>
public sealed record RecomputedGel
{
    /// <summary>Earliest by the sheet.</summary>
    [Kind(QuantityKind.Duration)]
    public required Quantity? Earliest { get; init; }

    /// <summary>Expected by the sheet.</summary>
    [Kind(QuantityKind.Duration)]
    public required Quantity? Expected { get; init; }

    /// <summary>Latest by the sheet.</summary>
    [Kind(QuantityKind.Duration)]
    public required Quantity? Latest { get; init; }

    /// <summary>As seen.</summary>
    [Kind(QuantityKind.Duration)]
    public required Quantity? Observed { get; init; }

    /// <summary>
    /// Age at the gel that was seen, in expected gel times: 1 where it came as expected. The statistics of a batch are about this number.
    /// </summary>
    [Kind(QuantityKind.Count)]
    public required Quantity? Ratio { get; init; }
}
