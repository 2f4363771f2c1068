using System.Diagnostics;
using System.Globalization;

namespace HintBook.Benchmarks.UnderLoad;

/// <summary>The most memory that this process has had at once since it was last forgotten (Linux man-pages, proc(5)); elsewhere since its start.</summary>
internal static class PeakMemory
{
    /// <summary>In KiB.</summary>
    public static long Kibibytes
    {
        get
        {
            if (!OperatingSystem.IsLinux())
                return Process.GetCurrentProcess().PeakWorkingSet64 / 1024;
            var line = File.ReadLines("/proc/self/status").First(line => line.StartsWith("VmHWM:", StringComparison.Ordinal));
            return long.Parse(line.Split(' ', StringSplitOptions.RemoveEmptyEntries)[1], CultureInfo.InvariantCulture);
        }
    }

    public static void Forget()
    {
        if (OperatingSystem.IsLinux())
            File.WriteAllText("/proc/self/clear_refs", "5");
    }
}
