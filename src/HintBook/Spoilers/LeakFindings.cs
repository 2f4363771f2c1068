using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Spoilers.Languages;
using HintBook.Text;

namespace HintBook.Spoilers;

/// <summary>What can be wrong with what a reader is told where.</summary>
internal static class LeakFindings
{
    public static readonly FindingCode LeakCode = new("HB3101", Severity.Error, "a secret is given away");
    public static readonly FindingCode PerhapsCode = new("HB3102", Severity.Warning, "a secret may be given away");
    public static readonly FindingCode ShownCode = new("HB3103", Severity.Error, "a photo shows a secret too early");
    public static readonly FindingCode TitleCode = new("HB3104", Severity.Warning, "the title of a later stage is given away");
    public static readonly FindingCode OfCopyCode = new("HB3105", Severity.Error, "one copy's code is told to all");
    public static readonly FindingCode LeftOutCode = new("HB3201", Severity.Warning, "an answer that leaves something out");
    public static readonly FindingCode RepeatsCode = new("HB3202", Severity.Note, "a step of help that repeats the one before");
    public static readonly FindingCode UnlookedCode = new("HB3301", Severity.Note, "a name that can't be looked for");
    public static readonly FindingCode UnusedCode = new("HB3302", Severity.Note, "an allowance that nothing uses");
    public static readonly FindingCode LanguageCode = new("HB3303", Severity.Note, "a language whose word forms aren't known");

    /// <summary>Words that give a secret away.</summary>
    /// <param name="secret">The secret.</param>
    /// <param name="at">The words.</param>
    /// <param name="where">The place, such as <c>the nudge</c>.</param>
    /// <param name="sureness">How sure it is that the words mean the secret, and that it isn't known there.</param>
    /// <param name="why">Where it becomes known, and why that isn't certain here.</param>
    public static Finding Leak(Secret secret, Span at, string where, Sureness sureness, Reason why) =>
        (secret.Kind == SecretKind.Title ? TitleCode : sureness == Sureness.Sure ? LeakCode : PerhapsCode).At(
            at,
            $"{Capital(where)} mentions {secret.Called}{(sureness == Sureness.Sure || secret.Kind == SecretKind.Title ? "" : ", as it seems")}. {why.Says}",
            $"{why.Mend} To let it stand, write “allow: [ {{ mention: {Quoted(secret.Spellings[0])}, why: … }} ]”.",
            why.Related) with { SaysNothingGivesIt = why.IsThatNothingGivesIt };

    /// <summary>Words that give one copy's code to the owners of all. The code itself is said by the maker's own words alone, which are shown.</summary>
    public static Finding OfCopy(Secret secret, Span at, string where, Sureness sureness) => (sureness == Sureness.Sure ? OfCopyCode : PerhapsCode).At(
        at,
        $"{Capital(where)} says what opens “{secret.Id}” of copy {secret.Serial}{(sureness == Sureness.Sure ? "" : ", as it seems")}. "
            + "Every owner reads it, and for other copies it is wrong.",
        "Say where owners find their own, such as “the number on the sheet of your copy”. "
            + "To let it stand, write “allow: [ { mention: …, why: … } ]” with the code as it stands there.");

    public static Finding Shown(Secret secret, Span at, string where, Reason why) => ShownCode.At(
        at,
        $"A photo {where} shows {secret.Called}. {why.Says}",
        $"Put the photo into a later step, or take another one. To let it stand, write “allow: [ {{ mention: {Quoted(secret.Spellings[0])}, why: … }} ]”.",
        why.Related) with { SaysNothingGivesIt = why.IsThatNothingGivesIt };

    /// <summary>A picture that is used early, while its words at another place name a secret.</summary>
    public static Finding ShownElsewhere(Secret secret, Span at, string where, Photo elsewhere, Reason why) => PerhapsCode.At(
        at,
        $"A photo {where} shows {secret.Called}, as its words {Passage.In(elsewhere.Place)} say. {why.Says}",
        $"Put another picture here, or put other words there. To let it stand, write “allow: [ {{ mention: {Quoted(secret.Spellings[0])}, why: … }} ]”.",
        [.. why.Related, new Related(elsewhere.Alt?.At ?? elsewhere.File.At, "Here the picture is said to show it.")]) with
    {
        SaysNothingGivesIt = why.IsThatNothingGivesIt,
    };

    /// <summary>An answer that leaves out what its stage gives, or the code that it needs.</summary>
    /// <param name="book">The book, in the language of the answer.</param>
    /// <param name="stage">The stage.</param>
    /// <param name="named">What is left out.</param>
    public static Finding LeftOut(Book book, Stage stage, Named named) => LeftOutCode.At(
        stage.Answer.At with { End = EndOfLine(stage.Answer.At) },
        named is Code code
            ? $"The answer of “{stage.Title.Value}” leaves out the code {code.Answer.Value} of “{named.Name}”."
            : $"The answer of “{stage.Title.Value}” doesn't say that it gives “{named.Name}”.",
        named is Code ? $"Write the code out in {stage.File.Path}: whoever opens the answer wants to be told everything."
        : book.Source is null ? $"Name it in {stage.File.Path}, or take it out of “gives”."
        : $"Name it in {stage.File.Path}. What it is called in “{book.Language.Value}” stands in book.{book.Language.Value}.yaml, "
            + $"under “things” and “{named.Id.Value}”: “name”, and other names under “also”.",
        new Related(named.Id.At, "It is declared here."));

    public static Finding Repeats(Stage stage, Prose tier, string name, string before) => RepeatsCode.At(
        tier.At with { End = EndOfLine(tier.At) },
        $"The {name} of “{stage.Title.Value}” says almost word for word what its {before} says.",
        "A reader who asks for more help wants to be told more.");

    public static Finding NotLookedFor(NotSought unlooked) => UnlookedCode.At(
        unlooked.Secret.At,
        unlooked.Secret.IsHeld
            ? $"“{unlooked.Spelling}” {unlooked.Why}, so it is looked for only where a sentence is about handling the thing."
            : $"“{unlooked.Spelling}” {unlooked.Why}, so nobody looks for it in the texts.",
        unlooked.Secret.Kind is SecretKind.Answer or SecretKind.CopyAnswer
            ? "Read the hints once with it in mind: nothing else finds it there. Codes of two symbols or more are looked for, unless they are everyday words."
            : "Mark it “seen: true” if it shows on the closed box. Otherwise give it a name that nothing else has, or a second one under “also”.");

    public static Finding Unused(Allowance allowance, bool isSecret) => UnusedCode.At(
        allowance.Mention.At,
        isSecret ? $"Nothing needs the allowance for “{allowance.Mention.Value}”." : $"“{allowance.Mention.Value}” names no secret of this book.",
        isSecret ? "Take it out: otherwise it would hide a leak some day." : "Write the secret as it is declared: its name, another name of it, or its code.");

    public static Finding Language(Located<string> language, SourceFile file) => LanguageCode.At(
        language.At.End > language.At.Start ? language.At : file.Top,
        $"The hints are in “{language.Value}”, of which neither the plurals nor the number words are known: "
            + "names are looked for as they are written, and codes in figures.",
        $"Known are {Words.List(SearchLanguage.Known.Select(known => $"“{known.Code}”"))}: if the hints are in one of these, correct “language”. "
            + "Otherwise write the other forms of each name under “also”, and read the hints once with the codes in mind.");

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private static string Quoted(string text)
    {
        if (text.All(letter => char.IsAsciiLetter(letter) || letter is ' ' or '-'))
            return text;
        var escaped = text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal);
        return $"\"{escaped}\"";
    }

    private static int EndOfLine(Span at)
    {
        var line = at.File.Text.IndexOf('\n', at.Start);
        return line < 0 ? at.End : Math.Min(at.End, line);
    }
}

/// <summary>Why a secret isn't known at a place.</summary>
/// <param name="Says">Where it becomes known, and why that isn't certain here.</param>
/// <param name="Mend">What would mend it.</param>
/// <param name="Related">The stage that gives it.</param>
internal sealed record Reason(string Says, string Mend, ImmutableArray<Related> Related)
{
    /// <summary>Whether it is that no stage gives the secret or moves it.</summary>
    public bool IsThatNothingGivesIt { get; init; }
}
