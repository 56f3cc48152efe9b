using System.Text.Json.Nodes;
using CalcService.Api.Tests.Examples;
using CalcService.Api.Tests.Fixtures;
using CalcService.Engine.Provenance;

namespace CalcService.Api.Tests.Traces;

/// <summary>
/// Each step of a trace can be worked out by who reads it: the shown formula with the shown numbers gives the shown value.
/// </summary>
public sealed class TraceArithmeticTests(Service service)
{
    /// <summary>Formulas that hold in units of their own, with that of their result.</summary>
    private static readonly Dictionary<string, string> Empirical = new(StringComparer.Ordinal)
    {
        ["dew-point"] = "°C", ["frost-point"] = "°C", ["evaporation-rate"] = "g/s", ["seizing-count"] = "",
    };

    /// <summary>Formulas that this can't hold, each with the reason.</summary>
    private static readonly Dictionary<string, string> NotHeld = new(StringComparer.Ordinal)
    {
        ["sheet-release"] = "an integral along temperatures that the trace doesn't show",
        ["gel-age"] = "an integral; in no trace",
        ["cup-time"] = "an integral; in no trace",
        ["cure-time"] = "an integral; in no trace",
        ["cure-ceiling"] = "in no trace: it stands in integrals",
        ["adiabatic-rise"] = "in no trace: it stands in integrals",
        ["tolerance-factor"] = "quantiles of a batch's statistics, which have no trace",
        ["individuals-limit"] = "a batch's statistics, which have no trace",
        ["moving-range-deviation"] = "a batch's statistics, which have no trace",
        ["ewma"] = "a batch's statistics, which have no trace",
        ["ewma-width"] = "a batch's statistics, which have no trace",
    };

    [Fact]
    public async Task Shown_formula_with_the_shown_numbers_gives_the_shown_value()
    {
        var held = new HashSet<string>(StringComparer.Ordinal);
        var wrong = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (path, body) in Requests())
        {
            foreach (var units in new[] { "metric", "inch" })
            {
                body["units"] = units;
                var reply = await service.PostAsync(path + "?detail=full", body);
                foreach (var step in reply.Json["trace"]?.AsArray() ?? [])
                {
                    var formula = FormulaCatalogue.All.Values.Single(one => $"{one.Symbol} = {one.Expression}" == (string?)step!["formula"]
                        && one.Name == (string?)step["name"]);
                    held.Add(formula.Id);
                    if (!NotHeld.ContainsKey(formula.Id) && Against(formula, step!) is { } against)
                    {
                        wrong.TryAdd(formula.Id, against);
                    }
                }
            }
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong.Select(one => $"{one.Key}: {one.Value}")));
        Assert.Equal(FormulaCatalogue.All.Keys.Order(StringComparer.Ordinal), held.Union(NotHeld.Keys).Order(StringComparer.Ordinal));
    }

    /// <summary>
    /// What is wrong with a step; null for nothing. It may be off by what the rounding of its numbers and of its value does.
    /// </summary>
    private static string? Against(FormulaAttribute formula, JsonNode step)
    {
        var text = ((string)step["substituted"]!).Replace(" in g/s", "", StringComparison.Ordinal);
        var inItsUnits = Empirical.TryGetValue(formula.Id, out var unit);
        try
        {
            var (value, half) = Shown(step["value"]!, unit);
            var read = new Arithmetic(text, inItsUnits);
            var isLimit = double.IsNaN(read.Value());
            double Worked(int moved) => new Arithmetic(text, inItsUnits, moved, isLimit).Value();
            var worked = Worked(-1);
            var room = half + Enumerable.Range(0, read.Numbers).Sum(moved => Math.Abs(Worked(moved) - worked));
            return Math.Abs(worked - value) <= room * 1.01 ? null : $"{text} = {worked}, shown {value} +- {room}";
        }
        catch (FormatException unreadable)
        {
            return unreadable.Message;
        }
    }

    /// <summary>The value in SI, or in the unit that the formula gives, and half a unit of its last digit.</summary>
    private static (double Value, double Half) Shown(JsonNode quantity, string? unit)
    {
        var shown = (double)quantity["value"]!;
        double In(double value) => unit switch
        {
            null => Arithmetic.Si(value, (string)quantity["unit"]!),
            "°C" => Arithmetic.Si(value, (string)quantity["unit"]!) - 273.15,
            "g/s" => Arithmetic.Si(value, (string)quantity["unit"]!) * 1e3,
            _ => value,
        };
        return (In(shown), Math.Abs(In(shown + Arithmetic.HalfDigit(shown)) - In(shown)));
    }

    private static IEnumerable<(string Path, JsonNode Body)> Requests() =>
    [
        .. HttpExample.All.Where(example => example.Status == 200 && OperationExamples.All.Any(operation => operation.Path == example.Path))
            .Select(example => (example.Path, JsonNode.Parse(example.Body!)!)),
        // The changes to the pour plan bring frost.
        .. OperationExamples.All.SelectMany((operation, i) =>
        operation.Requests.Take(i == 0 ? int.MaxValue : 1).Select(request => (operation.Path, (JsonNode)request))),
        (OperationExamples.All[0].Path, WithWeighedSocket(OperationExamples.All[0].Good.DeepClone())),
    ];

    /// <summary>What a socket weighs and a compound takes up tells how warm the cone is once the heat has evened out.</summary>
    private static JsonNode WithWeighedSocket(JsonNode plan)
    {
        plan["ends"]![0]!["socket"]!["mass"] = new JsonObject { ["value"] = 3, ["unit"] = "kg" };
        plan["compound"]!["sheet"]!["cured"]!["specificHeat"] = new JsonObject { ["value"] = 1200, ["unit"] = "J/(kg.K)" };
        return plan;
    }
}
