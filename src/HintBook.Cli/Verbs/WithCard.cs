using System.CommandLine;
using HintBook.Publishing;
using HintBook.Sealing;

namespace HintBook.Cli.Verbs;

/// <summary><c>publish BOOK --with-card</c>: a card in place of the key of a sealed book that is lost.</summary>
internal static class WithCard
{
    /// <summary>Why a shelf isn't published so.</summary>
    public static PublishOutcome OfAShelf => new Failed(
        FailureKind.Usage,
        "A card is of one box, and this folder is a shelf of books.",
        "Publish the book by itself, with --with-card. Nothing was published.");

    /// <summary>The option. Without letters behind it they are asked for, so that they stand in no history of commands.</summary>
    public static (Action<Command> Add, Func<ParseResult, PublishOptions, PublishOptions> With) Option(Terminal terminal)
    {
        var card = new Option<string[]>("--with-card")
        {
            Description = "The key of a sealed book is lost: correct its texts with the card of a box. Asks for the letters; or write them behind it.",
            HelpName = "LETTERS",
            Arity = ArgumentArity.ZeroOrMore,
            // The groups of a card as they stand there: none of them may end up in a message about an argument that nobody knows.
            AllowMultipleArgumentsPerToken = true,
        };
        return (command => command.Add(card), (parsed, options) => parsed.GetResult(card) is null
            ? options
            : options with { WithCard = new TypedCard(Letters(parsed.GetValue(card) ?? [], terminal)) });
    }

    private static string Letters(string[] given, Terminal terminal)
    {
        if (given.Length > 0 || terminal.Answer is not { } answer)
            return string.Concat(given);
        terminal.Say("The 32 letters of a card for the whole box:");
        return answer() ?? "";
    }
}
