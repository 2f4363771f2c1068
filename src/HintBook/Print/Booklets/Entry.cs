using System.Collections.Immutable;
using HintBook.Print.Flow;

namespace HintBook.Print.Booklets;

/// <summary>An entry of the booklet, before it has its number.</summary>
internal sealed record Entry
{
    /// <summary>What others refer to it by.</summary>
    public required string Key { get; init; }

    /// <summary>The stages that it belongs to: one, or those to which a question leads.</summary>
    public required ImmutableArray<string> Stages { get; init; }

    /// <summary>Whether it is a question of the finder.</summary>
    public bool IsQuestion { get; init; }

    /// <summary>What it says, given the numbers of the entries by their keys.</summary>
    public required Func<Func<string, string>, EntryText> Text { get; init; }

    /// <summary>The key of a stage's nudge.</summary>
    public static string NudgeOf(string stage) => $"nudge {stage}";

    /// <summary>The key of a stage's clue.</summary>
    public static string ClueOf(string stage) => $"clue {stage}";

    /// <summary>The key of a stage's answer.</summary>
    public static string AnswerOf(string stage) => $"answer {stage}";

    /// <summary>The key of a question.</summary>
    /// <param name="file">The page of the site that asks it.</param>
    public static string QuestionOf(string file) => $"question {file}";
}

/// <summary>What an entry says.</summary>
/// <param name="Open">What stands upright.</param>
/// <param name="Veiled">What is turned or tinted, so that it isn't read in passing.</param>
/// <param name="Last">Where it goes on, upright again.</param>
internal sealed record EntryText(ImmutableArray<Block> Open, ImmutableArray<Block> Veiled, ImmutableArray<Block> Last);
