using CalcService.Engine.SelfTest;

namespace CalcService.Api.Hosting;

/// <summary>Whether this instance may answer: the known answers came out right, and it isn't stopping.</summary>
public sealed partial class Readiness(IHostApplicationLifetime lifetime, ILogger<Readiness> logger) : IHostedService
{
    /// <summary>The known answers as computed at start.</summary>
    public IReadOnlyList<KnownAnswer> KnownAnswers { get; private set; } = [];

    public bool IsReady { get; private set; }

    /// <summary>Computes the known answers before the server takes its first request.</summary>
    public Task StartAsync(CancellationToken cancellationToken)
    {
        KnownAnswers = Engine.SelfTest.KnownAnswers.Run();
        IsReady = KnownAnswers.All(answer => answer.Passed);
        if (!IsReady)
        {
            foreach (var wrong in KnownAnswers.Where(answer => !answer.Passed))
            {
                LogSelfTestFailed(logger, wrong.Id, wrong.Delta);
            }
        }

        // Unready first, so that no new work is sent while what is in flight ends.
        lifetime.ApplicationStopping.Register(() => IsReady = false);
        return Task.CompletedTask;
    }

    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    [LoggerMessage(Level = LogLevel.Critical, Message = "Self-test {KnownAnswer} is off by {Delta}: this instance answers no calculation")]
    private static partial void LogSelfTestFailed(ILogger logger, string knownAnswer, double delta);
}
