namespace CalcService.Api.Batches;

/// <summary>
/// A stream whose head has been read into memory. A client that sends everything before it reads would wait for ever
/// for a service that answers line by line, so up to a stated size everything is read first.
/// </summary>
public sealed class HeadStream(Stream rest) : Stream
{
    private readonly MemoryStream _head = new();

    /// <summary>Whether the head is all there is.</summary>
    public bool IsWhole { get; private set; }

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    /// <summary>Reads up to so many bytes ahead.</summary>
    public async Task ReadHeadAsync(int most, CancellationToken cancellationToken)
    {
        var piece = new byte[64 << 10];
        while (_head.Length <= most)
        {
            var read = await rest.ReadAsync(piece, cancellationToken);
            if (read == 0)
            {
                IsWhole = true;
                break;
            }

            await _head.WriteAsync(piece.AsMemory(0, read), cancellationToken);
        }

        _head.Position = 0;
    }

    public override async ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default)
    {
        var read = await _head.ReadAsync(buffer, cancellationToken);
        return read > 0 || IsWhole ? read : await rest.ReadAsync(buffer, cancellationToken);
    }

    public override Task<int> ReadAsync(byte[] buffer, int offset, int count, CancellationToken cancellationToken) =>
        ReadAsync(buffer.AsMemory(offset, count), cancellationToken).AsTask();

    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    public override void Flush()
    {
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            _head.Dispose();
        }

        base.Dispose(disposing);
    }
}
