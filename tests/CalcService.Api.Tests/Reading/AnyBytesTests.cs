using System.Text;
using System.Text.Json;
using System.Text.Unicode;
using CalcService.Api.Calculations;
using CalcService.Api.Reading;
using CalcService.Api.Tests.Fixtures;
using CsCheck;

namespace CalcService.Api.Tests.Reading;

/// <summary>Whatever the bytes are, every calculation gives an answer or a refusal, and agrees with JsonDocument on what is JSON.</summary>
public sealed class AnyBytesTests(Service service)
{
    private static readonly JsonDocumentOptions Strict = new() { MaxDepth = BodyReader.MaxDepth };

    private static readonly Gen<byte[]> Noise = Gen.OneOf(
        Gen.Byte.Array[0, 200],
        Gen.OneOf("{}[]:,\"\\/ \t\r\n0123456789+-.eEuabfnrtlsx\0"u8.ToArray()).Array[0, 60],
        Gen.String.Select(Encoding.UTF8.GetBytes),
        Gen.OneOf(JsonCases.All.Where(known => known.Text.Length < 1000).Select(known => known.Text).ToArray())
        .Select(Encoding.UTF8.GetBytes));

    [Fact]
    public async Task Bytes_of_any_kind_are_answered_or_refused_by_every_calculation()
    {
        var capabilities = service.Capabilities;
        var routes = (await ServedContract.ReadAsync(service)).Answering;
        Assert.Equal(routes.Select(route => route.Path).Order(), capabilities.Select(one => "/v1/" + one.Operation).Order());
        foreach (var capability in capabilities)
        {
            var bodies = routes.Single(route => route.Path == "/v1/" + capability.Operation)
                .Examples.Select(example => Encoding.UTF8.GetBytes(example.Body.ToJsonString())).ToArray();
            // Spliced into a body, inside its first member or anywhere.
            var spliced = Gen.Select(Gen.OneOf(bodies), Noise, Gen.Int[0, int.MaxValue], Gen.Int[0, 40], (body, noise, at, length) =>
                (byte[])[.. body[..(at % body.Length)], .. noise, .. body[Math.Min(body.Length, (at % body.Length) + length)..]]);
            Gen.Frequency((1, Noise), (3, spliced)).Sample(bytes =>
            {
                var processed = capability.Process(bytes, full: false, CancellationToken.None);
                return processed.Status is 200 or 400 or 422 && IsCalledJson(processed) == IsJson(bytes);
            }, iter: 2_000, print: Convert.ToHexString);
        }
    }

    /// <summary>The same over HTTP, where headers and encodings come in too.</summary>
    [Fact]
    public async Task Bytes_of_any_kind_never_fail_the_service()
    {
        var contract = await ServedContract.ReadAsync(service);
        var paths = contract.Calculations.Select(route => (route.Path, Type: "application/json"))
            .Concat(contract.Batches.Select(path => (Path: path, Type: "application/x-ndjson"))).ToArray();
        await Gen.Select(Gen.OneOf(paths), Noise, Gen.OneOf("", "", "gzip", "br")).SampleAsync(async (path, bytes, encoding) =>
        {
            using var content = new ByteArrayContent(bytes);
            content.Headers.TryAddWithoutValidation("Content-Type", path.Type);
            if (encoding.Length > 0)
            {
                content.Headers.ContentEncoding.Add(encoding);
            }

            var reply = await service.PostAsync(path.Path, content);
            Assert.InRange(reply.Status, path.Type == "application/json" ? 400 : 200, 422);
        }, iter: 300);
        Assert.Empty(service.Escaped);
    }

    private static bool IsCalledJson(Processed processed) =>
        processed.Body is not Api.Problems.Problem problem || !problem.Errors.Any(error => error.Code is "syntax" or "utf8");

    private static bool IsJson(byte[] bytes)
    {
        // JsonDocument looks into texts only when asked for them, so its verdict on UTF-8 is taken apart.
        if (!Utf8.IsValid(bytes))
        {
            return false;
        }

        try
        {
            using var parsed = JsonDocument.Parse(bytes, Strict);
            return true;
        }
        catch (JsonException)
        {
            return false;
        }
    }
}
