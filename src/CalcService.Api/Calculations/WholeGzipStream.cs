using System.Buffers.Binary;
using System.IO.Compression;

namespace CalcService.Api.Calculations;

/// <summary>
/// Decompresses gzip and holds what came out against the length that stands at its end. The framework's stream ends
/// quietly where the data does, so a body that was cut short would look whole.
/// </summary>
public sealed class WholeGzipStream : ForwardStream
{
    private readonly TailStream _compressed;
    private readonly GZipStream _plain;
    private long _length;

    public WholeGzipStream(Stream compressed)
    {
        _compressed = new TailStream(compressed);
        _plain = new GZipStream(_compressed, CompressionMode.Decompress);
    }

    /// <exception cref="InvalidDataException">The data is no gzip, or not all of it, or goes on behind its end.</exception>
    public override async ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default)
    {
        var read = await _plain.ReadAsync(buffer, cancellationToken);
        _length += read;
        if (read == 0 && !buffer.IsEmpty && _compressed.Tail != (uint)_length)
        {
            throw new InvalidDataException("The gzip data is not whole.");
        }

        return read;
    }

    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            _plain.Dispose();
            _compressed.Dispose();
        }

        base.Dispose(disposing);
    }

    /// <summary>Passes bytes through and remembers the last four, where gzip keeps the length (RFC 1952, ISIZE).</summary>
    private sealed class TailStream(Stream inner) : ForwardStream
    {
        private readonly byte[] _last = new byte[4];

        public uint Tail => BinaryPrimitives.ReadUInt32LittleEndian(_last);

        public override async ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default)
        {
            var read = await inner.ReadAsync(buffer, cancellationToken);
            var kept = Math.Min(read, _last.Length);
            _last.AsSpan(kept).CopyTo(_last);
            buffer.Span[(read - kept)..read].CopyTo(_last.AsSpan(_last.Length - kept));
            return read;
        }
    }
}
