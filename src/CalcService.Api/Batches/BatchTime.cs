using CalcService.Api.Hosting;
using CalcService.Api.Problems;

namespace CalcService.Api.Batches;

/// <summary>How long a batch goes on: until its client has gone, the instance stops, or it has had all the time or work it may.</summary>
internal sealed class BatchTime : IDisposable
{
    private readonly WorkConditions _conditions;
    private long _workTicks;

    public BatchTime(HttpContext http, WorkConditions conditions)
    {
        _conditions = conditions;
        Over = CancellationTokenSource.CreateLinkedTokenSource(http.RequestAborted, conditions.Drain.Over);
        Over.CancelAfter(conditions.Settings.Time(ServiceSettings.BatchSeconds));
    }

    /// <summary>Cancelled when it is over.</summary>
    public CancellationTokenSource Over { get; }

    private TimeSpan MostWork => _conditions.Settings.Time(ServiceSettings.BatchWorkSeconds);

    private bool IsWorkedOut => Interlocked.Read(ref _workTicks) > MostWork.Ticks;

    /// <summary>Why it is over.</summary>
    public Problem Problem =>
        IsWorkedOut ? ProblemKinds.TooLarge.With($"The lines took more than {MostWork.TotalSeconds} s of computing; send several batches.")
        : _conditions.Drain.Over.IsCancellationRequested ? ProblemKinds.Unavailable.With("The service is stopping; send the batch again.")
        : ProblemKinds.Unavailable.With($"The batch was not done in {_conditions.Settings.Value(ServiceSettings.BatchSeconds)} s.");

    /// <summary>A line has been computed for so long.</summary>
    public void AddWork(TimeSpan time)
    {
        Interlocked.Add(ref _workTicks, time.Ticks);
        if (IsWorkedOut)
        {
            Over.Cancel();
        }
    }

    public void Dispose() => Over.Dispose();
}
