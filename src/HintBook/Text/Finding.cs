using System.Collections.Immutable;

namespace HintBook.Text;

/// <summary>How much a finding matters.</summary>
public enum Severity
{
    /// <summary>Worth knowing; shown only when asked for.</summary>
    Note,

    /// <summary>Very likely a mistake; the book is published and the finding is said.</summary>
    Warning,

    /// <summary>A reader or an owner would be harmed; nothing is published.</summary>
    Error,
}

/// <summary>How severities are written.</summary>
public static class SeverityWords
{
    /// <summary><c>error</c>, <c>warning</c> or <c>note</c>: our word in every output, and SARIF's as well.</summary>
    public static string Word(this Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        _ => "note",
    };
}

/// <summary>The kind of a finding: its number is printed, documented and never used for anything else.</summary>
/// <param name="Id">Such as <c>HB1104</c>; the first digit is the room.</param>
/// <param name="Severity">What every finding of this kind weighs.</param>
/// <param name="Title">A short name for lists, in plain words.</param>
public sealed record FindingCode(string Id, Severity Severity, string Title)
{
    /// <summary>A finding of this kind.</summary>
    /// <param name="at">Where it is.</param>
    /// <param name="message">What is wrong: one or two sentences.</param>
    /// <param name="help">What to write instead, or null where there is nothing to advise.</param>
    /// <param name="related">Other places that belong to it, in the order to read them.</param>
    public Finding At(Span at, string message, string? help = null, params ImmutableArray<Related> related) =>
        new() { Code = this, At = at, Message = message, Help = help, Related = related };
}

/// <summary>A second place that helps to understand a finding.</summary>
/// <param name="At">The place.</param>
/// <param name="Message">What is to be seen there.</param>
public sealed record Related(Span At, string Message);

/// <summary>Something to tell the author. <see cref="Message"/> makes sense alone; <see cref="Help"/> says what to write instead.</summary>
public sealed record Finding
{
    /// <summary>What kind of finding this is.</summary>
    public required FindingCode Code { get; init; }

    /// <summary>Where it is.</summary>
    public required Span At { get; init; }

    /// <summary>What is wrong: one or two sentences.</summary>
    public required string Message { get; init; }

    /// <summary>What to write instead, or null where there is nothing to advise.</summary>
    public string? Help { get; init; }

    /// <summary>Other places that belong to it, in the order to read them.</summary>
    public ImmutableArray<Related> Related { get; init; } = [];

    /// <summary>
    /// Whether it says that nothing gives what it speaks of. Where the box can't be opened, that may only follow from what keeps it shut.
    /// </summary>
    public bool SaysNothingGivesIt { get; init; }

    /// <summary>Whether it keeps the book from being published.</summary>
    public bool IsError => Code.Severity == Severity.Error;
}
