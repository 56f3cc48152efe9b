using System.Text.Json.Nodes;
using CalcService.Api.Tests.Batches;
using CalcService.Api.Tests.Fixtures;
using Microsoft.OpenApi;

namespace CalcService.Api.Tests.OpenApi;

/// <summary>The document is a promise: it is committed, reads without a complaint, and its examples run.</summary>
public sealed class OpenApiDocumentTests(Service service)
{
    [Fact]
    public async Task Document_that_is_served_is_the_committed_one()
    {
        var path = Repository.PathOf("docs", "openapi", "v1.json");
        var served = Lines((await service.GetAsync("/openapi/v1.json")).Text);
        if (Repository.Accepts)
        {
            await File.WriteAllTextAsync(path, served, TestContext.Current.CancellationToken);
        }

        Assert.Equal(Lines(await File.ReadAllTextAsync(path, TestContext.Current.CancellationToken)), served);
    }

    [Fact]
    public async Task Document_reads_as_OpenApi_3_1_without_diagnostics()
    {
        var read = OpenApiDocument.Parse((await service.GetAsync("/openapi/v1.json")).Text, "json");

        Assert.Equal(OpenApiSpecVersion.OpenApi3_1, read.Diagnostic!.SpecificationVersion);
        Assert.Empty(read.Diagnostic.Errors);
        Assert.Empty(read.Diagnostic.Warnings);
        Assert.NotEmpty(read.Document!.Paths);
    }

    [Fact]
    public async Task Operation_has_its_own_id_and_says_what_it_answers()
    {
        var operations = (await ServedContract.ReadAsync(service)).Document["paths"]!.AsObject().SelectMany(path => path.Value!.AsObject())
            .ToArray();

        Assert.Equal(operations.Length, operations.Select(operation => (string)operation.Value!["operationId"]!).Distinct().Count());
        Assert.All(operations, operation => Assert.NotEmpty((string)operation.Value!["summary"]!));
    }

    [Fact]
    public async Task Example_of_every_calculation_gives_200()
    {
        var calculations = (await ServedContract.ReadAsync(service)).Calculations;
        Assert.Contains(calculations, route => route.Path == Plans.Path);
        foreach (var route in calculations)
        {
            Assert.NotEmpty(route.Examples);
            foreach (var (name, body) in route.Examples)
            {
                var reply = await service.PostAsync(route.Path, body);
                Assert.True(reply.Status == 200, $"{route.Path} {name}: {reply.Text}");
            }
        }
    }

    [Fact]
    public async Task Example_of_every_batch_gives_an_answer_for_each_line()
    {
        var contract = await ServedContract.ReadAsync(service);
        Assert.NotEmpty(contract.Batches);
        foreach (var path in contract.Batches)
        {
            var example = (string)contract.Document["paths"]![path]!.At("/post/requestBody/content")!["application/x-ndjson"]!["example"]!;
            var reply = await service.PostAsync(path, BatchOutput.Content(System.Text.Encoding.UTF8.GetBytes(example), encoding: null));
            var batch = BatchOutput.Parse(reply.Status, mode: null, reply.Text);

            Assert.NotEmpty(batch.Lines);
            Assert.All(batch.Lines, line => Assert.Equal(200, (int)line["status"]!));
        }
    }

    [Fact]
    public async Task Answers_and_problems_fit_the_schemas_that_are_promised()
    {
        var contract = await ServedContract.ReadAsync(service);
        foreach (var route in contract.Answering)
        {
            var responses = contract.Document["paths"]![route.Path]!.At("/post/responses")!;
            foreach (var (body, status) in route.Examples.Select(example => (example.Body, 200)).Append((new JsonObject(), 422))
                .Append((new JsonObject { ["x"] = 1 }, 400)))
            {
                var reply = await service.PostAsync(route.Path, body);
                Assert.Equal(status, reply.Status);
                Assert.Empty(SchemaCheck.Faults(contract, responses[$"{status}"]!["content"]![reply.MediaType!]!["schema"]!, reply.Json));
            }
        }
    }

    [Fact]
    public async Task Catalogue_fits_the_schema_that_is_promised()
    {
        var contract = await ServedContract.ReadAsync(service);
        foreach (var (path, operations) in contract.Document["paths"]!.AsObject()
            .Where(path => path.Value!["get"] is not null && !path.Key.Contains('{', StringComparison.Ordinal)))
        {
            var reply = await service.GetAsync(path);
            Assert.Equal(200, reply.Status);
            Assert.Empty(SchemaCheck.Faults(contract, operations!.At("/get/responses/200/content")!["application/json"]!["schema"]!,
                reply.Json));
        }
    }

    private static string Lines(string text) => text.ReplaceLineEndings("\n").TrimEnd('\n') + "\n";
}
