using System.ComponentModel;
using System.Reflection;
using System.Text.Json;
using CalcService.Api.Answers;
using CalcService.Api.Calculations;
using CalcService.Api.Canonical;
using CalcService.Api.Capabilities.Pouring;
using CalcService.Api.Hosting;
using CalcService.Api.Problems;
using CalcService.Api.Reading;
using CalcService.Api.Units;
using CalcService.Engine;
using CalcService.Engine.Findings;
using CalcService.Engine.Ropes;
using CalcService.Engine.Rules;

namespace CalcService.Api.Catalogues;

/// <summary>What the service knows: GET only, with ETags.</summary>
public static class CatalogueEndpoints
{
    private const string Tag = "Catalogues";
    private static readonly int[] Refusals = [429, 500];

    public static void MapCatalogues(this IEndpointRouteBuilder app, IReadOnlyList<FindingDefinition> findings)
    {
        var rules = findings.Select(Rule).ToArray();
        app.MapCatalogue("/v1/rules", "listRules", "Every finding that can be raised", new RuleList { Rules = rules });
        app.MapGet("/v1/rules/{code}", (HttpContext http, [Description("Code of a finding.")] string code) =>
                rules.FirstOrDefault(rule => rule.Code == code) is { } rule ? WriteAsync(http, rule) : ProblemWriter.WriteAsync(http, ProblemKinds.NotFound.With($"No finding has this code; /v1/rules lists them.")))
            .Describe<RuleEntry>("getRule", "One finding", Tag)
            .WithDescription("What a finding means, what to do about it, and the limits that it holds against.")
            .ProducesProblems([404, .. Refusals]);
        app.MapCatalogue("/v1/rule-sets", "listRuleSets", "Rule sets with their limits, by edition", RuleSets());
        app.MapCatalogue("/v1/compounds", "listCompounds", "Compounds that a request can name", Compounds(app.ServiceProvider.GetRequiredService<CompoundCatalogue>()));
        app.MapCatalogue("/v1/rope-classes", "listRopeClasses", "Rope classes that can be estimated", RopeClasses());
        app.MapCatalogue("/v1/units", "listUnits", "Units of requests and answers", Units());
        app.MapCatalogue("/v1/build", "getBuild", "Which build this is, and what it takes", Build());
        app.MapGet("/v1/self-test", (HttpContext http, Readiness readiness) => WriteAsync(http, SelfTest(readiness)))
            .Describe<SelfTestReport>("getSelfTest", "The start-up proof that this instance computes right", Tag)
            .WithDescription("Known answers with what this instance computed when it started.")
            .ProducesProblems(Refusals);
    }

    private static void MapCatalogue<T>(this IEndpointRouteBuilder app, string path, string id, string summary, T catalogue)
        where T : class
    {
        var body = JsonSerializer.SerializeToUtf8Bytes(catalogue, ApiJson.Options);
        var tag = $"\"{Digest.Of(body)[7..39]}\"";
        app.MapGet(path, (Delegate)(Task (HttpContext http) =>
        {
            http.Response.Headers.ETag = tag;
            http.Response.Headers.CacheControl = "no-cache";
            if (http.Request.Headers.IfNoneMatch.Any(given => given == tag || given == "*"))
            {
                http.Response.StatusCode = StatusCodes.Status304NotModified;
                return Task.CompletedTask;
            }

            return WriteAsync(http, body);
        })).Describe<T>(id, summary, Tag)
            .WithDescription("Comes with an ETag. Sent back as If-None-Match, it gives 304 until the catalogue changes.")
            .Produces(StatusCodes.Status304NotModified)
            .ProducesProblems(Refusals);
    }

    private static Task WriteAsync<T>(HttpContext http, T body)
        where T : class => WriteAsync(http, JsonSerializer.SerializeToUtf8Bytes(body, ApiJson.Options));

    private static async Task WriteAsync(HttpContext http, byte[] body)
    {
        http.Response.ContentType = CalculationEndpoint.MediaType;
        http.Response.ContentLength = body.Length;
        await http.Response.Body.WriteAsync(body, http.RequestAborted);
    }

    private static RuleEntry Rule(FindingDefinition definition) => new()
    {
        Code = definition.Code,
        Severities = definition.Severities,
        Meaning = definition.Meaning,
        Action = definition.Action,
        Source = AnswerMaker.Source(definition.Source),
        Limits = [.. definition.Limits.Select(RuleLimitEntry.From)],
        Since = definition.Since,
    };

    private static RuleSetList RuleSets() => new()
    {
        RuleSets = [.. RuleBook.All.SelectMany(book => book.Limits.GroupBy(limit => limit.RuleSet).Select(set => new RuleSetEntry
        {
            Id = set.Key,
            Edition = book.Edition,
            Current = book == RuleBook.Current,
            Digest = book.Digest(),
            Limits = [.. set.Select(RuleLimitEntry.From)],
        }))],
    };

    private static CompoundList Compounds(CompoundCatalogue compounds) => new()
    {
        Compounds = [.. compounds.All.Select(profile => new CompoundEntry { Id = profile.Id, Digest = profile.Digest, Sheet = profile.Sheet })],
    };

    private static RopeClassList RopeClasses() => new()
    {
        Source = AnswerMaker.Source(RopeClassTable.Source),
        WireCountSource = AnswerMaker.Source(RopeClassTable.WireCountSource),
        RopeClasses = [.. RopeClassTable.All.Select(rope => new RopeClassEntry
        {
            Construction = rope.Designation,
            Fibre = Factors(rope.FibreCore),
            Iwrc = Factors(rope.SteelCore),
        })],
    };

    private static RopeFactorEntry Factors(RopeFactors factors) => new()
    {
        MassFactor = factors.Mass,
        AreaFactor = factors.MetallicArea,
        BreakingForceFactor = factors.BreakingForce,
        WireCount = factors.Wires,
    };

    private static UnitList Units() => new()
    {
        Kinds = [.. UnitTable.All.Select(kind => new UnitKindEntry
        {
            Kind = kind.Name,
            Si = kind.Si.Code,
            Metric = kind.Metric.Code,
            Inch = kind.Inch.Code,
            Units = [.. kind.Units.Select(unit => new UnitEntry { Code = unit.Code, Ucum = unit.Ucum })],
        })],
    };

    private static BuildInfo Build() => new()
    {
        Service = "CalcService",
        Build = typeof(CatalogueEndpoints).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion,
        Contract = AnswerMaker.ContractVersion,
        Engine = EngineVersion.Current,
        Rules = RuleBook.Current.Edition,
        Limits = new()
        {
            BodyBytes = Limits.BodyBytes,
            LineBytes = Limits.LineBytes,
            BatchLines = Limits.BatchLines,
            BufferedBatchBytes = Limits.BufferedBatchBytes,
            Depth = JsonCursor.MaxDepth,
            TextLength = ShapeTable.TextLength,
            ListItems = ShapeTable.ListItems,
            Baskets = PourPlanValidator.MostBaskets,
            CalculationSeconds = (int)Limits.CalculationTime.TotalSeconds,
        },
    };

    private static SelfTestReport SelfTest(Readiness readiness) => new()
    {
        Passed = readiness.KnownAnswers.All(answer => answer.Passed),
        Answers = [.. readiness.KnownAnswers.Select(answer => new SelfTestAnswer
        {
            Id = answer.Id,
            What = answer.What,
            Expected = answer.Expected,
            Actual = double.IsFinite(answer.Actual) ? answer.Actual : null,
            Delta = double.IsFinite(answer.Delta) ? answer.Delta : null,
            Tolerance = answer.Tolerance,
            Unit = answer.Unit,
            Passed = answer.Passed,
            Source = AnswerMaker.Source(answer.Source),
        })],
    };
}
