using CalcService.Api.Calculations;

namespace CalcService.Api.Batches;

/// <summary>
/// A stream whose head has been read into memory. A client that sends everything before it reads would wait for ever
/// for a service that answers line by line, so up to a stated size everything is read first.
/// </summary>
public sealed class HeadStream(Stream rest) : ForwardStream
{
    private readonly MemoryStream _head = new();

    /// <summary>Whether the head is all there is.</summary>
    public bool IsWhole { get; private set; }

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

    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            _head.Dispose();
        }

        base.Dispose(disposing);
    }
}
