using CalcService.Api.Answers;
using CalcService.Api.Units;
using CalcService.Engine.Findings;

namespace CalcService.Api.Contract;

/// <summary>A check.</summary>
public sealed record CheckResult
{
    /// <summary>Its name.</summary>
    public required string Id { get; init; }

    /// <summary>What came of it.</summary>
    public required CheckOutcome Outcome { get; init; }

    /// <summary>What was found, where it is a number.</summary>
    public required Quantity? Measured { get; init; }

    /// <summary>What is allowed, where it is a number.</summary>
    public required Quantity? Limit { get; init; }

    /// <summary>Where the limit or the rule comes from.</summary>
    [Undigested]
    public required AnswerSource Source { get; init; }

    /// <summary>Pointers to members of the request that would decide it.</summary>
    public required IReadOnlyList<string> Missing { get; init; }

    /// <summary>The rule behind it, explained at /v1/rules/{code}.</summary>
    public required string Rule { get; init; }

    public static CheckResult From(CheckRow check, UnitSystem units) => new()
    {
        Id = check.Id,
        Outcome = check.Outcome,
        Measured = Quantity.From(check.Measured, units),
        Limit = Quantity.From(check.Limit, units),
        Source = AnswerMaker.Source(check.Source),
        Missing = check.Missing,
        Rule = check.Rule,
    };
}
