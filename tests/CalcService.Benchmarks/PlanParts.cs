using System.Text.Json;
using CalcService.Api.Answers;
using CalcService.Api.Calculations;
using CalcService.Api.Capabilities.Pouring;
using CalcService.Api.Contract;
using CalcService.Api.Hosting;
using CalcService.Api.Reading;
using CalcService.Api.Writing;
using CalcService.Engine;
using CalcService.Engine.Pouring;
using Microsoft.Extensions.DependencyInjection;

namespace CalcService.Benchmarks;

/// <summary>The parts of the way from a request's bytes to the answer's, each by itself.</summary>
internal sealed class PlanParts
{
    private static readonly ObjectShape Shape = ShapeTable.Of<PourPlanRequest>();
    private static readonly Resolver Resolver = Work.Services.GetRequiredService<Resolver>();

    private readonly bool _full;
    private readonly Resolved<PourPlanRequest> _asked;
    private readonly Outcome<Engine.Pouring.PourPlanResult> _outcome;
    private readonly Answer<Api.Capabilities.Pouring.PourPlanResult> _answer;

    public PlanParts(bool full)
    {
        _full = full;
        _asked = Resolve();
        _outcome = Calculate();
        _answer = Answer();
    }

    public object Whole() => Work.Capability.Process(Work.Body, _full, CancellationToken.None).Body;

    /// <summary>The parts one after another: what the processor's caches make of them alone shows against it.</summary>
    public void InTurn()
    {
        Resolve();
        Calculate();
        Answer();
    }

    /// <summary>Reads and checks.</summary>
    public static ReadResult Read() => BodyReader.Read(Work.Body, Shape, Work.Checks);

    /// <summary>Reads, checks, finds what is named, and writes the canonical request.</summary>
    public static Resolved<PourPlanRequest> Resolve() => Resolver.Resolve<PourPlanRequest>(Work.Body, asOf: null).Resolved!;

    public Outcome<Engine.Pouring.PourPlanResult> Calculate() => PourPlan.Calculate(
        PourPlanMapping.ToEngine(_asked.Request, _asked.Sheet), _asked.Rules, new Budget(Budget.DefaultSteps, _full),
        CancellationToken.None);

    /// <summary>Maps the numbers back, fills the texts, makes the digests.</summary>
    public Answer<Api.Capabilities.Pouring.PourPlanResult> Answer() => AnswerMaker.Make(
        "pour-plans", _outcome, (result, units) => PourPlanMapping.ToContract(result, _asked.Compound!.Sheet.Currency, units), _asked,
        _full, DateTimeOffset.UnixEpoch);

    public int Write()
    {
        using var answer = ShapeWriter.WriteAnswer(_answer);
        return answer.Written.Length;
    }

    public byte[] FrameworkWrite() => JsonSerializer.SerializeToUtf8Bytes(_answer, ApiJson.Options);

    /// <summary>What is compared with: the framework's own parsing of the request into the same records.</summary>
    public static PourPlanRequest? FrameworkRead() => JsonSerializer.Deserialize<PourPlanRequest>(Work.Body, ApiJson.Options);
}
