using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Completions;
using System.CommandLine.Help;

namespace HintBook.Cli.Usage;

/// <summary>What stands in the place of an argument or behind an option.</summary>
internal enum Takes
{
    /// <summary>Nothing: an option that is there or isn't.</summary>
    Nothing,

    /// <summary>A word of the user's own, or one of those that are listed.</summary>
    Word,

    /// <summary>The path of a folder.</summary>
    Folder,

    /// <summary>The path of a file, or of a folder.</summary>
    Path,
}

/// <summary>An argument or an option as its readers are told of it.</summary>
/// <param name="Name">What it is called: <c>BOOK</c> or <c>--format</c>.</param>
/// <param name="Value">What stands for its value, such as <c>PATH</c>; empty where it takes none.</param>
/// <param name="Says">What it is for.</param>
/// <param name="Takes">What it takes.</param>
/// <param name="Words">The words that can be written there; empty where they can't be listed.</param>
/// <param name="MayBeLeftOut">Whether the verb goes without it.</param>
/// <param name="MayBeRepeated">Whether it takes several values.</param>
internal sealed record SheetEntry(
    string Name, string Value, string Says, Takes Takes, ImmutableArray<string> Words, bool MayBeLeftOut, bool MayBeRepeated);

/// <summary>A verb as its readers are told of it.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Says">What it does.</param>
/// <param name="Arguments">Its arguments in their order.</param>
/// <param name="Options">Its options, <c>--help</c> last.</param>
/// <param name="Example">A command to begin with.</param>
internal sealed record VerbSheet(
    string Name, string Says, ImmutableArray<SheetEntry> Arguments, ImmutableArray<SheetEntry> Options, string Example);

/// <summary>
/// The program as its readers are told of it: the one description that <c>--help</c> shows, the manual page prints and the shells complete from.
/// It is read off the commands themselves.
/// </summary>
/// <param name="Says">What the program does.</param>
/// <param name="Verbs">Its verbs, in the order of the list.</param>
internal sealed record Sheet(string Says, ImmutableArray<VerbSheet> Verbs)
{
    private static readonly ImmutableArray<string> Folders = ["BOOK", "FOLDER"];
    private static readonly ImmutableArray<string> Paths = ["PATH", "FILM", "CAPTIONS", "LIST", "FILE.pdf"];

    private static readonly SheetEntry Help = new("--help", "", "Show how the verb is used.", Takes.Nothing, [], true, false);

    /// <summary>Reads the description off the commands.</summary>
    public static Sheet Of(RootCommand root) => new(root.Description ?? "", [.. root.Subcommands.Select(Verb)]);

    private static VerbSheet Verb(Command verb) => new(
        verb.Name,
        verb.Description ?? "",
        [.. verb.Arguments.Select(Argument)],
        [.. verb.Options.Where(option => option is not HelpOption).Select(Option), Help],
        Examples.Of(verb.Name));

    private static SheetEntry Argument(Argument argument) => new(
        argument.Name,
        argument.Name,
        argument.Description ?? "",
        Kind(argument.Name),
        Words(argument),
        argument.Arity.MinimumNumberOfValues == 0 || argument.HasDefaultValue,
        argument.Arity.MaximumNumberOfValues > 1);

    private static SheetEntry Option(Option option)
    {
        var isFlag = option.ValueType == typeof(bool);
        var words = isFlag ? [] : Words(option);
        var value = isFlag ? "" : option.HelpName ?? string.Join('|', words);
        return new(option.Name, value, option.Description ?? "", isFlag ? Takes.Nothing : Kind(value), words, !option.Required, false);
    }

    private static Takes Kind(string name) => Folders.Contains(name) ? Takes.Folder : Paths.Contains(name) ? Takes.Path : Takes.Word;

    private static ImmutableArray<string> Words(Symbol symbol) => [.. symbol.GetCompletions(CompletionContext.Empty).Select(item => item.Label)];
}
