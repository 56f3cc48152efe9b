using System.Runtime.InteropServices;

namespace CalcService.Benchmarks.Measuring;

/// <summary>
/// CPU time spent, in nanoseconds, by POSIX clocks: what others do on the machine at the same time hardly shows in it,
/// and .NET's own counters go in steps of 10 ms. The numbers of the clocks are Linux's.
/// </summary>
internal static partial class CpuClock
{
    private const int ProcessClock = 2;
    private const int ThreadClock = 3;

    /// <summary>Of all threads.</summary>
    public static double Process() => Read(ProcessClock);

    /// <summary>Of this thread.</summary>
    public static double Thread() => Read(ThreadClock);

    private static double Read(int clock) =>
        GetTime(clock, out var time) == 0 ? (time.Seconds * 1e9) + time.Nanoseconds : throw new PlatformNotSupportedException();

    [LibraryImport("libc", EntryPoint = "clock_gettime")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int GetTime(int clock, out TimeSpec time);

    [StructLayout(LayoutKind.Sequential)]
    private struct TimeSpec
    {
        public long Seconds;
        public long Nanoseconds;
    }
}
