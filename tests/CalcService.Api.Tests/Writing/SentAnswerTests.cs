using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CalcService.Api.Calculations;
using CalcService.Api.Hosting;
using CalcService.Api.Tests.Fixtures;
using CalcService.Api.Writing;

namespace CalcService.Api.Tests.Writing;

/// <summary>What is sent against what the framework's serialiser makes of the same answer.</summary>
public sealed class SentAnswerTests(Service service)
{
    [Fact]
    public void Answer_is_sent_as_the_framework_would_write_it()
    {
        var capabilities = service.Capabilities.ToDictionary(capability => "/v1/" + capability.Operation);
        foreach (var operation in OperationExamples.All)
        {
            var capability = capabilities[operation.Path];
            AssertSentAsByFramework(capability, operation.Good, full: false);
            foreach (var request in operation.Requests)
            {
                AssertSentAsByFramework(capability, request, full: true);
            }
        }
    }

    private static void AssertSentAsByFramework(ICapability capability, JsonObject request, bool full)
    {
        var processed = capability.Process(Encoding.UTF8.GetBytes(request.ToJsonString()), full, TestContext.Current.CancellationToken);
        Assert.Equal(200, processed.Status);
        using var sent = ShapeWriter.WriteAnswer(processed.Body);

        var framework = JsonSerializer.SerializeToUtf8Bytes(processed.Body, processed.Body.GetType(), ApiJson.Options);
        Assert.Equal(Tokens(framework), Tokens(sent.Written.Span));
    }

    /// <summary>Each token as it is written, numbers by their value: the framework writes 1E-07 where RFC 8785 has 1e-7.</summary>
    private static List<string> Tokens(ReadOnlySpan<byte> json)
    {
        var tokens = new List<string>();
        var reader = new Utf8JsonReader(json);
        while (reader.Read())
        {
            tokens.Add(reader.TokenType == JsonTokenType.Number
                ? reader.GetDouble().ToString("R", CultureInfo.InvariantCulture)
                : $"{reader.TokenType} {Encoding.UTF8.GetString(reader.ValueSpan)}");
        }

        return tokens;
    }
}
