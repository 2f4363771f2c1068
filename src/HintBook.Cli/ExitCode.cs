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
}
