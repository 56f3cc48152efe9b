using System.ComponentModel;
using System.Reflection;
using CalcService.Api.Answers;
using CalcService.Api.Calculations;
using CalcService.Api.Capabilities.Pouring;
using CalcService.Api.Contract;
using CalcService.Api.Hosting;
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

    public static void MapCatalogues(this IEndpointRouteBuilder app)
    {
        var editions = app.ServiceProvider.GetRequiredService<Editions>();
        app.MapRules(new(app.ServiceProvider.GetRequiredService<IReadOnlyList<FindingDefinition>>(), editions));
        app.MapCatalogue("/v1/rule-sets", "listRuleSets", "Rule sets with their limits, by edition", RuleSets(editions));
        app.MapCatalogue("/v1/compounds", "listCompounds", "Compounds that a request can name",
            Compounds(app.ServiceProvider.GetRequiredService<CompoundCatalogue>()));
        app.MapCatalogue("/v1/rope-classes", "listRopeClasses", "Rope classes that can be estimated", RopeClasses());
        app.MapCatalogue("/v1/units", "listUnits", "Units of requests and answers", Units());
        app.MapCatalogue("/v1/build", "getBuild", "Which build this is, and what it takes",
            Build(app.ServiceProvider.GetRequiredService<ServiceSettings>(), editions.Current));
        app.MapRead("/v1/self-test", CalculationEndpoint.MediaType,
            (Readiness readiness) => Results.Json(SelfTest(readiness), ApiJson.Options))
            .Describe<SelfTestReport>("getSelfTest", "The start-up proof that this instance computes right", Tag)
            .WithDescription("Known answers with what this instance computed when it started.")
            .ProducesProblems(ReadOnlyAddress.Refusals);
    }

    private static void MapCatalogue<T>(this IEndpointRouteBuilder app, string path, string id, string summary, T catalogue)
        where T : class
    {
        var content = new Representation(catalogue);
        app.MapRead(path, CalculationEndpoint.MediaType, Task (HttpContext http) => content.WriteAsync(http))
            .DescribeCatalogue<T>(id, summary);
    }

    private static void MapRules(this IEndpointRouteBuilder app, RuleCatalogue rules)
    {
        const string Edition = "Edition of the rules; the current one where it is absent.";
        app.MapRead("/v1/rules", CalculationEndpoint.MediaType, (HttpContext http, [Description(Edition)] string? edition) =>
                rules.WriteAllAsync(http, edition), RuleCatalogue.Query)
            .DescribeCatalogue<RuleList>("listRules", "Every finding that can be raised")
            .ProducesProblems(404);
        app.MapRead("/v1/rules/{code}", CalculationEndpoint.MediaType, (HttpContext http, [Description("Code of a finding.")] string code,
                [Description(Edition)] string? edition) => rules.WriteAsync(http, code, edition), RuleCatalogue.Query)
            .DescribeCatalogue<RuleEntry>("getRule", "One finding")
            .ProducesProblems(404);
    }

    private static RouteHandlerBuilder DescribeCatalogue<T>(this RouteHandlerBuilder endpoint, string id, string summary) =>
        endpoint.Describe<T>(id, summary, Tag)
            .WithDescription("Comes with an ETag. Sent back as If-None-Match, it gives 304 until the content changes.")
            .Produces(StatusCodes.Status304NotModified)
            .ProducesProblems(ReadOnlyAddress.Refusals);

    private static RuleSetList RuleSets(Editions editions) => new()
    {
        RuleSets = [.. editions.All.SelectMany(book => book.Limits.GroupBy(limit => limit.RuleSet).Select(set => new RuleSetEntry
        {
            Id = set.Key,
            Edition = book.Edition,
            Current = book == editions.Current,
            Digest = book.Digest(),
            Limits = [.. set.Select(RuleLimitEntry.From)],
        }))],
    };

    private static CompoundList Compounds(CompoundCatalogue compounds) => new()
    {
        Compounds =
            [.. compounds.All.Select(profile =>
            new CompoundEntry { Id = profile.Profile!, Digest = profile.Digest, Sheet = profile.Sheet })],
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

    private static BuildInfo Build(ServiceSettings settings, RuleBook current) => new()
    {
        Service = "CalcService",
        Build = typeof(CatalogueEndpoints).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion,
        Contract = ContractVersion.Text,
        Engine = EngineVersion.Newest,
        Engines =
        [.. EngineVersion.All.OrderBy(engine => engine.Key, StringComparer.Ordinal)
        .Select(engine => new EngineEntry { Operation = engine.Key, Engine = engine.Value })],
        Rules = current.Edition,
        Processor = ProcessorEntry.Here(),
        Limits = new()
        {
            BodyBytes = Limits.BodyBytes,
            VerificationBytes = Limits.VerificationBytes,
            LineBytes = Limits.LineBytes,
            BatchLines = Limits.BatchLines,
            BufferedBatchBytes = Limits.BufferedBatchBytes,
            BatchBytes = Limits.BatchBytes,
            BatchExpansion = Limits.BatchExpansion,
            BatchSeconds = settings.Value(ServiceSettings.BatchSeconds),
            BatchWorkSeconds = settings.Value(ServiceSettings.BatchWorkSeconds),
            Depth = BodyReader.MaxDepth,
            TextLength = ShapeTable.TextLength,
            ListItems = ItemsAttribute.Usual,
            Baskets = PourPlanValidator.MostBaskets,
            CalculationSeconds = settings.Value(ServiceSettings.CalculationSeconds),
            HeaderBytes = Limits.HeaderBytes,
            HeaderSeconds = settings.Value(ServiceSettings.HeaderSeconds),
            BodySeconds = settings.Value(ServiceSettings.BodySeconds),
            BytesPerSecond = settings.Value(ServiceSettings.BytesPerSecond),
            WaitSeconds = settings.Value(ServiceSettings.WaitSeconds),
            HeldMiB = settings.Value(ServiceSettings.HeldMiB),
            Connections = settings.Value(ServiceSettings.Connections),
            Requests = settings.Value(ServiceSettings.Requests),
            Batches = settings.Value(ServiceSettings.Batches),
            RequestsPerMinute = settings.Value(ServiceSettings.RequestsPerMinute) is > 0 and var quota ? quota : null,
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
