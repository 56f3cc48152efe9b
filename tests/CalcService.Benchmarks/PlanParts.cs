using System.Text.Json;
using CalcService.Api.Answers;
using CalcService.Api.Capabilities.Pouring;
using CalcService.Api.Contract;
using CalcService.Api.Hosting;
using CalcService.Api.Reading;
using CalcService.Api.Units;
using CalcService.Api.Writing;
using CalcService.Engine;
using CalcService.Engine.Pouring;
using CalcService.Engine.Rules;
using CompoundSheet = CalcService.Engine.Compounds.CompoundSheet;

namespace CalcService.Benchmarks;

/// <summary>The parts of the way from a request's bytes to the answer's, each by itself.</summary>
internal sealed class PlanParts
{
    private static readonly ObjectShape Shape = ShapeTable.Of<PourPlanRequest>();

    private readonly bool _full;
    private readonly PourPlanValidator _validator = new(Work.Compounds);
    private readonly PourPlanRequest _request;
    private readonly PourPlanRequest _resolved;
    private readonly CompoundSheet _sheet;
    private readonly Outcome<Engine.Pouring.PourPlanResult> _outcome;
    private readonly byte[] _canonical;
    private readonly Answer<Api.Capabilities.Pouring.PourPlanResult> _answer;

    public PlanParts(bool full)
    {
        _full = full;
        _request = (PourPlanRequest)Read().Value!;
        _sheet = Work.Compounds.EngineSheetOf(_request.Compound);
        _resolved = _request with { Units = null, Compound = new Compound { Sheet = Work.Compounds.SheetOf(_request.Compound) } };
        _outcome = Calculate();
        _canonical = Canonical();
        _answer = Answer();
    }

    public object Whole() => Work.Capability.Process(Work.Body, _full, CancellationToken.None).Body;

    /// <summary>The parts one after another: what the processor's caches make of them alone shows against it.</summary>
    public void InTurn()
    {
        Read();
        Validate();
        Calculate();
        Canonical();
        Answer();
    }

    public ReadResult Read() => BodyReader.Read(Work.Body, Shape);

    public bool Validate() => _validator.Validate(_request).IsValid;

    public Outcome<Engine.Pouring.PourPlanResult> Calculate() => PourPlan.Calculate(
        PourPlanMapping.ToEngine(_request, _sheet), Editions.Known.Current, new Budget(Budget.DefaultSteps, _full), CancellationToken.None);

    public byte[] Canonical()
    {
        using var written = ShapeWriter.Write(JsonForm.Canonical, Shape, _resolved, Work.Compounds);
        return written.Written.ToArray();
    }

    /// <summary>Maps the numbers back, fills the texts, makes the digests.</summary>
    public Answer<Api.Capabilities.Pouring.PourPlanResult> Answer() => AnswerMaker.Make(
        _outcome, (result, units) => PourPlanMapping.ToContract(result, _sheet.Name, units),
        new("pour-plans", Editions.Known.Current, UnitSystem.Metric, _canonical, Work.Compounds.ProvenanceOf(_request.Compound), _full,
            DateTimeOffset.UnixEpoch));

    public int Write()
    {
        using var answer = ShapeWriter.WriteAnswer(_answer);
        return answer.Written.Length;
    }

    public byte[] FrameworkWrite() => JsonSerializer.SerializeToUtf8Bytes(_answer, ApiJson.Options);

    /// <summary>What is compared with: the framework's own parsing of the request into the same records.</summary>
    public PourPlanRequest? FrameworkRead() => JsonSerializer.Deserialize<PourPlanRequest>(Work.Body, ApiJson.Options);
}
