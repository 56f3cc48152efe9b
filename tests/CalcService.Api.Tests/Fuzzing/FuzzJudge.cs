using System.Collections.Concurrent;
using System.Globalization;
using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;
using CalcService.Api.Tests.OpenApi;

namespace CalcService.Api.Tests.Fuzzing;

/// <summary>Sends a request made from the document and holds what comes back against the document.</summary>
internal sealed class FuzzJudge(Service service, ServedContract contract)
{
    private readonly ConcurrentDictionary<string, string> _records = new(StringComparer.Ordinal);

    /// <summary>How often each path gave each status.</summary>
    public ConcurrentDictionary<(string Path, int Status), int> Met { get; } = new();

    public async Task JudgeAsync(FuzzCase made)
    {
        var reply = await service.PostAsync(made.Path, made.Body);
        Met.AddOrUpdate((made.Path, reply.Status), 1, (_, times) => times + 1);
        AssertDeclared(made.Path, "post", reply);
        switch (made.Expected)
        {
            case Expected.SameRecord:
                Assert.True(reply.Status == 200, reply.Text);
                await AssertSameRecordAsync(made, reply);
                break;
            case Expected.Refused:
                ProblemAssert.IsProblem(reply, made.Status);
                Assert.Contains(made.Pointer, ProblemAssert.Pointers(reply.Json));
                break;
            default:
                Assert.True(reply.Status is 200 or 422, reply.Text);
                if (reply.Status == 422)
                {
                    var schema = contract.Calculations.Single(route => route.Path == made.Path).SchemaName;
                    Assert.NotEmpty(reply.Json["errors"]!.AsArray());
                    Assert.All(ProblemAssert.Pointers(reply.Json),
                        pointer => Assert.True(contract.Has(schema, pointer), $"The document has no {pointer}: {reply.Text}"));
                }

                break;
        }
    }

    public async Task JudgeAsync(FuzzRead made)
    {
        // As it was made: the client would tidy the address up.
        var address = new Uri($"{service.Address.GetLeftPart(UriPartial.Authority)}{made.Address}{made.Query}",
            new UriCreationOptions { DangerousDisablePathAndQueryCanonicalization = true });
        using var request = new HttpRequestMessage(HttpMethod.Get, address);
        foreach (var (name, value) in made.Headers)
        {
            request.Headers.TryAddWithoutValidation(name, value);
        }

        var reply = await Reply.SendAsync(service.Client, request);
        Met.AddOrUpdate((made.Path, reply.Status), 1, (_, times) => times + 1);
        if (reply.Status == 304)
        {
            Assert.Empty(reply.Text);
        }

        AssertDeclared(made.Path, "get", reply);
        if (reply.Status >= 400)
        {
            ProblemAssert.IsProblem(reply, reply.Status);
        }
    }

    /// <summary>Status, media type and body are among those that the document promises, and the service has not failed.</summary>
    private void AssertDeclared(string path, string method, Reply reply)
    {
        Assert.True(reply.Status < 500, reply.Text);
        var response = contract.Document["paths"]![path]![method]!["responses"]![reply.Status.ToString(CultureInfo.InvariantCulture)];
        Assert.True(response is not null, $"{reply.Status} is not in the document: {reply.Text}");
        if (response["content"] is null)
        {
            return;
        }

        var content = response["content"]![reply.MediaType!];
        Assert.True(content is not null, $"{reply.Status} {reply.MediaType} is not in the document: {reply.Text}");
        if (reply.MediaType!.EndsWith("json", StringComparison.Ordinal))
        {
            Assert.Empty(SchemaCheck.Faults(contract, content["schema"]!, reply.Json));
        }
    }

    /// <summary>Sheets name their record too.</summary>
    private async Task AssertSameRecordAsync(FuzzCase made, Reply reply)
    {
        if (!_records.TryGetValue(made.Path + made.Example, out var record))
        {
            record = Record((await service.PostAsync(made.Path, made.Example!)).Text);
            _records[made.Path + made.Example] = record;
        }

        Assert.Equal(record, Record(reply.Text));
    }

    private static string Record(string text)
    {
        var start = text.IndexOf("sha256:", StringComparison.Ordinal);
        Assert.True(start >= 0, "The answer names no record.");
        return JsonLike(text) ? (string)JsonNode.Parse(text)!["provenance"]!["recordId"]! : text.Substring(start, 71);
    }

    private static bool JsonLike(string text) => text[0] == '{';
}
