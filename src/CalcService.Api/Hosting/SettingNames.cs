using CalcService.Api.Catalogues;

namespace CalcService.Api.Hosting;

/// <summary>The names that whoever runs the service can set. A name that is nearly one of them would be passed over in silence.</summary>
public static class SettingNames
{
    /// <summary>So many letters put in, left out or exchanged are a slip; more are another program's name.</summary>
    private const int Slip = 2;

    public static IReadOnlyList<string> All { get; } =
    [
        .. ServiceSettings.All.Select(setting => setting.Key),
        Admission.ClientHeaderKey, CrossOrigin.Key, CompoundFolder.Key, ServiceLog.Key,
    ];

    /// <exception cref="StartRefusedException">Something is set that is none of them, in a section of ours or nearly so.</exception>
    public static void Check(IConfiguration configuration)
    {
        foreach (var (key, _) in configuration.AsEnumerable().Where(setting => setting.Value is not null && setting.Key.Contains(':')))
        {
            var (nearest, distance) = All.Select(known => (known, Distance(known.ToUpperInvariant(), key.ToUpperInvariant())))
                .MinBy(known => known.Item2);
            if (distance > 0 && (distance <= Slip || IsOurs(key)))
            {
                throw new StartRefusedException($"{Reading.ReadErrors.Show(key)} is no setting; the nearest is {nearest}.");
            }
        }
    }

    private static bool IsOurs(string key) =>
        All.Any(known => key.StartsWith(known[..(known.IndexOf(':') + 1)], StringComparison.OrdinalIgnoreCase));

    /// <summary>Letters to put in, leave out or exchange until one is the other (Levenshtein).</summary>
    private static int Distance(string one, string other)
    {
        var row = Enumerable.Range(0, other.Length + 1).ToArray();
        for (var i = 0; i < one.Length; i++)
        {
            var corner = row[0]++;
            for (var j = 0; j < other.Length; j++)
            {
                var exchanged = corner + (one[i] == other[j] ? 0 : 1);
                corner = row[j + 1];
                row[j + 1] = Math.Min(exchanged, 1 + Math.Min(row[j], row[j + 1]));
            }
        }

        return row[^1];
    }
}
