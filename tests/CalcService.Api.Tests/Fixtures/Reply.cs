using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace CalcService.Api.Tests.Fixtures;

/// <summary>What came back, read whole.</summary>
public sealed partial record Reply(int Status, HttpResponseHeaders Headers, HttpContentHeaders ContentHeaders, string Text)
{
    public string? MediaType => ContentHeaders.ContentType?.MediaType;

    public JsonObject Json => JsonNode.Parse(Text)!.AsObject();

    public string Decision => (string)Json["decision"]!;

    /// <summary>The text without the moment and the request's own id.</summary>
    public string Lasting => Moment().Replace(Text, "");

    public static async Task<Reply> SendAsync(HttpClient client, HttpRequestMessage request)
    {
        using var response = await client.SendAsync(request, TestContext.Current.CancellationToken);
        return await FromAsync(response);
    }

    public static async Task<Reply> FromAsync(HttpResponseMessage response) => new(
        (int)response.StatusCode, response.Headers, response.Content.Headers,
        await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));

    [GeneratedRegex("\"(computedAt|traceId)\":\"[^\"]*\"|computed [0-9-]+ [0-9:]+Z")]
    private static partial Regex Moment();
}

/// <summary>Requests as a client sends them.</summary>
public static class Sending
{
    public static Task<Reply> PostAsync(this Service service, string path, string body) =>
        service.PostAsync(path, new StringContent(body, Encoding.UTF8, "application/json"));

    public static Task<Reply> PostAsync(this Service service, string path, JsonNode body) => service.PostAsync(path, body.ToJsonString());

    public static async Task<Reply> PostAsync(this Service service, string path, HttpContent body)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, path) { Content = body };
        return await Reply.SendAsync(service.Client, request);
    }

    public static async Task<Reply> GetAsync(this Service service, string path, params (string Name, string Value)[] headers)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, path);
        foreach (var (name, value) in headers)
        {
            request.Headers.TryAddWithoutValidation(name, value);
        }

        return await Reply.SendAsync(service.Client, request);
    }

    /// <summary>An answer that has to be one.</summary>
    public static async Task<JsonObject> AnswerAsync(this Service service, string path, JsonNode body)
    {
        var reply = await service.PostAsync(path, body);
        Assert.True(reply.Status == 200, reply.Text);
        return reply.Json;
    }
}
