namespace CalcService.Api.Tests.Fixtures;

/// <summary>Files of the repository that tests hold against the running service.</summary>
public static class Repository
{
    public static string Root { get; } = FindRoot();

    /// <summary>Whether files are written instead of compared.</summary>
    public static bool Accepts => Environment.GetEnvironmentVariable("CALCSERVICE_ACCEPT") == "1";

    public static string PathOf(params string[] parts) => Path.Combine([Root, .. parts]);

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "CalcService.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("CalcService.sln is in none of the folders above the tests.");
    }
}
