using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Capabilities.Verifications;

/// <summary>
/// Where a release changes the archived answer of the examples, CALCSERVICE_ACCEPT=1 archives it anew in the bodies of the .http file.
/// The examples are built in: the service knows the new ones after the next build.
/// </summary>
public sealed class ArchiveTests(Service service)
{
    private static readonly string File = Repository.PathOf("http-examples", "record-verifications.http");

    /// <summary>What each example makes of the archived answer.</summary>
    private static readonly Dictionary<string, Action<JsonNode>> Changes = new(StringComparer.Ordinal)
    {
        ["match"] = _ => { },
        ["care"] = answer => answer["approvedBy"] = "the foreman",
        ["differs"] = answer => answer["decision"] = "proceed",
        ["cannotVerify"] = answer => answer["provenance"]!["engine"] = "0",
    };

    [Fact]
    public async Task Archived_answer_of_each_example_is_the_one_that_is_given_now_but_for_what_the_example_shows()
    {
        var archive = ArchivedAnswers.Example("match");
        var answer = (await service.AnswerAsync("/v1/" + (string)archive["operation"]!, archive["request"]!))
            .With("/provenance/computedAt", "2026-11-25T15:00:00Z");
        if (Repository.Accepts)
        {
            await System.IO.File.WriteAllTextAsync(
                File, WithAnswer(await System.IO.File.ReadAllTextAsync(File, TestContext.Current.CancellationToken), answer),
                TestContext.Current.CancellationToken);
        }

        Assert.All(Changes.Keys, name => Assert.True(
            JsonNode.DeepEquals(Changed(name, answer), ArchivedAnswers.Example(name)["answer"]),
            $"{name}: CALCSERVICE_ACCEPT=1 archives the answer anew."));
    }

    private static JsonNode Changed(string name, JsonNode answer)
    {
        var changed = answer.DeepClone();
        Changes[name](changed);
        return changed;
    }

    /// <summary>The file with the answer in the body of each named request.</summary>
    private static string WithAnswer(string file, JsonNode answer) => string.Join("\n### ", file.Split("\n### ").Select(part =>
    {
        if (Changes.Keys.FirstOrDefault(name => part.Contains($"# @name {name}\n", StringComparison.Ordinal)) is not { } name)
        {
            return part;
        }

        var head = part.IndexOf("\n\n", StringComparison.Ordinal);
        var body = JsonNode.Parse(part[head..])!;
        body["answer"] = Changed(name, answer);
        return $"{part[..head]}\n\n{PageJson.Write(body)}\n";
    }));
}
