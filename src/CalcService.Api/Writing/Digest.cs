using System.Security.Cryptography;

namespace CalcService.Api.Writing;

/// <summary>Digests as the contract writes them.</summary>
public static class Digest
{
    public static string Of(ReadOnlySpan<byte> bytes) => Write(SHA256.HashData(bytes));

    public static string Of(ReadOnlySpan<byte> first, ReadOnlySpan<byte> second, ReadOnlySpan<byte> third) => Of([.. first, .. second, .. third]);

    public static string Of(IncrementalHash hash) => Write(hash.GetCurrentHash());

    private static string Write(byte[] digest) => "sha256:" + Convert.ToHexStringLower(digest);
}
