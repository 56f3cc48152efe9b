using CalcService.Api.Calculations;
using CalcService.Api.Hosting;

namespace CalcService.Api.Batches;

/// <summary>A batch as it is decoded, until it becomes far larger than anything that was sent can honestly be.</summary>
public sealed class DecodedStream(Stream decoded, HeadStream sent) : ForwardStream
{
    private long _read;

    /// <exception cref="BadHttpRequestException">The batch is too large (413).</exception>
    public override async ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default)
    {
        var read = await decoded.ReadAsync(buffer, cancellationToken);
        _read += read;
        var most = Math.Min(Limits.BatchBytes, Limits.BufferedBatchBytes + (Limits.BatchExpansion * sent.Taken));
        return _read <= most ? read
            : throw new BadHttpRequestException($"The batch has more than {most} bytes after decompression.", 413);
    }
}
