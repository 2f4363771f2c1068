using HintBook.Starting;

namespace HintBook.Cli.Verbs;

/// <summary>What a maker is asked when a book is begun.</summary>
internal static class BookQuestions
{
    /// <summary>Asks for what an option hasn't said yet, if somebody is there to answer. An empty answer leaves the small book's own word.</summary>
    /// <param name="words">What is said already.</param>
    /// <param name="terminal">Where it is asked.</param>
    public static BookWords Ask(BookWords words, Terminal terminal)
    {
        if (terminal.Answer is not { } answer)
            return words;
        return new(
            words.Title ?? Answered("What is the box called? (Enter: say it later)"),
            words.Maker ?? Answered("Who makes it? (Enter: say it later)"),
            words.Language ?? Language());

        string? Answered(string question) => terminal.Ask(question, answer) is { Length: > 0 } said ? said : null;

        string? Language()
        {
            while (Answered($"In which language? {BookLanguages.Tags} (Enter: en)") is { } said)
            {
                if (BookWords.IsLanguage(said))
                    return said;
                terminal.Say($"“{said}” is no tag of a language: two or three letters, such as en or de. {BookLanguages.Known}");
            }

            return null;
        }
    }
}
