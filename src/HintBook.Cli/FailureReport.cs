using System.Diagnostics;
using System.Runtime.InteropServices;
using System.Text;

namespace HintBook.Cli;

/// <summary>
/// What is written down of something that nobody expected: the verb, the version, the system, and the kinds and places of the exceptions.
/// Their messages are left out, since they may quote the book, and so are arguments and paths.
/// </summary>
internal static class FailureReport
{
    private const int MostReports = 1000;

    /// <summary>Writes a report into a file of its own, which only its owner may read.</summary>
    /// <returns>The file's path; null if it can't be written.</returns>
    public static string? Lay(string folder, string verb, Exception failure)
    {
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        for (var number = 1; number <= MostReports; number++)
        {
            var path = Path.Combine(folder, $"hintbook-report-{number}.txt");
            if (File.Exists(path))
                continue;
            try
            {
                using var file = new FileStream(path, options);
                file.Write(Encoding.UTF8.GetBytes(Write(verb, failure)));
                return path;
            }
            catch (Exception denied) when (denied is IOException or UnauthorizedAccessException)
            {
                // Another run may have taken the name just now; where nothing can be written, nothing was made.
                if (!File.Exists(path))
                    return null;
            }
        }

        return null;
    }

    /// <summary>The report's text.</summary>
    public static string Write(string verb, Exception failure)
    {
        var text = new StringBuilder();
        text.Append($"HintBook {Program.Version}\nverb: {verb}\n");
        text.Append($"{RuntimeInformation.FrameworkDescription}, {RuntimeInformation.OSDescription}, {RuntimeInformation.ProcessArchitecture}\n");
        for (var (cause, joint) = (failure, ""); cause is not null; (cause, joint) = (cause.InnerException, "caused by "))
        {
            text.Append($"\n{joint}{cause.GetType().FullName}\n");
            foreach (var frame in new StackTrace(cause, fNeedFileInfo: true).GetFrames())
                text.Append($"  {Place(frame)}\n");
        }

        return text.ToString();
    }

    private static string Place(StackFrame frame)
    {
        var method = DiagnosticMethodInfo.Create(frame);
        var name = method is null ? "?" : $"{method.DeclaringTypeName}.{method.Name}";
        return frame.GetFileLineNumber() is > 0 and var line ? $"{name}, line {line}" : name;
    }
}
