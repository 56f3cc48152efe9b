using System.Security.Cryptography;

namespace CalcService.Api.Batches;

/// <summary>A line of a batch.</summary>
/// <param name="Number">Its number, blank lines counted, from 1.</param>
/// <param name="Bytes">Its bytes without the line end; the first ones only where it is too long.</param>
/// <param name="IsTooLong">Whether it is longer than the limit.</param>
public readonly record struct Line(long Number, ReadOnlyMemory<byte> Bytes, bool IsTooLong);

/// <summary>
/// Splits a stream at line feeds, takes a carriage return before them away, and leaves blank lines out. Digests all
/// bytes it reads. A line longer than the limit is handed over as too long, and reading goes on behind it.
/// </summary>
public sealed class LineReader(Stream stream, int maxLine, long maxLines) : IDisposable
{
    private readonly IncrementalHash _digest = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
    private readonly byte[] _buffer = new byte[2 * maxLine];
    private int _start;
    private int _end;
    private bool _ended;
    private long _number;

    /// <summary>Whether reading ended at the last line allowed although there were more.</summary>
    public bool HasMore { get; private set; }

    /// <summary>SHA-256 over what was read so far.</summary>
    public IncrementalHash Digest => _digest;

    /// <summary>The next line that isn't blank, or null at the end and after the last line allowed.</summary>
    public async ValueTask<Line?> NextAsync(CancellationToken cancellationToken)
    {
        var isTooLong = false;
        while (true)
        {
            var feed = _buffer.AsSpan(_start, _end - _start).IndexOf((byte)'\n');
            if (feed < 0 && !_ended)
            {
                // One byte more may be the carriage return of a line that just fits.
                if (_end - _start > maxLine + 1)
                {
                    // Nothing of it is kept: it is only known to be too long.
                    isTooLong = true;
                    _start = _end;
                }

                await FillAsync(cancellationToken);
                continue;
            }

            var length = feed < 0 ? _end - _start : feed;
            if (feed < 0 && length == 0 && !isTooLong)
            {
                return null;
            }

            if (_number == maxLines)
            {
                HasMore = true;
                return null;
            }

            var line = _buffer.AsMemory(_start, length);
            _start = Math.Min(_end, _start + length + 1);
            _number++;
            if (!line.IsEmpty && line.Span[^1] == (byte)'\r')
            {
                line = line[..^1];
            }

            isTooLong |= line.Length > maxLine;
            if (isTooLong || line.Span.IndexOfAnyExcept(" \t"u8) >= 0)
            {
                return new(_number, line, isTooLong);
            }
        }
    }

    public void Dispose() => _digest.Dispose();

    private async ValueTask FillAsync(CancellationToken cancellationToken)
    {
        if (_start > 0)
        {
            _buffer.AsSpan(_start, _end - _start).CopyTo(_buffer);
            (_start, _end) = (0, _end - _start);
        }

        var read = await stream.ReadAsync(_buffer.AsMemory(_end), cancellationToken);
        _ended = read == 0;
        _digest.AppendData(_buffer.AsSpan(_end, read));
        _end += read;
    }
}
