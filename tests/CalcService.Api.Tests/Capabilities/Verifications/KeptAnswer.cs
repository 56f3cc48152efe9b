using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CalcService.Api.Calculations;
using CalcService.Api.Capabilities.Verifications;
using CalcService.Api.Writing;
using CalcService.Engine;
using CalcService.Engine.Verifications;

namespace CalcService.Api.Tests.Capabilities.Verifications;

/// <summary>An answer with what its request gives again, so that thousands of forgeries of it cost one computation.</summary>
/// <param name="Calculation">The calculation.</param>
/// <param name="Answer">The answer as it was sent.</param>
/// <param name="Again">The answer computed again, without and in full detail.</param>
internal sealed record KeptAnswer(ICapability Calculation, JsonObject Answer, (object Plain, object Full) Again)
{
    /// <summary>What a verification says of this answer in place of its own.</summary>
    public Outcome<Comparison> Verify(JsonObject answer)
    {
        var archived = new ArchivedAnswer(JsonElement.Parse(answer.ToJsonString()));
        var (_, against) = archived.ComputedBy(Calculation.Operation, Engine.Rules.Editions.Known);
        var again = archived.IsFull ? Again.Full : Again.Plain;
        return RecordVerification.Of(against ?? archived.Compare(Calculation, again), new Budget(1));
    }

    /// <summary>The answer without and in full detail.</summary>
    public static IEnumerable<KeptAnswer> Of(ICapability calculation, JsonObject request)
    {
        var (plain, full) = (Process(calculation, request, full: false), Process(calculation, request, full: true));
        return [new(calculation, Written(plain), (plain, full)), new(calculation, Written(full), (plain, full))];
    }

    private static object Process(ICapability calculation, JsonObject request, bool full) =>
        calculation.Process(Encoding.UTF8.GetBytes(request.ToJsonString()), full, TestContext.Current.CancellationToken).Body;

    private static JsonObject Written(object body)
    {
        using var sent = ShapeWriter.WriteAnswer(body);
        return JsonNode.Parse(sent.Written.Span)!.AsObject();
    }
}
