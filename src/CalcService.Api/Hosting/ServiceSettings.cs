namespace CalcService.Api.Hosting;

/// <summary>What whoever runs the service may set, read once at start.</summary>
public sealed class ServiceSettings
{
    /// <summary>Seconds for the head of a request to arrive.</summary>
    public static Setting HeaderSeconds { get; } = new("Limits:HeaderSeconds", 15, 1, 600);

    /// <summary>Seconds for the body of a single request to arrive.</summary>
    public static Setting BodySeconds { get; } = new("Limits:BodySeconds", 30, 1, 3600);

    /// <summary>Bytes a second below which a client that sends or reads is given up, after some seconds of grace.</summary>
    public static Setting BytesPerSecond { get; } = new("Limits:BytesPerSecond", 1024, 1, 1_000_000);

    /// <summary>Seconds that a client is waited for which stops reading its answer, or sending its batch.</summary>
    public static Setting WaitSeconds { get; } = new("Limits:WaitSeconds", 30, 1, 3600);

    /// <summary>
    /// Seconds for one calculation before the service says that it is not available. What is computed never depends on it: the budget
    /// of steps does that.
    /// </summary>
    public static Setting CalculationSeconds { get; } = new("Limits:CalculationSeconds", 30, 1, 3600);

    /// <summary>Seconds for a batch, from its head to its summary.</summary>
    public static Setting BatchSeconds { get; } = new("Limits:BatchSeconds", 900, 1, 86_400);

    /// <summary>Seconds of computing, on one core, for the lines of a batch together.</summary>
    public static Setting BatchWorkSeconds { get; } = new("Limits:BatchWorkSeconds", 600, 1, 86_400);

    /// <summary>Mebibytes of large bodies and answers that are held at once.</summary>
    public static Setting HeldMiB { get; } = new("Limits:HeldMiB", 128, 16, 1_000_000);

    /// <summary>Connections at once.</summary>
    public static Setting Connections { get; } = new("Limits:Connections", 1000, 1, 100_000);

    /// <summary>Single requests at once that compute or wait for their turn, their bodies being there.</summary>
    public static Setting Requests { get; } = new("Limits:Requests", 128, 1, 100_000);

    /// <summary>Batches in work at once.</summary>
    public static Setting Batches { get; } = new("Limits:Batches", 8, 1, 10_000);

    /// <summary>Requests of one client in a minute; 0 where there is no quota.</summary>
    public static Setting RequestsPerMinute { get; } = new("Quota:RequestsPerMinute", 0, 0, 1_000_000);

    /// <summary>Seconds from the signal to stop until no more connections are taken.</summary>
    public static Setting UnreadySeconds { get; } = new("Shutdown:UnreadySeconds", 2, 0, 600);

    /// <summary>Seconds from then until what is still in work is given up.</summary>
    public static Setting DrainSeconds { get; } = new("Shutdown:DrainSeconds", 20, 0, 3600);

    private readonly Dictionary<Setting, int> _values;

    /// <exception cref="StartRefusedException">One of them is no such number.</exception>
    public ServiceSettings(IConfiguration configuration) =>
        _values = All.ToDictionary(setting => setting, setting => setting.In(configuration));

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Setting> All { get; } =
    [
        HeaderSeconds, BodySeconds, BytesPerSecond, WaitSeconds, CalculationSeconds, BatchSeconds, BatchWorkSeconds, HeldMiB, Connections,
        Requests, Batches, RequestsPerMinute, UnreadySeconds, DrainSeconds,
    ];

    public int Value(Setting setting) => _values[setting];

    /// <summary>A setting that is in seconds.</summary>
    public TimeSpan Time(Setting setting) => TimeSpan.FromSeconds(_values[setting]);
}
