using System.Text.Json;
using CalcService.Api.Calculations;
using CalcService.Api.Contract;
using CalcService.Api.Reading;
using CalcService.Api.Units;
using CalcService.Api.Writing;
using CalcService.Engine;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;
using CalcService.Engine.Rules;

namespace CalcService.Api.Answers;

/// <summary>Wraps an outcome in the envelope that all calculations share.</summary>
public static class AnswerMaker
{
    /// <summary>The language of all words.</summary>
    public const string Language = "en";

    private static readonly string[] Actors = [.. Enum.GetNames<Actor>().Select(JsonNamingPolicy.CamelCase.ConvertName)];

    private static readonly string[] BasisNames = [.. Enum.GetNames<Basis>().Select(JsonNamingPolicy.CamelCase.ConvertName)];

    /// <param name="operation">The calculation.</param>
    /// <param name="outcome">What the engine computed.</param>
    /// <param name="toContract">Maps the numbers to a system of units.</param>
    /// <param name="asked">What was asked.</param>
    /// <param name="full">Whether the answer tells its input.</param>
    /// <param name="computedAt">Now.</param>
    public static Answer<TResult> Make<TRequest, TOutcome, TResult>(
        string operation, Outcome<TOutcome> outcome, Func<TOutcome, UnitSystem, TResult> toContract, Resolved<TRequest> asked, bool full,
        DateTimeOffset computedAt)
        where TRequest : class, ICalculationRequest
        where TResult : class
    {
        var engine = EngineVersion.Of(operation);
        var answer = new Answer<TResult>
        {
            Decision = outcome.Decision,
            Result = toContract(outcome.Result, asked.Units),
            Findings = Findings(outcome.Findings, asked.Rules, asked.Units),
            SafetyNotes = outcome.SafetyNotes.Select(note => new AnswerSafetyNote { Code = note.Code, Text = note.Text }).ToArray(),
            Assumptions = Assumptions(outcome.Assumptions, asked.Units),
            Trace = outcome.Trace.Select(step => Step(step, asked.Units)).ToArray(),
            Provenance = new()
            {
                RecordId = RecordId(operation, engine, asked.Canonical, asked.Rules.Edition),
                Operation = operation,
                Contract = ContractVersion.Text,
                Rules = asked.Rules.Edition,
                Language = Language,
                Engine = engine,
                Compound = asked.Compound is { } compound ? new() { Profile = compound.Profile, Digest = compound.Digest } : null,
                InputDigest = Digest.Of(asked.Canonical.Span),
                ResultDigest = "",
                ComputedAt = computedAt,
            },
            Input = full ? JsonElement.Parse(asked.Canonical.Span) : null,
        };
        // The digest covers metric numbers, whatever is answered in.
        using var digested = ShapeWriter.Write(JsonForm.Digested, ShapeTable.Of<Answer<TResult>>(), asked.Units == UnitSystem.Metric
            ? answer : answer with
        {
            Result = toContract(outcome.Result, UnitSystem.Metric),
            Findings = Findings(outcome.Findings, asked.Rules, UnitSystem.Metric),
            Assumptions = Assumptions(outcome.Assumptions, UnitSystem.Metric),
        }, contract: asked.Contract);
        return answer with { Provenance = answer.Provenance with { ResultDigest = Digest.Of(digested.Written.Span) } };
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

    private static AnswerAssumption[] Assumptions(IReadOnlyList<Assumption> assumptions, UnitSystem units) =>
        assumptions.Select(assumption => new AnswerAssumption
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
    private static string RecordId(string operation, string engine, ReadOnlyMemory<byte> canonicalInput, string edition)
    {
        using var record = new ShapeWriter(JsonForm.Canonical);
        record.Raw("{\"engine\":"u8);
        record.Text(engine);
        record.Raw(",\"input\":"u8);
        record.Raw(canonicalInput.Span);
        record.Raw(",\"operation\":"u8);
        record.Text(operation);
        record.Raw(",\"rules\":"u8);
        record.Text(edition);
        record.Raw("}"u8);
        return Digest.Of(record.Written.Span);
    }
}
