using System.Text.Json;
using CalcService.Api.Contract;
using CalcService.Api.Reading;

namespace CalcService.Api.Capabilities.Verifications;

/// <summary>
/// Walks an answer as computed now, in the order of the contract, beside the archived one. Of what counts the first difference is kept;
/// what else isn't as computed, members that nobody knows and words that can't be compared are gathered.
/// </summary>
/// <param name="knowsWords">Whether the archived answer is of the language and the contract that answers have now.</param>
/// <param name="contract">The version of the contract that the archived answer has: later members are none of it.</param>
internal sealed class AnswerComparison(bool knowsWords, Version contract)
{
    /// <summary>What was found.</summary>
    public Differences Found { get; } = new(knowsWords);

    /// <summary>Whether a number or time was near and not the same.</summary>
    private bool IsRounded { get; set; }

    public void Walk(ObjectShape shape, JsonElement archived, JsonElement computed, string pointer) =>
        Value(shape, archived, computed, new(pointer, Standing.Counts));

    private void Value(Shape shape, JsonElement archived, JsonElement computed, Place at)
    {
        if (computed.ValueKind == JsonValueKind.Null || archived.ValueKind == JsonValueKind.Null)
        {
            Require(archived.ValueKind == computed.ValueKind, at, computed);
            return;
        }

        switch (shape)
        {
            case ObjectShape known:
                Members(known, archived, computed, at);
                break;
            case ListShape list:
                Items(list, archived, computed, at);
                break;
            case QuantityShape:
                Quantity(archived, computed, at);
                break;
            case NumberShape:
                Near(Tolerance.OfNumbers(archived, computed), at, computed);
                break;
            // Of a time that doesn't count no more is asked than that it is one.
            case InstantShape when at.Standing != Standing.Counts:
                Require(archived.ValueKind == JsonValueKind.String && archived.TryGetDateTimeOffset(out _), at, computed);
                break;
            case InstantShape:
                NearTime(Tolerance.OfTimes(archived, computed), at, computed);
                break;
            default:
                Require(JsonElement.DeepEquals(archived, computed), at, computed);
                break;
        }
    }

    private void Members(ObjectShape shape, JsonElement archived, JsonElement computed, Place at)
    {
        if (archived.ValueKind != JsonValueKind.Object)
        {
            Require(false, at, computed);
            return;
        }

        var members = shape.Members.Where(member => member.IsIn(contract)).ToArray();
        foreach (var member in members)
        {
            var counts = member.IsWords && Halts(shape, computed);
            var (place, now) = (counts ? at.To(member) : at.Of(member), computed.GetProperty(member.Name));
            if (!archived.TryGetProperty(member.Name, out var then))
            {
                var standing = member.IsDigested || counts ? at.Standing : Standing.Beside;
                Found.Add(place with { Standing = standing }, "It is not in the archived answer");
            }
            // The digest holds for the last digit too, so that near numbers have another.
            else if (IsRounded && shape.Type == typeof(AnswerProvenance) && member.Property.Name == nameof(AnswerProvenance.ResultDigest))
            {
                Found.AddUnread(place);
            }
            else
            {
                Value(member.Shape, then, now, place);
            }
        }

        Found.AddUnknown(UnknownNames.In(archived, [.. members.Select(member => member.Name)], at.Pointer));
    }

    /// <summary>
    /// Whether it is a stop or a missing fact. People go by its words, so that they are held to the letter, whatever language or contract
    /// the answer claims.
    /// </summary>
    private static bool Halts(ObjectShape shape, JsonElement computed) =>
        shape.Type == typeof(AnswerFinding) && computed.GetProperty("severity").GetString() is ("stop" or "unknown");

    private void Items(ListShape shape, JsonElement archived, JsonElement computed, Place at)
    {
        if (archived.ValueKind != JsonValueKind.Array)
        {
            Require(false, at, computed);
            return;
        }

        var (then, now) = (archived.EnumerateArray().ToArray(), computed.EnumerateArray().ToArray());
        // Beside what counts, the list is the one place to name: its items have moved.
        for (var i = 0; i < Math.Min(then.Length, now.Length) && (then.Length == now.Length || at.Standing == Standing.Counts); i++)
        {
            Value(shape.Item, then[i], now[i], at with { Pointer = $"{at.Pointer}/{i}" });
        }

        if (then.Length != now.Length)
        {
            Found.Add(at, FormattableString.Invariant($"It has {then.Length} items; computed again it has {now.Length}"));
        }
    }

    private void Quantity(JsonElement archived, JsonElement computed, Place at)
    {
        if (archived.ValueKind != JsonValueKind.Object
            || !archived.TryGetProperty("value", out var value) || !archived.TryGetProperty("unit", out var unit))
        {
            Require(false, at, computed);
            return;
        }

        var (now, of) = (computed.GetProperty("value"), computed.GetProperty("unit"));
        Near(Tolerance.OfNumbers(value, now), at with { Pointer = at.Pointer + "/value" }, now);
        Require(JsonElement.DeepEquals(unit, of), at with { Pointer = at.Pointer + "/unit" }, of);
        Found.AddUnknown(UnknownNames.In(archived, ["value", "unit"], at.Pointer));
    }

    /// <summary>A minute may be another machine's rounding, and may be a release that somebody moved: it is said.</summary>
    private void NearTime(Nearness nearness, Place at, JsonElement computed)
    {
        Near(nearness, at, computed);
        if (nearness == Nearness.Near)
        {
            Require(false, at with { Standing = Standing.Beside }, computed);
        }
    }

    private void Near(Nearness nearness, Place at, JsonElement computed)
    {
        IsRounded |= nearness == Nearness.Near;
        Require(nearness != Nearness.Other, at, computed);
    }

    /// <summary>Only what this service computed is told; what stands in the archive stands there.</summary>
    private void Require(bool isSame, Place at, JsonElement computed)
    {
        if (!isSame)
        {
            var isShown = computed.ValueKind is not (JsonValueKind.Object or JsonValueKind.Array);
            Found.Add(at, isShown ? $"Computed again it is {computed.GetRawText()}" : "Computed again it is another");
        }
    }
}
