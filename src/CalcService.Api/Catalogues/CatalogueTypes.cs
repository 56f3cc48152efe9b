using System.Runtime.InteropServices;
using System.Runtime.Intrinsics.Arm;
using System.Runtime.Intrinsics.X86;
using CalcService.Api.Answers;
using CalcService.Api.Contract;
using CalcService.Api.Units;
using CalcService.Engine.Findings;
using CalcService.Engine.Provenance;

namespace CalcService.Api.Catalogues;

/// <summary>Every finding that can be raised.</summary>
public sealed record RuleList
{
    /// <summary>By code.</summary>
    public required IReadOnlyList<RuleEntry> Rules { get; init; }
}

/// <summary>A finding that can be raised.</summary>
public sealed record RuleEntry
{
    /// <summary>Stable code.</summary>
    public required string Code { get; init; }

    /// <summary>The severities it can come with.</summary>
    public required IReadOnlyList<Severity> Severities { get; init; }

    /// <summary>Who can do something about it: crew, lead, inspector, office or integrator.</summary>
    public required string Actor { get; init; }

    /// <summary>What it means.</summary>
    public required string Meaning { get; init; }

    /// <summary>What to do.</summary>
    public required string Action { get; init; }

    /// <summary>Where the rule comes from.</summary>
    public required AnswerSource Source { get; init; }

    /// <summary>The limits that it holds against.</summary>
    public required IReadOnlyList<RuleLimitEntry> Limits { get; init; }

    /// <summary>The edition of the rules that first had it.</summary>
    public required string Since { get; init; }

    /// <summary>Limits that the edition before had otherwise; none in the first edition.</summary>
    public required IReadOnlyList<RuleChange> Changes { get; init; }
}

/// <summary>A limit that an edition of the rules changed.</summary>
public sealed record RuleChange
{
    /// <summary>In the edition before; null where the finding didn't have it.</summary>
    public required RuleLimitEntry? Was { get; init; }

    /// <summary>In this edition; null where the finding has it no longer.</summary>
    public required RuleLimitEntry? Is { get; init; }
}

/// <summary>A limit behind a finding.</summary>
public sealed record RuleLimitEntry
{
    /// <summary>The rule set that sets it.</summary>
    public required string RuleSet { get; init; }

    /// <summary>What it limits.</summary>
    public required string Text { get; init; }

    /// <summary>The limit.</summary>
    public required Quantity? Limit { get; init; }

    /// <summary>The document.</summary>
    public required string Document { get; init; }

    /// <summary>The place in it.</summary>
    public required string Clause { get; init; }

    /// <summary>What kind of support it is.</summary>
    public required string Basis { get; init; }

    public static RuleLimitEntry From(Rule limit)
    {
        var source = AnswerMaker.Source(limit.Source);
        return new()
        {
            RuleSet = limit.RuleSet,
            Text = limit.Text,
            Limit = Quantity.From((Measure?)limit, UnitSystem.Metric),
            Document = source.Document,
            Clause = source.Clause,
            Basis = source.Basis,
        };
    }
}

/// <summary>The rule sets of every edition.</summary>
public sealed record RuleSetList
{
    /// <summary>Newest edition first.</summary>
    public required IReadOnlyList<RuleSetEntry> RuleSets { get; init; }
}

/// <summary>A rule set in an edition.</summary>
public sealed record RuleSetEntry
{
    /// <summary>Id of the rule set.</summary>
    public required string Id { get; init; }

    /// <summary>Edition of the rules.</summary>
    public required string Edition { get; init; }

    /// <summary>Whether requests that name no edition get this one.</summary>
    public required bool Current { get; init; }

    /// <summary>Digest over all limits of the edition.</summary>
    public required string Digest { get; init; }

    /// <summary>Its limits.</summary>
    public required IReadOnlyList<RuleLimitEntry> Limits { get; init; }
}

/// <summary>The compounds that requests can name.</summary>
public sealed record CompoundList
{
    /// <summary>By id.</summary>
    public required IReadOnlyList<CompoundEntry> Compounds { get; init; }
}

/// <summary>A compound that requests can name.</summary>
public sealed record CompoundEntry
{
    /// <summary>What compound.profile takes.</summary>
    public required string Id { get; init; }

    /// <summary>Digest of the canonical sheet.</summary>
    public required string Digest { get; init; }

    /// <summary>The data sheet.</summary>
    public required CompoundSheet Sheet { get; init; }
}

/// <summary>The rope classes that can be estimated.</summary>
public sealed record RopeClassList
{
    /// <summary>Where the factors come from.</summary>
    public required AnswerSource Source { get; init; }

    /// <summary>Where the wire counts come from.</summary>
    public required AnswerSource WireCountSource { get; init; }

    /// <summary>The classes.</summary>
    public required IReadOnlyList<RopeClassEntry> RopeClasses { get; init; }
}

/// <summary>A rope class.</summary>
public sealed record RopeClassEntry
{
    /// <summary>What rope.construction takes.</summary>
    public required string Construction { get; init; }

    /// <summary>With a fibre core.</summary>
    public required RopeFactorEntry Fibre { get; init; }

    /// <summary>With a steel core.</summary>
    public required RopeFactorEntry Iwrc { get; init; }
}

/// <summary>Factors of a rope class with one kind of core.</summary>
public sealed record RopeFactorEntry
{
    /// <summary>W: mass in kg per 100 m is W·d², d in mm.</summary>
    public required double MassFactor { get; init; }

    /// <summary>C: metallic area in mm² is C·d².</summary>
    public required double AreaFactor { get; init; }

    /// <summary>K: minimum breaking force in kN is d²·grade·K/1000.</summary>
    public required double BreakingForceFactor { get; init; }

    /// <summary>Nominal number of wires.</summary>
    public required int WireCount { get; init; }
}

/// <summary>The closed list of units.</summary>
public sealed record UnitList
{
    /// <summary>By kind of quantity.</summary>
    public required IReadOnlyList<UnitKindEntry> Kinds { get; init; }
}

/// <summary>Units of one kind of quantity.</summary>
public sealed record UnitKindEntry
{
    /// <summary>Name of the kind, and of its schema.</summary>
    public required string Kind { get; init; }

    /// <summary>Unit of the canonical form.</summary>
    public required string Si { get; init; }

    /// <summary>Unit of answers with units metric.</summary>
    public required string Metric { get; init; }

    /// <summary>Unit of answers with units inch.</summary>
    public required string Inch { get; init; }

    /// <summary>All units that requests may use.</summary>
    public required IReadOnlyList<UnitEntry> Units { get; init; }
}

/// <summary>A unit.</summary>
public sealed record UnitEntry
{
    /// <summary>Its code, case-sensitive.</summary>
    public required string Code { get; init; }

    /// <summary>The same unit in the Unified Code for Units of Measure.</summary>
    public required string Ucum { get; init; }
}

/// <summary>The version of the computation of a calculation.</summary>
public sealed record EngineEntry
{
    /// <summary>The calculation, as in its path.</summary>
    public required string Operation { get; init; }

    /// <summary>Its version; changes only when a number in an answer can.</summary>
    public required string Engine { get; init; }
}

/// <summary>Which build this is, and what it takes.</summary>
public sealed record BuildInfo
{
    /// <summary>Name of the service.</summary>
    public required string Service { get; init; }

    /// <summary>Version of the build, with its commit where the build knew it.</summary>
    public required string Build { get; init; }

    /// <summary>Version of the contract.</summary>
    public required string Contract { get; init; }

    /// <summary>Version of the computation.</summary>
    public required string Engine { get; init; }

    /// <summary>Version of the computation of each calculation.</summary>
    public required IReadOnlyList<EngineEntry> Engines { get; init; }

    /// <summary>Current edition of the rules.</summary>
    public required string Rules { get; init; }

    /// <summary>What it runs on. No answer depends on it.</summary>
    public required ProcessorEntry Processor { get; init; }

    /// <summary>What it takes at the most.</summary>
    public required BuildLimits Limits { get; init; }
}

/// <summary>The processor as the runtime uses it.</summary>
public sealed record ProcessorEntry
{
    /// <summary>Architecture of the process, such as x64 or arm64.</summary>
    public required string Architecture { get; init; }

    /// <summary>
    /// Those of avx, avx2, fma, avx512f and adv-simd that the runtime uses here; fewer than the processor has where it was told so.
    /// </summary>
    public required IReadOnlyList<string> InstructionSets { get; init; }

    internal static ProcessorEntry Here()
    {
        (string Name, bool IsUsed)[] known =
        [
            ("avx", Avx.IsSupported), ("avx2", Avx2.IsSupported), ("fma", Fma.IsSupported), ("avx512f", Avx512F.IsSupported),
            ("adv-simd", AdvSimd.IsSupported),
        ];
        return new()
        {
            Architecture = RuntimeInformation.ProcessArchitecture.ToString().ToLowerInvariant(),
            InstructionSets = [.. known.Where(set => set.IsUsed).Select(set => set.Name)],
        };
    }
}

/// <summary>What the service takes at the most.</summary>
public sealed record BuildLimits
{
    /// <summary>Bytes of a body, after decompression.</summary>
    public required int BodyBytes { get; init; }

    /// <summary>Bytes of the body of a verification, after decompression.</summary>
    public required int VerificationBytes { get; init; }

    /// <summary>Bytes of a line of a batch.</summary>
    public required int LineBytes { get; init; }

    /// <summary>Lines of a batch.</summary>
    public required int BatchLines { get; init; }

    /// <summary>Bytes of a batch, as they are sent, up to which a client may send everything before it reads.</summary>
    public required int BufferedBatchBytes { get; init; }

    /// <summary>Bytes of a batch, after decompression.</summary>
    public required long BatchBytes { get; init; }

    /// <summary>Bytes after decompression for each byte of a batch that was sent, beyond the first bufferedBatchBytes.</summary>
    public required int BatchExpansion { get; init; }

    /// <summary>Seconds for a batch, from its head to its summary.</summary>
    public required int BatchSeconds { get; init; }

    /// <summary>Seconds of computing for the lines of a batch together.</summary>
    public required int BatchWorkSeconds { get; init; }

    /// <summary>Depth of nested arrays and objects.</summary>
    public required int Depth { get; init; }

    /// <summary>Characters of a text.</summary>
    public required int TextLength { get; init; }

    /// <summary>Items of a list.</summary>
    public required int ListItems { get; init; }

    /// <summary>Baskets of a pour plan.</summary>
    public required int Baskets { get; init; }

    /// <summary>Seconds for one calculation.</summary>
    public required int CalculationSeconds { get; init; }

    /// <summary>Bytes of all headers of a request.</summary>
    public required int HeaderBytes { get; init; }

    /// <summary>Seconds for the head of a request to arrive.</summary>
    public required int HeaderSeconds { get; init; }

    /// <summary>Seconds for the body of a single request to arrive.</summary>
    public required int BodySeconds { get; init; }

    /// <summary>Bytes a second below which a client that sends or reads is given up.</summary>
    public required int BytesPerSecond { get; init; }

    /// <summary>Seconds that a client is waited for which stops reading its answer, or sending its batch.</summary>
    public required int WaitSeconds { get; init; }

    /// <summary>Mebibytes of large bodies and answers that are held at once.</summary>
    public required int HeldMiB { get; init; }

    /// <summary>Connections at once.</summary>
    public required int Connections { get; init; }

    /// <summary>Single requests at once that compute or wait for their turn.</summary>
    public required int Requests { get; init; }

    /// <summary>Batches in work at once.</summary>
    public required int Batches { get; init; }

    /// <summary>Requests of one client in a minute; null without a quota.</summary>
    public required int? RequestsPerMinute { get; init; }
}

/// <summary>The start-up proof that this instance computes right.</summary>
public sealed record SelfTestReport
{
    /// <summary>Whether every known answer came out.</summary>
    public required bool Passed { get; init; }

    /// <summary>The known answers.</summary>
    public required IReadOnlyList<SelfTestAnswer> Answers { get; init; }
}

/// <summary>A number that is known from outside, and what this instance computed.</summary>
public sealed record SelfTestAnswer
{
    /// <summary>Short id.</summary>
    public required string Id { get; init; }

    /// <summary>What was computed.</summary>
    public required string What { get; init; }

    /// <summary>The known number.</summary>
    public required double Expected { get; init; }

    /// <summary>The computed number; null where it isn't one.</summary>
    public required double? Actual { get; init; }

    /// <summary>The difference; null without a number.</summary>
    public required double? Delta { get; init; }

    /// <summary>The difference that is allowed.</summary>
    public required double Tolerance { get; init; }

    /// <summary>Unit of the numbers.</summary>
    public required string Unit { get; init; }

    /// <summary>Whether it came out.</summary>
    public required bool Passed { get; init; }

    /// <summary>Where the known number comes from.</summary>
    public required AnswerSource Source { get; init; }
}
