using System.Globalization;
using System.Text.Json.Nodes;
using CalcService.Api.OpenApi;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Capabilities.Curing;

/// <summary>Every example with the heat of the cone, its forecast against the mixing and both against the clock.</summary>
public sealed class MovedForecastTests(Service service)
{
    private const string Path = "/v1/cure-schedules";
    private const string Form = "yyyy-MM-dd'T'HH:mm:sszzz";

    private static readonly string[] Order = ["gelAt/expected", "undisturbedUntil", "proofLoadFrom", "serviceFrom"];

    /// <summary>The examples of documentation and findings that have a forecast, each with the heat of the cone.</summary>
    private static readonly JsonObject[] Requests =
    [
        .. RequestExamples.Of("cure-schedules").Select(example => example.Json)
            .Concat(OperationExamples.All.Single(operation => operation.Path == Path).Requests)
            .Where(body => Series(body).Count > 0).Select(body => body.With("/thermalModel", "coupled")),
    ];

    public static TheoryData<int> Examples => [.. Enumerable.Range(0, Requests.Length)];

    [Fact]
    public void There_are_examples_with_a_forecast() => Assert.InRange(Requests.Length, 5, 50);

    /// <summary>The clock is a name for the time: whoever moves all of it moves the answer.</summary>
    [Theory]
    [MemberData(nameof(Examples))]
    public async Task Answer_moves_with_all_times_of_the_request(int example)
    {
        var body = Requests[example];
        var here = await service.AnswerAsync(Path, body);
        foreach (var minutes in new[] { 1, 7, -61, 5 * 60, 24 * 60 })
        {
            var moved = await service.AnswerAsync(Path, Moved(body, minutes));

            Assert.Equal((string?)here["decision"], (string?)moved["decision"]);
            Assert.Equal(Moved(here["result"]!.AsObject(), minutes).ToJsonString(), moved["result"]!.ToJsonString());
        }
    }

    /// <summary>The forecast alone: by minutes, by hours, and so that the mixing falls on each of its points.</summary>
    [Theory]
    [MemberData(nameof(Examples))]
    public async Task Forecast_moved_against_the_mixing_gives_times_in_their_order(int example)
    {
        var body = Requests[example];
        var mixedAt = Instant(body["mixedAt"]!);
        var points = Series(body).Select(point => Instant(point!["at"]!)).ToArray();
        var moves = new[] { -1.0, 1, 2, 29, 59, -60, 60, 180, -600, 600 }.Concat(points.Take(12).Select(at => (mixedAt - at).TotalMinutes));
        foreach (var minutes in moves)
        {
            var moved = body.DeepClone().AsObject();
            moved["conditions"]!["air"] = Moved(moved["conditions"]!["air"]!.AsObject(), minutes);
            var reply = await service.PostAsync(Path, moved);

            Assert.True(reply.Status is 200 or 422, $"{minutes} min: {reply.Text}");
            if (reply.Status == 200)
            {
                Assert.All(reply.Json["result"]!["ends"]!.AsArray(), end => AssertOrder(end!, mixedAt, minutes));
            }
        }
    }

    private static void AssertOrder(JsonNode end, DateTimeOffset mixedAt, double minutes)
    {
        var times = Order.Select(path => path.Split('/').Aggregate((JsonNode?)end, (node, step) => node?[step]))
            .OfType<JsonValue>().Select(Instant).Prepend(mixedAt).ToArray();
        Assert.True(times.SequenceEqual(times.Order()), $"{minutes} min: {string.Join(", ", times)}");
    }

    private static JsonArray Series(JsonObject body) => body["conditions"]!["air"]!["series"]?.AsArray() ?? [];

    private static DateTimeOffset Instant(JsonNode node) => DateTimeOffset.Parse((string)node!, CultureInfo.InvariantCulture);

    /// <summary>Every date-time below a node moved.</summary>
    private static JsonObject Moved(JsonObject node, double minutes)
    {
        var moved = node.DeepClone().AsObject();
        foreach (var (_, value) in moved.Walk().ToArray())
        {
            if (value is JsonValue text && text.TryGetValue<string>(out var said)
                && DateTimeOffset.TryParseExact(said, Form, CultureInfo.InvariantCulture, DateTimeStyles.None, out var at))
            {
                value.ReplaceWith(at.AddMinutes(minutes).ToString(Form, CultureInfo.InvariantCulture));
            }
        }

        return moved;
    }
}
