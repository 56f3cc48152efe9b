using CalcService.Api.Hosting;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Hosting;

public sealed class CrossOriginTests
{
    private const string Allowed = "https://shop.example";

    /// <summary>The CORS protocol of the Fetch standard: the preflight names origin and method, the answer repeats the origin.</summary>
    [Theory]
    [InlineData(Allowed, true)]
    [InlineData("https://elsewhere.example", false)]
    public async Task Page_of_an_origin_that_was_named_may_call_and_no_other(string origin, bool may)
    {
        await using var service = new Service((CrossOrigin.Key, Allowed));
        using var preflight = new HttpRequestMessage(HttpMethod.Options, Plans.Path);
        preflight.Headers.Add("Origin", origin);
        preflight.Headers.Add("Access-Control-Request-Method", "POST");
        preflight.Headers.Add("Access-Control-Request-Headers", "content-type");
        var asked = await Reply.SendAsync(service.Client, preflight);
        var got = await service.GetAsync("/v1/units", ("Origin", origin));

        foreach (var reply in new[] { asked, got })
        {
            Assert.Equal(may ? [origin] : [], reply.Headers.TryGetValues("Access-Control-Allow-Origin", out var named) ? named : []);
            Assert.False(reply.Headers.Contains("Access-Control-Allow-Credentials"));
        }

        Assert.Equal(may, asked.Headers.Contains("Access-Control-Allow-Methods") || asked.Headers.Contains("Access-Control-Allow-Headers"));
    }
}
