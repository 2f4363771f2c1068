using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Checking;
using HintBook.Pages;
using HintBook.Text;

namespace HintBook.Replying;

/// <summary>
/// Answers an owner who is stuck, in their language: how they see that they are there, what to beware of, one step of help, and the way to more. It is put
/// together from the words of the theme and from what the page of the stage says at that step, and from nothing else.
/// </summary>
public sealed class LetterWriter
{
    private readonly Examined known;
    private readonly SitePlan plan;
    private readonly ThemeWords words;
    private readonly Copy? copy;

    /// <summary>Prepares it.</summary>
    /// <param name="known">A book without errors.</param>
    /// <param name="language">One of the book's languages; its own for any other, and for null.</param>
    /// <param name="copy">The owner's copy, whose own values stand in an answer; null where it isn't known.</param>
    public LetterWriter(Examined known, string? language, Copy? copy)
    {
        (this.known, this.copy) = (known, copy);
        plan = Site.InEachLanguage(known.Site.Plan).FirstOrDefault(each => Same(each.Book.Language.Value, language), known.Site.Plan);
        words = known.Theme.WordsIn(plan.Book.Language).Words;
    }

    /// <summary>The languages in which a book can answer, its own first.</summary>
    public static ImmutableArray<string> LanguagesOf(Book book) => [.. book.Translations.Prepend(book).Select(each => each.Language.Value)];

    /// <summary>That a book isn't written in a language.</summary>
    public static string NotIn(ImmutableArray<string> languages, string language) =>
        $"The book isn't written in “{TerminalText.Shown(language)}”: it is in {Words.List(languages)}.";

    /// <summary>Whether two language tags are the same.</summary>
    public static bool Same(string one, string? other) => one.Equals(other, StringComparison.OrdinalIgnoreCase);

    /// <summary>A letter with one step of a stage's help.</summary>
    /// <param name="page">The page.</param>
    /// <param name="step">The step.</param>
    public Letter Help(LetterPage.OfStage page, LetterStep step)
    {
        var stage = plan.Book.Stages.First(stage => stage.Id.Value == page.Id);
        return Of(page.Page,
        [
            new(LetterPartKind.Heading, words["sign"]),
            new(LetterPartKind.Sign, stage.Sign.Value),
            .. Cautions(stage),
            new(LetterPartKind.Heading, words[LetterSteps.NameOf(step)]),
            new(LetterPartKind.Help, HelpOf(stage, step)),
            new(LetterPartKind.Words, step == LetterStep.Answer
                ? words.Say("letter_next", ("done", words["done"]))
                : words.Say("letter_more", ("step", words[LetterSteps.NameOf(step + 1)]))),
            .. AddressOf(plan.Addresses.Names[page.Id][0]),
        ]) with
        {
            Stage = page.Id,
            Step = step,
        };
    }

    /// <summary>A letter to somebody whose page has no stage any more: it says so and leads to “where am I?”.</summary>
    /// <param name="page">The page.</param>
    public Letter Gone(LetterPage.Gone page) => Of(page.Page, [new(LetterPartKind.Words, words["gone_how"]), .. Where()]);

    /// <summary>A letter to somebody who names no stage: it leads to “where am I?”.</summary>
    /// <param name="page">The page that was named; null for none.</param>
    public Letter NoStage(LetterPage.OfNoStage? page) => Of(page?.Page, [new(LetterPartKind.Words, words["letter_no_step"]), .. Where()]);

    private Letter Of(string? page, ImmutableArray<LetterPart> parts) => new()
    {
        Language = plan.Book.Language.Value,
        Subject = page is null
            ? $"Re: {plan.Book.Title}"
            : $"Re: {words.Say("mail_subject", ("book", plan.Book.Title.Value), ("page", page))}",
        Page = page,
        Serial = copy?.Serial.Value,
        Parts =
        [
            new(LetterPartKind.Words, words["letter_hello"]),
            .. parts,
            new(LetterPartKind.Words, words["letter_bye"]),
        ],
    };

    private IEnumerable<LetterPart> Where() =>
        [new(LetterPartKind.Words, words.Say("letter_where", ("where", words["where"]))), .. AddressOf("where")];

    // The address in the letter's language, with the ending that the cards have.
    private IEnumerable<LetterPart> AddressOf(string page) => plan.Addresses.Base is not { } site ? []
        : [new(LetterPartKind.Address, $"{site}{FolderOf()}{page}{(plan.Addresses.Short ? "" : ".html")}")];

    private string FolderOf() => plan.Languages.FirstOrDefault(each => each.Tag == plan.Book.Language.Value)?.Folder ?? "";

    private IEnumerable<LetterPart> Cautions(Stage stage)
    {
        if (stage.Cautions.IsEmpty)
            return [];
        var age = Books.Cautions.AgeOf(plan.Book);
        return
        [
            new(LetterPartKind.Heading, words["cautions"]),
            .. stage.Cautions.Select(caution => new LetterPart(LetterPartKind.Caution, string.Join('\n',
            [
                words.NameOf(caution.Kind),
                .. caution.Note is { } note ? [note] : Array.Empty<string>(),
                words.TextOf(caution.Kind, age),
            ]))),
            new(LetterPartKind.Words, words.LocalRules),
        ];
    }

    private string HelpOf(Stage stage, LetterStep step) => LetterProse.TextOf(step switch
    {
        LetterStep.Nudge => ProseHtml.Render(stage.Nudge, html: plan.Book.Html).Html,
        LetterStep.Clue => ProseHtml.Render(stage.Clue, html: plan.Book.Html).Html,
        _ => WithOwn(ProseHtml.Render(stage.Answer, Working.Build(known.Proofs, words), plan.Book.Html).Html),
    });

    // What a card of this copy fills in on the page; without a copy what stands on the page until then.
    private Html WithOwn(Html answer) => new(OwnMark.ReplaceInHtml(answer.Text, name => Html.Escaped(copy?[name]?.Value ?? words["own_value"])));
}
