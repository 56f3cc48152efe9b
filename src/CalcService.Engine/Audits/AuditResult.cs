using CalcService.Engine.Compounds;
using CalcService.Engine.Findings;
using CalcService.Engine.Sockets;

namespace CalcService.Engine.Audits;

/// <summary>What the record comes to, one to one with the decision.</summary>
public enum RecordStanding
{
    /// <summary>It proves its end.</summary>
    Accepted,

    /// <summary>It does, with the remarks that the findings make.</summary>
    AcceptedWithRemarks,

    /// <summary>It lacks something.</summary>
    Incomplete,

    /// <summary>It tells of something that should not have been.</summary>
    Refused,
}

/// <summary>The gel that was seen beside the one to be expected, in seconds from mixing.</summary>
/// <param name="Expected">By the sheet, with its band.</param>
/// <param name="ObservedS">As recorded.</param>
/// <param name="Ratio">Age at the gel that was seen, in expected gel times: 1 where it came as expected.</param>
public sealed record AuditedGel(GelBand? Expected, double? ObservedS, double? Ratio);

/// <summary>Numbers of the plan, computed again from what the record holds. Null where it doesn't hold enough.</summary>
public sealed record RecomputedPlan
{
    public BasketFill? Fill { get; init; }

    /// <summary>What the kits of the mix gave.</summary>
    public double? MixedM3 { get; init; }

    /// <summary>What its baskets needed, with the allowance.</summary>
    public double? NeededM3 { get; init; }

    /// <summary>Doses for each kit by the sheet.</summary>
    public int? DosesPerKit { get; init; }

    public double? PotLifeS { get; init; }

    public double? DewPointK { get; init; }

    public double? FrostPointK { get; init; }

    public AuditedGel Gel { get; init; } = new(null, null, null);

    /// <summary>Not to be moved until then.</summary>
    public DateTimeOffset? UndisturbedUntil { get; init; }

    /// <summary>Not to be loaded until then.</summary>
    public DateTimeOffset? LoadFrom { get; init; }

    /// <summary>Test loads that count.</summary>
    public double? LeastTestLoadN { get; init; }

    public double? MostTestLoadN { get; init; }

    /// <summary>Seating to be expected under the test load.</summary>
    public double? SeatingLowM { get; init; }

    public double? SeatingHighM { get; init; }
}

/// <summary>An audit. Whatever could not be computed is null and has its finding.</summary>
public sealed record AuditResult
{
    public required RecordStanding Standing { get; init; }

    /// <summary>Items that the record has to hold.</summary>
    public required int ItemsAsked { get; init; }

    /// <summary>Items that it doesn't, by their members.</summary>
    public required IReadOnlyList<string> Missing { get; init; }

    public required IReadOnlyList<CheckRow> Checks { get; init; }

    public required RecomputedPlan Recomputed { get; init; }
}
