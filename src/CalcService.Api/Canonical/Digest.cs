using System.Buffers;
using System.Security.Cryptography;

namespace CalcService.Api.Canonical;

/// <summary>Digests as the contract writes them.</summary>
public static class Digest
{
    public static string Of(ReadOnlySpan<byte> bytes) => Write(SHA256.HashData(bytes));

    public static string Of(ReadOnlySpan<byte> first, ReadOnlySpan<byte> second, ReadOnlySpan<byte> third)
    {
        var length = first.Length + second.Length + third.Length;
        var bytes = ArrayPool<byte>.Shared.Rent(length);
        first.CopyTo(bytes);
        second.CopyTo(bytes.AsSpan(first.Length));
        third.CopyTo(bytes.AsSpan(first.Length + second.Length));
        var digest = Of(bytes.AsSpan(0, length));
        ArrayPool<byte>.Shared.Return(bytes);
        return digest;
    }

    public static string Of(IncrementalHash hash) => Write(hash.GetCurrentHash());

    private static string Write(byte[] digest) => "sha256:" + Convert.ToHexStringLower(digest);
}
