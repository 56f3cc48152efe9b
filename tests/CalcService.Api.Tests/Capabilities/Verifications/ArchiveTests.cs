using System.Text.Json.Nodes;
using CalcService.Api.Capabilities.Verifications;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Capabilities.Verifications;

/// <summary>
/// Where a release changes the archived answer of the examples, CALCSERVICE_ACCEPT=1 archives it anew, with the bodies of the .http file.
/// The archive is built in: the service knows the new one after the next build.
/// </summary>
public sealed class ArchiveTests(Service service)
{
    private static readonly string File = Repository.PathOf("src", "CalcService.Api", "Capabilities", "Verifications", "archive.json");

    private static readonly string Requests = Repository.PathOf("http-examples", "record-verifications.http");

    [Fact]
    public async Task Archived_answer_of_the_examples_is_the_one_that_is_given_now()
    {
        var archive = JsonNode.Parse(await System.IO.File.ReadAllTextAsync(File, TestContext.Current.CancellationToken))!.AsObject();
        var answer = (await service.AnswerAsync("/v1/" + (string)archive["operation"]!, archive["request"]!))
            .With("/provenance/computedAt", "2026-11-25T15:00:00Z");
        if (Repository.Accepts)
        {
            archive["answer"] = answer.DeepClone();
            Archive(PageJson.Write(archive) + "\n");
        }

        Assert.True(JsonNode.DeepEquals(answer, archive["answer"]), "CALCSERVICE_ACCEPT=1 archives the answer anew.");
    }

    private static void Archive(string text)
    {
        System.IO.File.WriteAllText(File, text);
        System.IO.File.WriteAllText(Requests, WithBodies(System.IO.File.ReadAllText(Requests), text));
    }

    /// <summary>The file with the body of each named request taken from the examples.</summary>
    private static string WithBodies(string file, string archive)
    {
        var bodies = RecordVerificationExamples.From(archive)
            .ToDictionary(example => $"# @name {example.Name}\n", example => PageJson.Write(JsonNode.Parse(example.Body)));
        return string.Join("\n### ", file.Split("\n### ").Select(part =>
        {
            var body = bodies.FirstOrDefault(body => part.Contains(body.Key, StringComparison.Ordinal)).Value;
            return body is null ? part : $"{part[..part.IndexOf("\n\n", StringComparison.Ordinal)]}\n\n{body}\n";
        }));
    }
}
