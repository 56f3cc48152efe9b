using System.Text;
using CalcService.Api.Tests.Batches;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Examples;

/// <summary>What a stranger sends first has to do what it says.</summary>
public sealed class HttpExampleTests(Service service)
{
    public static TheoryData<string, string> Titles
    {
        get
        {
            var titles = new TheoryData<string, string>();
            foreach (var example in HttpExample.All)
            {
                titles.Add(example.File, example.Title);
            }

            return titles;
        }
    }

    [Theory]
    [MemberData(nameof(Titles))]
    public async Task HttpExample_gives_what_it_says(string file, string title)
    {
        var example = HttpExample.All.Single(known => known.File == file && known.Title == title);
        using var request = new HttpRequestMessage(new HttpMethod(example.Method), example.Path);
        if (example.Body is not null)
        {
            request.Content = new ByteArrayContent(Encoding.UTF8.GetBytes(example.Body));
            request.Content.Headers.TryAddWithoutValidation("Content-Type", example.ContentType);
        }

        var reply = await Reply.SendAsync(service.Client, request);

        Assert.True(reply.Status == example.Status, reply.Text);
        if (example.Word == "summary")
        {
            Assert.NotNull(BatchOutput.Parse(reply.Status, mode: null, reply.Text).Summary);
        }
        else if (example.Word is not null)
        {
            Assert.Equal(example.Word, (string?)reply.Json[reply.Status == 200 ? "decision" : "code"]);
        }
    }

    [Fact]
    public async Task HttpExamples_of_every_calculation_have_success_caution_and_refusals()
    {
        foreach (var route in (await ServedContract.ReadAsync(service)).Answering)
        {
            var words = HttpExample.All.Where(example => example.Path.Split('?')[0] == route.Path)
                .Select(example => $"{example.Status} {example.Word}").ToArray();

            Assert.Superset(
                new HashSet<string> { "200 proceedWithCare", "200 doNotProceed", "200 undetermined", "422 not-computable",
                "400 unreadable" }, words.ToHashSet());
        }
    }

    [Fact]
    public async Task HttpExamples_show_every_address()
    {
        var shown = HttpExample.All.Select(example => example.Path.Split('?')[0]).ToArray();
        var paths = (await ServedContract.ReadAsync(service)).Document["paths"]!.AsObject().Select(path => path.Key);

        Assert.All(paths, path => Assert.Contains(shown, address =>
            address == path
            || (path.EndsWith("/{code}", StringComparison.Ordinal)
            && address.StartsWith(path[..^"{code}".Length], StringComparison.Ordinal))));
    }
}
