using System.Text.Json;
using CalcService.Api.Contract;
using CalcService.Api.Reading;
using CalcService.Api.Units;
using CalcService.Api.Writing;
using CalcService.Engine;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Api.Answers;

/// <summary>Everything that an answer is made of besides its numbers.</summary>
public sealed record AnswerContext(
    string Operation, RuleBook Rules, UnitSystem Units, ReadOnlyMemory<byte> CanonicalInput, CompoundProvenance? Compound, bool Full,
        DateTimeOffset ComputedAt);

/// <summary>Wraps an outcome in the envelope that all calculations share.</summary>
public static class AnswerMaker
{
    /// <summary>Version of the contract; it only grows within 1.</summary>
    public const string ContractVersion = "0.9";

    /// <summary>The language of all words.</summary>
    public const string Language = "en";

    private static readonly string[] Actors = [.. Enum.GetNames<Actor>().Select(JsonNamingPolicy.CamelCase.ConvertName)];

    private static readonly string[] BasisNames = [.. Enum.GetNames<Basis>().Select(JsonNamingPolicy.CamelCase.ConvertName)];

    /// <param name="outcome">What the engine computed.</param>
    /// <param name="toContract">Maps the numbers to a system of units.</param>
    /// <param name="context">The rest.</param>
    public static Answer<TResult> Make<TEngine, TResult>(Outcome<TEngine> outcome, Func<TEngine, UnitSystem, TResult> toContract, AnswerContext context)
        where TResult : class
    {
        var answer = new Answer<TResult>
        {
            Decision = outcome.Decision,
            Result = toContract(outcome.Result, context.Units),
            Findings = Findings(outcome.Findings, context.Rules, context.Units),
            SafetyNotes = outcome.SafetyNotes.Select(note => new AnswerSafetyNote { Code = note.Code, Text = note.Text }).ToArray(),
            Assumptions = Assumptions(outcome.Assumptions, context.Units),
            Trace = outcome.Trace.Select(step => Step(step, context.Units)).ToArray(),
            Provenance = new()
            {
                RecordId = RecordId(context),
                Operation = context.Operation,
                Contract = ContractVersion,
                Rules = context.Rules.Edition,
                Language = Language,
                Engine = EngineVersion.Current,
                Compound = context.Compound,
                InputDigest = Digest.Of(context.CanonicalInput.Span),
                ResultDigest = Digest.Pending,
                ComputedAt = context.ComputedAt,
            },
            Input = context.Full ? JsonElement.Parse(context.CanonicalInput.Span) : null,
        };
        var isMetric = context.Units == UnitSystem.Metric;
        // The digest covers metric numbers, whatever is answered in.
        using var metric = new OutlinedObject(ShapeTable.Of<Answer<TResult>>(), isMetric ? answer : answer with
        {
            Result = toContract(outcome.Result, UnitSystem.Metric),
            Findings = Findings(outcome.Findings, context.Rules, UnitSystem.Metric),
            Assumptions = Assumptions(outcome.Assumptions, UnitSystem.Metric),
            // No digest covers these: they needn't be written for it.
            SafetyNotes = [],
            Trace = [],
            Input = null,
        });
        var digest = metric.Digest();
        return answer with
        {
            Provenance = answer.Provenance with { ResultDigest = digest },
            Written = isMetric ? metric.SentWith("provenance", "resultDigest", digest) : default,
        };
    }

    /// <summary>Who can do something about a finding, in the contract's word.</summary>
    public static string Name(Actor actor) => Actors[(int)actor];

    public static AnswerSource Source(Source source) => new()
    {
        Document = source.Document,
        Clause = source.Clause,
        Basis = BasisNames[(int)source.Basis],
    };

    private static AnswerFinding[] Findings(IReadOnlyList<Finding> findings, RuleBook rules, UnitSystem units) =>
        findings.Select(finding => new AnswerFinding
    {
        Code = finding.Definition.Code,
        Severity = finding.Severity,
        Pointer = finding.Pointer,
        Related = finding.Related,
        Actor = Name(finding.Definition.Actor),
        Message = AnswerText.Fill(finding.Definition.Message, finding, units),
        Measured = Quantity.From(finding.Measured, units),
        Limit = Quantity.From(finding.Limit, units),
        Action = AnswerText.Fill(finding.Definition.Action, finding, units),
        Source = Source(finding.Source ?? finding.Definition.SourceIn(rules)),
    }).ToArray();

    private static AnswerAssumption[] Assumptions(IReadOnlyList<Assumption> assumptions, UnitSystem units) => assumptions.Select(assumption => new AnswerAssumption
    {
        Pointer = assumption.Pointer,
        Text = assumption.Text,
        Value = Quantity.From(assumption.Value, units),
        Origin = assumption.Origin,
    }).ToArray();

    private static AnswerTraceStep Step(TraceStep step, UnitSystem units) => new()
    {
        Of = step.Of,
        Symbol = step.Formula.Symbol,
        Name = step.Formula.Name,
        Formula = $"{step.Formula.Symbol} = {step.Formula.Expression}",
        Substituted = AnswerText.Substitute(step, units),
        Value = Quantity.From(step.Value, units),
        Source = Source(new(step.Formula.Document, step.Formula.Clause, step.Formula.Basis)),
    };

    /// <summary>Canonical by construction: members in order, no white space.</summary>
    private static string RecordId(AnswerContext context)
    {
        using var record = new ShapeWriter(JsonForm.Canonical);
        record.Raw("{\"engine\":"u8);
        record.Text(EngineVersion.Current);
        record.Raw(",\"input\":"u8);
        record.Raw(context.CanonicalInput.Span);
        record.Raw(",\"operation\":"u8);
        record.Text(context.Operation);
        record.Raw(",\"rules\":"u8);
        record.Text(context.Rules.Edition);
        record.Raw("}"u8);
        return Digest.Of(record.Written.Span);
    }
}
