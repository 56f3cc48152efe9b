using System.Globalization;
using CalcService.Api.Tests.Fixtures;
using CsCheck;

namespace CalcService.Api.Tests.Fuzzing;

/// <summary>GETs of everything in a document that is only read: whatever path is added to it is met too.</summary>
internal static class FuzzReads
{
    /// <summary>Any character that may stand in a header.</summary>
    private static readonly Gen<string> Visible = Gen.Char[' ', '~'].Array[0, 40].Select(letters => new string(letters).Trim());

    /// <summary>Any byte but NUL, which the server refuses by itself.</summary>
    private static readonly Gen<string> Escaped = Gen.Byte[1, 255].Array[1, 30].Select(bytes =>
        string.Concat(bytes.Select(one => string.Create(CultureInfo.InvariantCulture, $"%{one:X2}"))));

    private static readonly Gen<string> Codes = Gen.OneOf(
        Choices.OneIn([.. ServiceHost.Findings.Select(finding => finding.Code)]),
        // RFC 3986 takes "." and ".." out of an address however they are spelt: what is left is another one.
        Escaped.Where(code => code is not ("%2E" or "%2E%2E")),
        Gen.Char["abcLOT-_~!$&'()*+,;=:@"].Array[1, 60].Select(letters => new string(letters)),
        Gen.Const(new string('x', 5_000)));

    private static readonly Gen<string> Queries = Gen.Frequency(
        (6, Gen.Const("")),
        (1, Gen.Select(Escaped, Escaped, (name, value) => $"?{name}={value}")),
        (1, Gen.Char["abc=&+;%"].Array[1, 20].Select(letters => "?" + new string(letters))));

    private static readonly Gen<(string, string)> Headers = Gen.Frequency(
        (3, Said("Accept",
        Gen.OneOf(Gen.OneOf("*/*", "application/json", "application/*;q=0.1", "application/xml", "application/json;q=0, */*"), Visible))),
        (3, Said("If-None-Match", Gen.OneOf(Gen.OneOf("*", "\"x\"", "W/\"x\"", "\"x\", *"), Visible))),
        (1, Said("Accept-Encoding", Gen.OneOf(Gen.OneOf("gzip", "zstd", "identity;q=0", "*;q=0"), Visible))),
        (1, Said("Range", Gen.OneOf("bytes=0-1", "bytes=-1", "bytes=9-1", "lines=1"))),
        (1, Said("If-Modified-Since", Gen.OneOf("Thu, 01 Jan 1970 00:00:00 GMT", "yesterday"))),
        (1, Said("traceparent", Gen.OneOf(Gen.OneOf("00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01", "00-0-0-0"), Visible))),
        (1, Said("Origin", Gen.OneOf("null", "https://elsewhere.example"))),
        (1, Said("X-HTTP-Method-Override", Gen.OneOf("POST", "DELETE"))));

    public static Gen<FuzzRead> Of(ServedContract contract) => Gen.OneOf([.. contract.Reads.Select(To)]);

    public static Gen<FuzzRead> To(string path) => Gen.Select(Codes, Queries, Headers.Array[0, 3], (code, query, headers) =>
        new FuzzRead(path, path.Replace("{code}", code, StringComparison.Ordinal), query, [.. headers.DistinctBy(header => header.Item1)]));

    private static Gen<(string, string)> Said(string name, Gen<string> values) => values.Select(value => (name, value));
}
