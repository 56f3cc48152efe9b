using System.Security.Cryptography;

namespace CalcService.Api.Writing;

/// <summary>Digests as the contract writes them.</summary>
public static class Digest
{
    private const int Bytes = SHA256.HashSizeInBytes;

    public static string Of(ReadOnlySpan<byte> bytes)
    {
        Span<byte> digest = stackalloc byte[Bytes];
        _ = SHA256.HashData(bytes, digest);
        return Write(digest);
    }

    public static string Of(IncrementalHash hash) => Write(hash.GetCurrentHash());

    private static string Write(ReadOnlySpan<byte> digest)
    {
        Span<char> digits = stackalloc char[2 * Bytes];
        _ = Convert.TryToHexStringLower(digest, digits, out _);
        return string.Concat("sha256:", digits);
    }
}
