using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Examples;

/// <summary>The first plan of the README is what the service answers today.</summary>
public sealed partial class ReadmeTests(Service service)
{
    [Fact]
    public async Task Readme_shows_the_answer_that_its_request_gets()
    {
        var readme = await File.ReadAllTextAsync(Repository.PathOf("README.md"), TestContext.Current.CancellationToken);
        var request = Request().Match(readme).Groups[1].Value;
        var shown = JsonNode.Parse(Answer().Match(readme).Groups[1].Value);

        using var message = new HttpRequestMessage(HttpMethod.Post,
            "/v1/pour-plans") { Content = new StringContent(request, Encoding.UTF8, "application/json") };
        var reply = await Reply.SendAsync(service.Client, message);

        Assert.Equal(200, reply.Status);
        AssertContains(reply.Json, shown, "");
    }

    /// <summary>What is shown is there; lists of findings are shown whole.</summary>
    private static void AssertContains(JsonNode? answer, JsonNode? shown, string at)
    {
        switch (shown)
        {
            case JsonObject members:
                Assert.All(members, member => AssertContains(answer![member.Key], member.Value, $"{at}/{member.Key}"));
                break;
            case JsonArray items:
                Assert.True(items.Count == answer!.AsArray().Count, at);
                Assert.All(Enumerable.Range(0, items.Count), i => AssertContains(answer[i], items[i], $"{at}/{i}"));
                break;
            default:
                Assert.True(JsonNode.DeepEquals(answer, shown), $"{at}: {answer} is shown as {shown}");
                break;
        }
    }

    [GeneratedRegex("curl [^\n]*-d '(\\{.*?\n\\})'", RegexOptions.Singleline)]
    private static partial Regex Request();

    [GeneratedRegex("```json\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex Answer();
}
