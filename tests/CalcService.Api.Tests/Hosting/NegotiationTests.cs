using System.Text;
using CalcService.Api.Tests.Batches;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Hosting;

/// <summary>What well-meaning clients say about types and encodings.</summary>
public sealed class NegotiationTests(Service service)
{
    [Theory]
    [InlineData("*/*")]
    [InlineData("application/*")]
    [InlineData("application/json")]
    [InlineData("text/html, application/json;q=0.1")]
    [InlineData("text/html, image/gif, image/jpeg, *; q=.2, */*; q=.2")]
    [InlineData("application/json, application/problem+json")]
    public async Task Accept_that_takes_JSON_in_any_way_is_served(string accept) =>
        Assert.Equal(200, (await PostAsync("application/json", null, Body, accept)).Status);

    [Theory]
    [InlineData("application/json")]
    [InlineData("application/json; charset=utf-8")]
    [InlineData("application/json; charset=UTF-8")]
    [InlineData("application/json; charset=\"utf-8\"")]
    [InlineData("APPLICATION/JSON")]
    public async Task ContentType_that_is_JSON_in_UTF8_is_taken(string type) =>
        Assert.Equal(200, (await PostAsync(type, null, Body, null)).Status);

    [Theory]
    [InlineData("gzip")]
    [InlineData("br")]
    [InlineData("GZIP")]
    [InlineData("identity")]
    public async Task Body_that_is_compressed_is_the_same_question(string encoding)
    {
        var body = encoding == "identity" ? Body : BatchOutput.Pack(Body, encoding.ToLowerInvariant());

        var reply = await PostAsync("application/json", encoding, body, null);

        Assert.Equal(200, reply.Status);
        Assert.Equal(Plans.Provenance(await service.AnswerAsync(Plans.Path, Plans.Plan), "recordId"),
            Plans.Provenance(reply.Json, "recordId"));
    }

    private static byte[] Body => Encoding.UTF8.GetBytes(Plans.Plan.ToJsonString());

    private async Task<Reply> PostAsync(string type, string? encoding, byte[] body, string? accept)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, Plans.Path) { Content = new ByteArrayContent(body) };
        request.Content.Headers.TryAddWithoutValidation("Content-Type", type);
        if (encoding is not null)
        {
            request.Content.Headers.TryAddWithoutValidation("Content-Encoding", encoding);
        }

        if (accept is not null)
        {
            request.Headers.TryAddWithoutValidation("Accept", accept);
        }

        return await Reply.SendAsync(service.Client, request);
    }
}
