using System.Text;
using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Sheets;

/// <summary>Texts that are taken and mean something to HTML, SVG, a style or a template, in every example, one member after the other.</summary>
public sealed class HostileTextTests(Service service, DocumentedRoutes routes) : IClassFixture<DocumentedRoutes>
{
    private const string Id = "A&\"'/]]-&#60;b&amp;{{7*7}}${x}`%n\\";
    private const string Free = Id + " \u00A0é 🙂 \u2011 葛\U000E0100 --";

    [Fact]
    public async Task Page_and_picture_of_every_example_are_well_formed_whatever_its_texts_say()
    {
        var printed = 0;
        foreach (var route in routes.Calculations.Where(route => route.Path.EndsWith("/sheet", StringComparison.Ordinal)))
        {
            foreach (var (example, place) in route.Places.Where(found => found.Place.IsText(null)))
            {
                foreach (var text in new[] { Id, Free })
                {
                    foreach (var type in route.AnswerTypes)
                    {
                        var reply = await SendAsync(route.Path, example.With(place.Pointer, text), type);
                        Assert.True(reply.Status is 200 or 422, $"{route.Path} {place.Pointer}: {reply.Text}");
                        if (reply.Status == 200)
                        {
                            StrictMarkup.Parse(reply.Text);
                            printed++;
                        }
                    }
                }
            }
        }

        Assert.InRange(printed, 100, int.MaxValue);
        Assert.Empty(service.Escaped);
    }

    private async Task<Reply> SendAsync(string path, JsonObject body, string type)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, path)
        {
            Content = new StringContent(body.ToJsonString(), Encoding.UTF8, "application/json"),
        };
        request.Headers.Add("Accept", type);
        return await Reply.SendAsync(service.Client, request);
    }
}
