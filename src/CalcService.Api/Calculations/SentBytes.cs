using System.Buffers;
using System.IO.Pipelines;

namespace CalcService.Api.Calculations;

/// <summary>
/// The bytes of a request as they are sent. Kestrel reads what is left of a body before the next request, and takes a read
/// of its own stream that was cancelled for one still in progress; so the pipe is read, where a read can be given up.
/// What it throws where the sender wrote its chunks wrong is a refusal: it has one for most of that, but none for a size too large to
/// count.
/// </summary>
public sealed class SentBytes(HttpRequest request) : ForwardStream
{
    private readonly PipeReader _reader = request.BodyReader;

    public override async ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default)
    {
        await using var givenUp = cancellationToken.UnsafeRegister(static reader => ((PipeReader)reader!).CancelPendingRead(), _reader);
        var sent = await ReadSentAsync();
        if (sent.IsCanceled)
        {
            _reader.AdvanceTo(sent.Buffer.Start);
            throw new OperationCanceledException(cancellationToken);
        }

        var length = (int)Math.Min(buffer.Length, sent.Buffer.Length);
        var taken = sent.Buffer.Slice(0, length);
        taken.CopyTo(buffer.Span);
        _reader.AdvanceTo(taken.End);
        return length;
    }

    private async ValueTask<ReadResult> ReadSentAsync()
    {
        try
        {
            return await _reader.ReadAsync(CancellationToken.None);
        }
        catch (IOException failure) when (failure is not BadHttpRequestException)
        {
            throw new BadHttpRequestException("The body is not framed as HTTP has it.", StatusCodes.Status400BadRequest, failure);
        }
    }
}
