using System.Collections.Immutable;

namespace HintBook.Cli;

/// <summary>How a verb ends, as scripts see it.</summary>
internal static class ExitCode
{
    /// <summary>Everything is fine.</summary>
    public const int Fine = 0;

    /// <summary>The book has errors, or a claim about it is refuted.</summary>
    public const int BookHasErrors = 1;

    /// <summary>The command can't be understood, or was given something it can't use.</summary>
    public const int WrongUsage = 2;

    /// <summary>The machine failed, or the user stopped it.</summary>
    public const int MachineFailed = 3;

    /// <summary>Something that nobody expected: a mistake in the program (<c>EX_SOFTWARE</c> of sysexits.h, 4.3BSD).</summary>
    public const int Unexpected = 70;

    /// <summary>Each of them in the order of the numbers, with what it means to whoever reads the help.</summary>
    public static ImmutableArray<(int Code, string Meaning)> Meanings { get; } =
    [
        (Fine, "all is fine"),
        (BookHasErrors, "the book has errors, or a claim about it is refuted"),
        (WrongUsage, "the command was wrong"),
        (MachineFailed, "the machine failed (a full disk, say), or you stopped it"),
        (Unexpected, "something that nobody expected; a report lies in the system's temporary folder"),
    ];
}
