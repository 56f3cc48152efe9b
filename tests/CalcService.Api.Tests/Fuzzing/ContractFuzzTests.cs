using System.Globalization;
using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;
using CsCheck;

namespace CalcService.Api.Tests.Fuzzing;

/// <summary>
/// Requests made from the committed document. Short unless CALCSERVICE_FUZZ_SECONDS says how long; a failure prints its
/// seed, which CALCSERVICE_FUZZ_SEED takes.
/// </summary>
public sealed class ContractFuzzTests(Service service)
{
    private const int FixedCases = 40;
    private const int RandomCases = 200;

    private static readonly ServedContract Contract =
        new(JsonNode.Parse(File.ReadAllText(Repository.PathOf("docs", "openapi", "v1.json")))!.AsObject());

    /// <summary>The same cases in every run, each path by itself, so that every path answers and refuses some of them.</summary>
    [Fact]
    public async Task Requests_of_a_fixed_seed_get_what_the_document_promises_on_every_path()
    {
        var (cases, judge) = (new FuzzCases(Contract), new FuzzJudge(service, Contract));
        Assert.NotEmpty(Contract.Calculations);
        foreach (var route in Contract.Calculations)
        {
            var generator = cases.To(route);
            for (uint seed = 0; seed < FixedCases; seed++)
            {
                var made = generator.Generate(new PCG(seed, 20260312), min: null, out _);
                await JudgeAsync(() => judge.JudgeAsync(made), made,
                    string.Create(CultureInfo.InvariantCulture, $"case {seed} of {route.Path}"));
            }

            Assert.All(new[] { 200, 400, 422 },
                status => Assert.True(judge.Met.ContainsKey((route.Path, status)), $"{route.Path} never gave {status}."));
        }

        Assert.Empty(service.Escaped);
    }

    [Fact]
    public async Task Requests_of_any_seed_get_what_the_document_promises()
    {
        var judge = new FuzzJudge(service, Contract);

        await SampleAsync(new FuzzCases(Contract).All, judge.JudgeAsync);
    }

    /// <summary>The same GETs in every run, of each address by itself.</summary>
    [Fact]
    public async Task Reads_of_a_fixed_seed_get_what_the_document_promises_on_every_address()
    {
        var judge = new FuzzJudge(service, Contract);
        Assert.NotEmpty(Contract.Reads);
        foreach (var (index, path) in Contract.Reads.Index())
        {
            var generator = FuzzReads.To(path);
            for (uint seed = 0; seed < FixedCases; seed++)
            {
                var made = generator.Generate(new PCG(seed, 20260312 + (ulong)index), min: null, out _);
                await JudgeAsync(() => judge.JudgeAsync(made), made, string.Create(CultureInfo.InvariantCulture, $"case {seed} of {path}"));
            }

            // What an address has none of, others have: tags, and codes that are none.
            Assert.All(new[] { 200, 400, 406 },
                status => Assert.True(judge.Met.ContainsKey((path, status)), $"{path} never gave {status}."));
        }

        Assert.Contains(judge.Met, met => met.Key.Status == 304);
        Assert.Contains(judge.Met, met => met.Key.Status == 404);
        Assert.Empty(service.Escaped);
    }

    [Fact]
    public async Task Reads_of_any_seed_get_what_the_document_promises()
    {
        var judge = new FuzzJudge(service, Contract);

        await SampleAsync(FuzzReads.Of(Contract), judge.JudgeAsync);
    }

    private async Task SampleAsync<T>(Gen<T> cases, Func<T, Task> judge)
    {
        var seconds = int.TryParse(Environment.GetEnvironmentVariable("CALCSERVICE_FUZZ_SECONDS"), CultureInfo.InvariantCulture,
            out var set) ? set : -1;

        await cases.SampleAsync(
            judge,
            line => TestContext.Current.TestOutputHelper?.WriteLine(line),
            seed: Environment.GetEnvironmentVariable("CALCSERVICE_FUZZ_SEED"),
            iter: seconds > 0 ? -1 : RandomCases,
            time: seconds,
            print: made => made!.ToString()!);

        Assert.Empty(service.Escaped);
    }

    private static async Task JudgeAsync(Func<Task> judge, object made, string name)
    {
        try
        {
            await judge();
        }
        catch (Exception failure)
        {
            throw new InvalidOperationException($"{name}: {made}", failure);
        }
    }
}
