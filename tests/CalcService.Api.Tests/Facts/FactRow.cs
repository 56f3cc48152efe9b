using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace CalcService.Api.Tests.Facts;

/// <summary>A fact that a stop rule reads, and what the answer is where nothing else is wrong.</summary>
/// <param name="Pointer">The member that states it.</param>
/// <param name="Bad">A bad value, as JSON.</param>
/// <param name="BadDecision">The decision with it.</param>
/// <param name="Code">The finding that it raises.</param>
/// <param name="Absent">The decision without the member.</param>
/// <param name="IfUnknown">The decision where it is said to be unknown; null where that can't be said.</param>
/// <param name="Asked">The finding that asks for it; null where nobody asks.</param>
internal sealed record FactRow(string Pointer, string Bad, string BadDecision, string Code, string Absent, string? IfUnknown, string? Asked)
{
    public const string Stop = "doNotProceed", Unknown = "undetermined", Care = "proceedWithCare", Proceed = "proceed";

    /// <summary>When it counts, in the words of the page after the member.</summary>
    public string When { get; init; } = "";

    /// <summary>What makes it count: members set to JSON, or taken out.</summary>
    public IReadOnlyList<(string Pointer, string? Json)> Given { get; init; } = [];

    /// <summary>The decision for a plan where it is asked for.</summary>
    public string Plan { get; init; } = Care;

    /// <summary>The decision for a quote where a pour would ask for it.</summary>
    public string Quote { get; init; } = Proceed;

    /// <summary>The member that the asking finding names, where it isn't the fact's own.</summary>
    public string? AskedAt { get; init; }

    public string UnknownJson { get; init; } = "\"unknown\"";

    /// <summary>The finding where it is said to be unknown, where another asks for what is absent.</summary>
    public string? UnknownAsked { get; init; }

    /// <summary>The fact as the page has it.</summary>
    public string Cell => $"`{Regex.Replace(Pointer[1..], "/[0-9]+/", "[].").Replace('/', '.')}`{When}";

    /// <summary>A request in which the fact counts and is bad.</summary>
    public JsonObject BadRequest(JsonObject good) => Given
        .Aggregate(good, (request, one) => one.Json is null
            ? request.Without(one.Pointer)
            : request.With(one.Pointer, JsonNode.Parse(one.Json)))
        .With(Pointer, JsonNode.Parse(Bad));
}
