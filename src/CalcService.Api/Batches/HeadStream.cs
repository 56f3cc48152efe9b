using CalcService.Api.Calculations;
using CalcService.Api.Hosting;
using CalcService.Api.Problems;

namespace CalcService.Api.Batches;

/// <summary>
/// What is sent of a batch, the head of it read into memory. A client that sends everything before it reads would wait for ever
/// for a service that answers line by line, so up to a stated size everything is read first, as it was sent: packed.
/// </summary>
public sealed class HeadStream(Stream rest, HeldShare held) : ForwardStream
{
    private const int PieceBytes = 64 << 10;

    private readonly List<byte[]> _pieces = [];
    private int _head;
    private int _taken;

    /// <summary>Whether the head is all there is.</summary>
    public bool IsWhole { get; private set; }

    /// <summary>Bytes that have been read from it.</summary>
    public long Taken { get; private set; }

    /// <summary>Reads up to so many bytes ahead, and gives why that can't be done.</summary>
    /// <exception cref="OperationCanceledException">The time for it is over.</exception>
    public async Task<Problem?> ReadHeadAsync(int most, Patience patience, CancellationTokenSource time)
    {
        while (_head <= most)
        {
            if (_head == _pieces.Count * PieceBytes)
            {
                if (!held.TryHold(_head + PieceBytes))
                {
                    return HttpBody.NoRoom();
                }

                _pieces.Add(new byte[PieceBytes]);
            }

            var reading = rest.ReadAsync(_pieces[^1].AsMemory(_head % PieceBytes), time.Token).AsTask();
            try
            {
                var read = await patience.WaitAsync(reading);
                if (read == 0)
                {
                    IsWhole = true;
                    break;
                }

                _head += read;
                patience.Moved(read);
            }
            catch (TimeoutException)
            {
                // The reader may not be let go while it still reads.
                await time.CancelAsync();
                await ((Task)reading).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
                return ProblemKinds.RequestTimeout.With();
            }
        }

        return null;
    }

    /// <summary>Goes back to the beginning, where no more than the head has been taken.</summary>
    public void Rewind() => (_taken, Taken) = (0, 0);

    public override async ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default)
    {
        var read = 0;
        if (_taken < _head)
        {
            var at = _taken % PieceBytes;
            read = Math.Min(Math.Min(buffer.Length, PieceBytes - at), _head - _taken);
            _pieces[_taken / PieceBytes].AsMemory(at, read).CopyTo(buffer);
            _taken += read;
        }
        else if (!IsWhole)
        {
            read = await rest.ReadAsync(buffer, cancellationToken);
        }

        Taken += read;
        return read;
    }
}
