using System.Text;
using System.Text.Json.Nodes;
using CalcService.Api.Calculations;
using CalcService.Api.Contract;
using CalcService.Api.OpenApi;
using CalcService.Api.Reading;
using CalcService.Api.Tests.Catalogues;
using CalcService.Api.Tests.Fixtures;
using CalcService.Api.Writing;
using CalcService.Engine.Rules;

namespace CalcService.Api.Tests.Capabilities.Verifications;

/// <summary>Archived answers of more than one version of the contract, and what a release may and may not change of them.</summary>
public sealed class VaultTests(Service service, EditionHost later) : IClassFixture<EditionHost>
{
    private const string Before = "0.8";

    private static readonly string Folder = Repository.PathOf("tests", "Vault");

    public static TheoryData<string> Files =>
        [.. Directory.GetFiles(Folder, "*.json", SearchOption.AllDirectories).Select(file => Path.GetRelativePath(Folder, file))
        .Order(StringComparer.Ordinal)];

    /// <summary>A member that came with a later contract, digested or not, takes nothing from an earlier answer.</summary>
    [Theory]
    [MemberData(nameof(Files))]
    public async Task Archived_answer_matches(string file)
    {
        var verified = await service.AnswerAsync(ArchivedAnswers.Path, Read(file));

        Assert.True((string?)verified.At("/result/outcome") == "match",
            $"{verified.At("/result/pointer")} {verified.At("/result/reason")}");
    }

    /// <summary>The same by a service whose newest edition has another number and another finding.</summary>
    [Theory]
    [MemberData(nameof(Files))]
    public async Task Archived_answer_matches_where_a_newer_edition_is_current(string file)
    {
        var verified = await later.Service.AnswerAsync(ArchivedAnswers.Path, Read(file));

        Assert.True((string?)verified.At("/result/outcome") == "match", $"{verified.At("/result/pointer")} {verified.At("/result/reason")}");
    }

    [Theory]
    [MemberData(nameof(Files))]
    public async Task Archived_answer_of_which_any_number_is_another_differs(string file)
    {
        var archived = Read(file);
        var numbers = archived["answer"]!["result"]!.Walk()
            .Where(found => found.Value is JsonValue value && value.GetValueKind() == System.Text.Json.JsonValueKind.Number)
            .Select(found => "/answer/result" + found.Pointer).ToArray();
        Assert.NotEmpty(numbers);
        foreach (var number in numbers.Where((_, index) => index % ((numbers.Length / 20) + 1) == 0))
        {
            var verified = await service.AnswerAsync(ArchivedAnswers.Path, archived.With(number, (double)archived.At(number)! + 1));

            Assert.Equal(("differs", number.Replace("/value", "", StringComparison.Ordinal)),
                ((string?)verified.At("/result/outcome"),
                ((string?)verified.At("/result/pointer"))?.Replace("/value", "", StringComparison.Ordinal)));
        }
    }

    [Fact]
    public void Vault_has_answers_of_two_contracts_and_those_of_the_earlier_one_lack_what_the_later_one_added()
    {
        var archives = Files.Select(row => Read(row)).ToLookup(archive => (string)archive.At("/answer/provenance/contract")!);

        Assert.NotEmpty(archives[ContractVersion.Text]);
        var (earlier, later) = (archives[Before].ToArray(), archives[ContractVersion.Text].ToArray());
        Assert.Contains(later, archive => archive.At("/answer/result/ends/0/release") is not null);
        Assert.Contains(earlier, archive => (string?)archive["operation"] == "cure-schedules"
            && !Has(archive, "/answer/result/ends/0", "release"));
        Assert.Contains(earlier, archive => archive.At("/answer/findings/0") is not null && !Has(archive, "/answer/findings/0", "actor"));
    }

    /// <summary>Whoever claims a contract that is to come says nothing that can be held against anything.</summary>
    [Fact]
    public async Task Answer_of_a_later_contract_can_not_be_verified()
    {
        var verified = await service.AnswerAsync(ArchivedAnswers.Path, Read(Files.First()).With("/answer/provenance/contract", "7.0"));

        Assert.Equal(("cannotVerify", "/answer/provenance/contract"),
            ((string?)verified.At("/result/outcome"), (string?)verified.At("/result/pointer")));
    }

    /// <summary>CALCSERVICE_ACCEPT=1 makes them anew, until the contract is frozen.</summary>
    [Fact]
    public void Vault_is_made_by_request_only()
    {
        if (!Repository.Accepts)
        {
            Assert.NotEmpty(Files);
            return;
        }

        foreach (var (operation, name) in new[] { ("cure-schedules", "table"), ("proof-load-evaluations", "after"),
            ("pour-plans", "plan") })
        {
            foreach (var contract in new[] { Before, ContractVersion.Text })
            {
                Make(operation, RequestExamples.Of(operation, name).Json, contract);
            }
        }
    }

    private void Make(string operation, JsonObject request, string contract)
    {
        var capability = service.Services.Calculation(operation);
        var answer = capability.Process(
            Encoding.UTF8.GetBytes(request.ToJsonString()), full: false, new(Editions.Known.Current, new(contract)),
            TestContext.Current.CancellationToken).Body;
        using var sent = ShapeWriter.Write(JsonForm.Sent, ShapeTable.Of(answer.GetType()), answer, contract: new(contract));
        var archived = JsonNode.Parse(sent.Written.Span)!.AsObject().With("/provenance/contract", contract)
            .With("/provenance/computedAt", "2026-11-30T12:00:00Z");
        Directory.CreateDirectory(Path.Combine(Folder, contract));
        File.WriteAllText(Path.Combine(Folder, contract, operation + ".json"),
            PageJson.Write(ArchivedAnswers.Of("/v1/" + operation, request, archived)) + "\n");
    }

    private static bool Has(JsonObject archive, string owner, string member) => archive.At(owner)!.AsObject().ContainsKey(member);

    private static JsonObject Read(string file) => JsonNode.Parse(File.ReadAllText(Path.Combine(Folder, file)))!.AsObject();
}
