namespace CalcService.Api.Tests.Problems;

/// <summary>A row of the bad requests to what is only read: catalogues, probes and documents.</summary>
/// <param name="Name">What is wrong.</param>
/// <param name="Status">The status that it has to get.</param>
/// <param name="Make">The request to an address.</param>
public sealed record BadRead(string Name, int Status, Func<string, HttpRequestMessage> Make)
{
    public static IReadOnlyDictionary<string, BadRead> All { get; } = new BadRead[]
    {
        // A body may come with any of them; it is left alone.
        Method(HttpMethod.Post, "{}"), Method(HttpMethod.Post, "["), Method(HttpMethod.Put, "{}"), Method(HttpMethod.Patch, ""),
            Method(HttpMethod.Delete, ""),
        Method(HttpMethod.Trace, ""), Method(new("PROPFIND"), ""),
        Query("?x=1"), Query("?detail=full"), Query("?=1"), Query("?%00=%FF"), Query("?a&b"), Query("?code=lot-expired"),
        Query("?" + new string('x', 4000)),
        Accept("application/xml"), Accept("text/plain, image/*"), Accept("nonsense"),
        Accept("application/json;q=0, text/html;q=0, */*;q=0"), Accept(";;;"),
    }.ToDictionary(row => row.Name, StringComparer.Ordinal);

    private static BadRead Method(HttpMethod method, string body) =>
        new($"{method} \"{body}\"", 405, path => new(method, path) { Content = body.Length == 0 ? null : new StringContent(body) });

    private static BadRead Query(string query) =>
        new("query " + query[..Math.Min(20, query.Length)], 400, path => new(HttpMethod.Get, path + query));

    private static BadRead Accept(string accept) => new("Accept: " + accept, 406, path =>
    {
        var request = new HttpRequestMessage(HttpMethod.Get, path);
        request.Headers.TryAddWithoutValidation("Accept", accept);
        return request;
    });
}
