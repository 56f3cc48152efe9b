using System.Buffers;

namespace CalcService.Api.Hosting;

/// <summary>A setting that names a header.</summary>
public static class HeaderName
{
    private const int Longest = 64;

    /// <summary>A token of HTTP (RFC 9110, section 5.6.2).</summary>
    private static readonly SearchValues<char> Token =
        SearchValues.Create("!#$%&'*+-.^_`|~0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz");

    /// <summary>Headers that each client writes for another purpose, so that they tell no client from another.</summary>
    private static readonly string[] Others =
    [
        "Accept", "Accept-Encoding", "Connection", "Content-Encoding", "Content-Length", "Content-Type", "Expect", "Host", "Origin", "TE",
        "Trailer", "Transfer-Encoding", "Upgrade", "traceparent",
    ];

    /// <summary>The header; null where nobody names one.</summary>
    /// <exception cref="StartRefusedException">What stands there can be no header, or is one with another purpose.</exception>
    public static string? Of(string key, IConfiguration configuration) => configuration[key] switch
    {
        null => null,
        { Length: > 0 and <= Longest } name when !name.AsSpan().ContainsAnyExcept(Token) && !Others.Contains(name,
            StringComparer.OrdinalIgnoreCase) => name,
        { } text => throw new StartRefusedException(
            $"{key} is \"{Reading.ReadErrors.Show(text)}\"; the name of a header of the gateway's own such as X-Client-Id is expected."),
    };
}
