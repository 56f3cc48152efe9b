using System.Globalization;
using System.Text.Json;
using CalcService.Api.Reading;
using CalcService.Api.Units;

namespace CalcService.Api.Capabilities.Verifications;

/// <summary>
/// Walks what a digest of an answer covers, in the order of the contract, to the first member that differs: numbers by more than one unit
/// of their last digit, times by more than a minute, all else at all. Members that nobody knows are left aside.
/// </summary>
internal sealed class AnswerComparison
{
    private static readonly TimeSpan Minute = TimeSpan.FromMinutes(1);

    private readonly bool _isExact;

    private AnswerComparison(bool isExact) => _isExact = isExact;

    /// <param name="shape">What is compared.</param>
    /// <param name="archived">The archived answer.</param>
    /// <param name="computed">The answer as computed now.</param>
    /// <param name="isExact">Whether numbers and times have to be the same to the last digit.</param>
    public static (string Pointer, string Reason)? First(ObjectShape shape, JsonElement archived, JsonElement computed, bool isExact = false) =>
        new AnswerComparison(isExact).Value(shape, archived, computed, "");

    private (string Pointer, string Reason)? Value(Shape shape, JsonElement archived, JsonElement computed, string pointer)
    {
        if (computed.ValueKind == JsonValueKind.Null || archived.ValueKind == JsonValueKind.Null)
        {
            return computed.ValueKind == archived.ValueKind ? null : Differs(pointer, computed);
        }

        return shape switch
        {
            ObjectShape known => Members(known, archived, computed, pointer),
            ListShape list => Items(list, archived, computed, pointer),
            QuantityShape => Quantity(archived, computed, pointer),
            NumberShape or DecimalShape => Number(archived, computed, pointer),
            InstantShape => Instant(archived, computed, pointer),
            AnyShape => null,
            _ => JsonElement.DeepEquals(archived, computed) ? null : Differs(pointer, computed),
        };
    }

    private (string Pointer, string Reason)? Members(ObjectShape shape, JsonElement archived, JsonElement computed, string pointer)
    {
        if (archived.ValueKind != JsonValueKind.Object)
        {
            return Differs(pointer, computed);
        }

        foreach (var member in shape.Members.Where(member => member.IsDigested))
        {
            var (at, now) = ($"{pointer}/{member.Name}", computed.GetProperty(member.Name));
            if (!archived.TryGetProperty(member.Name, out var then))
            {
                return (at, "It is not in the archived answer");
            }

            if (Value(member.Shape, then, now, at) is { } difference)
            {
                return difference;
            }
        }

        return null;
    }

    private (string Pointer, string Reason)? Items(ListShape shape, JsonElement archived, JsonElement computed, string pointer)
    {
        if (archived.ValueKind != JsonValueKind.Array)
        {
            return Differs(pointer, computed);
        }

        var (then, now) = (archived.EnumerateArray().ToArray(), computed.EnumerateArray().ToArray());
        for (var i = 0; i < Math.Min(then.Length, now.Length); i++)
        {
            if (Value(shape.Item, then[i], now[i], $"{pointer}/{i}") is { } difference)
            {
                return difference;
            }
        }

        return then.Length == now.Length ? null : (pointer, string.Create(CultureInfo.InvariantCulture, $"It has {then.Length} items; computed again it has {now.Length}"));
    }

    private (string Pointer, string Reason)? Quantity(JsonElement archived, JsonElement computed, string pointer)
    {
        if (archived.ValueKind != JsonValueKind.Object || !archived.TryGetProperty("value", out var value) || !archived.TryGetProperty("unit", out var unit))
        {
            return Differs(pointer, computed);
        }

        return Number(value, computed.GetProperty("value"), pointer + "/value")
            ?? (JsonElement.DeepEquals(unit, computed.GetProperty("unit")) ? null : Differs(pointer + "/unit", computed.GetProperty("unit")));
    }

    private (string Pointer, string Reason)? Number(JsonElement archived, JsonElement computed, string pointer) =>
        archived.ValueKind == JsonValueKind.Number && IsNear(archived.GetDouble(), computed.GetDouble()) ? null : Differs(pointer, computed);

    /// <summary>Within one unit of the last digit that answers carry.</summary>
    private bool IsNear(double one, double other)
    {
        if (one == other || _isExact)
        {
            return one == other;
        }

        var digit = Math.Floor(Math.Log10(Math.Max(Math.Abs(one), Math.Abs(other)))) - Rounding.AnswerDigits + 1;
        return Math.Abs(one - other) <= Math.Pow(10, digit) * (1 + 1e-9);
    }

    private (string Pointer, string Reason)? Instant(JsonElement archived, JsonElement computed, string pointer) =>
        archived.ValueKind == JsonValueKind.String && archived.TryGetDateTimeOffset(out var then) && computed.TryGetDateTimeOffset(out var now) && (then - now).Duration() <= (_isExact ? TimeSpan.Zero : Minute)
            ? null : Differs(pointer, computed);

    /// <summary>Only what this service computed is told; what stands in the archive stands there.</summary>
    private static (string Pointer, string Reason)? Differs(string pointer, JsonElement computed) =>
        (pointer, computed.ValueKind is JsonValueKind.Object or JsonValueKind.Array ? "Computed again it is another" : $"Computed again it is {computed.GetRawText()}");
}
