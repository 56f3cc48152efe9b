using CalcService.Engine.SelfTest;

namespace CalcService.Api.Hosting;

/// <summary>Whether this instance may answer: the known answers came out right, and it isn't stopping.</summary>
public sealed partial class Readiness(Drain drain, ILogger<Readiness> logger) : IHostedService
{
    /// <summary>The known answers as computed at start.</summary>
    public IReadOnlyList<KnownAnswer> KnownAnswers { get; private set; } = [];

    /// <summary>Whether all of them came out right. Without that no calculation is answered.</summary>
    public bool ComputesRight { get; private set; }

    /// <summary>Whether new work should be sent here. What comes while the instance stops is still answered.</summary>
    public bool IsReady => ComputesRight && !drain.HasBegun;

    /// <summary>Computes the known answers before the server takes its first request.</summary>
    public Task StartAsync(CancellationToken cancellationToken)
    {
        KnownAnswers = Engine.SelfTest.KnownAnswers.Run();
        ComputesRight = KnownAnswers.All(answer => answer.Passed);
        if (!ComputesRight)
        {
            foreach (var wrong in KnownAnswers.Where(answer => !answer.Passed))
            {
                LogSelfTestFailed(logger, wrong.Id, wrong.Delta);
            }
        }

        return Task.CompletedTask;
    }

    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    [LoggerMessage(Level = LogLevel.Critical, Message = "Self-test {KnownAnswer} is off by {Delta}: this instance answers no calculation")]
    private static partial void LogSelfTestFailed(ILogger logger, string knownAnswer, double delta);
}
