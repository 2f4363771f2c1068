using System.Text;

namespace HintBook.Cli;

/// <summary>Where a verb prints: results on <see cref="Out"/>, everything else on <see cref="Error"/>. Passed in, so that tests can read it.</summary>
internal sealed record Terminal
{
    /// <summary>For results, which may be piped on.</summary>
    public required TextWriter Out { get; init; }

    /// <summary>For progress, warnings and what went wrong.</summary>
    public required TextWriter Error { get; init; }

    /// <summary>Whether results may be coloured.</summary>
    public bool ColourOut { get; init; }

    /// <summary>Whether the rest may be coloured.</summary>
    public bool ColourError { get; init; }

    /// <summary>Whether progress may be drawn over itself.</summary>
    public bool Live { get; init; }

    /// <summary>The process's own. <c>NO_COLOR</c> (no-color.org) and <c>TERM=dumb</c> switch colour off.</summary>
    public static Terminal OfThisProcess()
    {
        var utf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        if (!Console.IsOutputRedirected || OperatingSystem.IsWindows())
            Console.OutputEncoding = utf8;
        var dumb = Environment.GetEnvironmentVariable("TERM") == "dumb";
        var colour = !dumb && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"));
        return new Terminal
        {
            Out = Console.Out,
            Error = Console.Error,
            ColourOut = colour && !Console.IsOutputRedirected,
            ColourError = colour && !Console.IsErrorRedirected,
            Live = !dumb && !Console.IsErrorRedirected,
        };
    }
}
