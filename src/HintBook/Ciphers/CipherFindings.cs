using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Reading;
using HintBook.Text;

namespace HintBook.Ciphers;

/// <summary>What the codes and their clues tell an author.</summary>
internal static class CipherFindings
{
    private const int MostSerials = 5;
    private const int MostUnread = 8;

    public static readonly FindingCode WrongLengthCode = new("HB4101", Severity.Error, "an answer of the wrong length for its lock");
    public static readonly FindingCode NotOnWheelCode = new("HB4102", Severity.Error, "an answer with a symbol that its lock doesn't show");
    public static readonly FindingCode NoReadsCode = new("HB4103", Severity.Note, "a clue that nothing proves");
    public static readonly FindingCode NoClueCode = new("HB4104", Severity.Warning, "ways of reading without a clue");
    public static readonly FindingCode NothingToSetCode = new("HB4105", Severity.Error, "an answer that nobody can set");
    public static readonly FindingCode UnknownWayCode = new("HB4201", Severity.Error, "a way of reading that isn't known");
    public static readonly FindingCode BadArgumentCode = new("HB4202", Severity.Error, "a way of reading that is told something it can't use");
    public static readonly FindingCode StuckCode = new("HB4203", Severity.Error, "a way of reading that doesn't apply");
    public static readonly FindingCode OtherAnswerCode = new("HB4204", Severity.Error, "a clue that gives another answer");
    public static readonly FindingCode UnknownSourceCode = new("HB4205", Severity.Error, "a code or table that isn't in the book");
    public static readonly FindingCode CircleCode = new("HB4206", Severity.Error, "codes that read each other in a circle");
    public static readonly FindingCode LateSourceCode = new("HB4207", Severity.Error, "a source that isn't the first step");
    public static readonly FindingCode UnreadCode = new("HB4208", Severity.Error, "a word that a way of reading can't read");
    public static readonly FindingCode NotThereCode = new("HB4209", Severity.Warning, "a word left out that the clue doesn't have");
    public static readonly FindingCode LikelyOtherCode = new("HB4301", Severity.Warning, "another reading that fits the lock");
    public static readonly FindingCode UnusedRuleCode = new("HB4302", Severity.Note, "a setting ruled out that nothing gives");
    public static readonly FindingCode TooLongCode = new("HB4303", Severity.Note, "a clue too long to look for other readings");

    public static readonly FindingCode CopyLacksCode = new("HB4401", Severity.Error, "a copy without a value for its code");
    public static readonly FindingCode NoCopyHasCode = new("HB4402", Severity.Error, "a name that no copy has a value for");

    public static readonly FindingCode CantBeMadeCode = new("HB4403", Severity.Error, "a clue that can't be made");

    public static Finding CantBeMade(Code code, ClueOnPaper asked, string why) => CantBeMadeCode.At(
        asked.Way.At, $"No clue of the kind “{asked.Way.Value}” can be made for {code.Id}.", why);

    public static Finding WrongLength(Code code, int symbols, WheelLock held) => WrongLengthCode.At(
        code.Answer.At,
        $"The answer {TextPieces.Quoted(code.Answer.Value)} has {Words.Count(symbols, "symbol")}, but its lock has {Words.Count(held.Wheels, "wheel")}.",
        "Correct the answer, or “wheels”.",
        new Related(held.At, "This is the lock."));

    public static Finding NotOnWheel(Code code, string symbol, WheelLock held) => NotOnWheelCode.At(
        code.Answer.At,
        $"The answer {TextPieces.Quoted(code.Answer.Value)} can't be set: no wheel shows {TextPieces.Quoted(symbol)}.",
        $"Each wheel shows {TextPieces.Quoted(held.Symbols)}. Correct the answer, or “symbols”.",
        new Related(held.At, "This is the lock."));

    public static Finding NotOnDial(Code code, DialLock held) => NotOnWheelCode.At(
        code.Answer.At,
        $"The answer {TextPieces.Quoted(code.Answer.Value)} can't be set: “{held.Dial.Id}” has no such position.",
        Nearest.To(code.Answer.Value, held.Dial.Positions) is { } near
            ? $"Write instead: \"{near}\""
            : "Write one of its positions, or correct them.",
        new Related(held.Dial.Id.At, "This is the dial."));

    public static Finding NothingToSet(Code code) => NothingToSetCode.At(
        code.Answer.At, $"The answer of {code.Id} has nothing in it that could be set or said.", "Write the answer as a solver sets it.");

    public static Finding NoReads(Code code) => NoReadsCode.At(
        code.Clue!.Value.At,
        $"Nothing says how this clue gives {TextPieces.Quoted(code.Answer.Value)}, so it isn't proved.",
        "Add “reads: [ … ]” with the ways of reading, in order; “hintbook prove --ways” lists them.");

    public static Finding NoClue(Code code) => NoClueCode.At(
        code.Reads[0].At,
        $"{code.Id} has ways of reading, but no text to read.",
        "Write the clue's text under “clue”, or begin with “{ from: other-code }”.");

    public static Finding UnknownWay(ReadingStep step) => UnknownWayCode.At(
        step.Way.At,
        $"There is no way of reading called “{step.Way}”.",
        Nearest.To(step.Way.Value, Ways.Names) is { } near
            ? $"Write instead: {near}"
        : WaysLike(step.Way.Value) is { Length: > 0 } like ? $"Write instead: {Words.List(like.Select(name => $"“{name}”"), "or")}."
            : $"Known are {Words.List(Ways.Names.Select(name => $"“{name}”"))}.");

    // Those with the word in their names, its plural aside.
    private static string[] WaysLike(string word) => word.TrimEnd('s') is { Length: > 3 } stem
        ? [.. Ways.Names.Where(name => name.Contains(stem, StringComparison.OrdinalIgnoreCase)).OrderBy(name => name.IndexOf(stem, StringComparison.Ordinal))]
        : [];

    public static Finding BadArgument(ReadingStep step, string why, WayArgument? told) => BadArgumentCode.At(
        step.At,
        $"“{step.Way}” can't be read like this: {why}.",
        told is null ? $"Write instead: {step.Way}" : $"Write instead: {{ {step.Way}: {told.Example} }}, with {told.What}.");

    public static Finding Stuck(ReadingStep step, string got, string why) => StuckCode.At(
        step.At,
        $"“{step.Way}” doesn't apply here: {why}.",
        $"It was given {TextPieces.Quoted(got)}. Correct the clue, or take another way at this step.");

    public static Finding Unread(ReadingStep step, ReadingResult.Unread unread, bool isFirst) => UnreadCode.At(
        step.At,
        $"“{step.Way}” can't read {Words.List(unread.Words.Take(MostUnread).Select(TextPieces.Quoted))}"
            + $"{(unread.Words.Length > MostUnread ? " and more" : "")}.",
        string.Concat(unread.Meant.Take(MostUnread).Select(word => $"For {TextPieces.Quoted(word.Read)} perhaps write {TextPieces.Quoted(word.Gives)}. "))
            + (isFirst ? $"Correct the clue. {LeaveOut(unread.Words)}" : "Correct the clue, or the step before this one."));

    private static string LeaveOut(ImmutableArray<string> words) =>
        $"If {(words.Length == 1 ? "it doesn't count, leave it" : "they don't count, leave them")} out by name: "
        + $"“skip: [ {string.Join(", ", words.Select(Scalar))} ]”.";

    public static Finding NotThere(Code code, Located<string> word) => NotThereCode.At(
        word.At,
        $"The clue of {code.Id} has no {TextPieces.Quoted(word.Value)} to leave out.",
        Nearest.To(word.Value, TextPieces.Words(code.Clue?.Value ?? "").Select(piece => piece.Value)) is { } near
            ? $"Write instead: {near}"
            : "Take it out of “skip”, or correct it.");

    public static Finding OtherAnswer(Code code, ReadingStep step, string gave, string? instead) => OtherAnswerCode.At(
        step.At,
        $"The clue of {code.Id} gives {TextPieces.Quoted(gave)}, but the answer is {TextPieces.Quoted(code.Answer.Value)}.",
        instead is null
            ? "Correct the clue, the ways of reading or the answer; “hintbook prove” shows each step."
            : $"With {instead} here it would be the answer.",
        new Related(code.Answer.At, "This is the answer."));

    public static Finding UnknownSource(Located<string> name, string kind, IEnumerable<string> known) => UnknownSourceCode.At(
        name.At,
        $"The book has no {kind} called “{name}”.",
        Nearest.To(name.Value, known) is { } near ? $"Write instead: {near}"
            : known.Any() ? $"There is {Words.List(known.Select(one => $"“{one}”"))}."
            : kind == "table" ? "Add it to the book under “tables”." : "Add it to the book under “codes”.");

    public static Finding Circle(ReadingStep step, IEnumerable<string> way) => CircleCode.At(
        step.At,
        $"These codes read each other in a circle: {string.Join(" → ", way)}.",
        "Let one of them start from a clue of its own.");

    public static Finding LateSource(ReadingStep step) => LateSourceCode.At(
        step.At, "“from” says which text is read, so it can only come first.", "Move it to the front, or take it out.");

    public static Finding LikelyOther(Code code, IReadOnlyCollection<OtherReading> others) => LikelyOtherCode.At(
        code.Clue?.At ?? code.Answer.At,
        $"A solver may set {Told(others)}; the answer of {code.Id} is {TextPieces.Quoted(code.Answer.Value)}.",
        $"Make the clue clearer, or say why it is clear enough: “ruled-out: {{ \"{others.First().Setting}\": the reason }}”.");

    public static Finding UnusedRule(RuledOut rule) => UnusedRuleCode.At(
        rule.Setting.At, $"No other reading of the clue gives {TextPieces.Quoted(rule.Setting.Value)}.", "Take it out of “ruled-out”, or correct it.");

    public static Finding TooLong(Code code, int most) => TooLongCode.At(
        code.Clue!.Value.At,
        $"The clue of {code.Id} has {Words.Grouped(code.Clue!.Value.Value.Length)} characters: other readings are looked for only up to {Words.Grouped(most)}.",
        "Nothing to do, unless a solver could read something else there.");

    public static Finding CopyLacks(Copy copy, Located<string> name, Code code) => CopyLacksCode.At(
        copy.Serial.At,
        $"Copy {copy.Serial} has no value “{name}”, which {code.Id} takes from each copy.",
        $"Add it: “{Entry(copy, name)}”.",
        new Related(name.At, "Here it is asked for."));

    public static Finding NoCopyHas(Located<string> name, ImmutableArray<Copy> copies) => NoCopyHasCode.At(
        name.At,
        $"No copy has a value “{name}”.",
        Nearest.To(name.Value, copies.SelectMany(copy => copy.Values).Select(value => value.Name.Value)) is { } near ? $"Write instead: {near}"
            : copies.IsEmpty ? $"List the copies in {Copies.FileName}: “copies: {{ 001: {{ own: {{ {name}: … }} }} }}”."
            : $"Give each copy one: “{Entry(copies[0], name)}”.");

    // As it is written in the file that the copy stands in.
    private static string Entry(Copy copy, Located<string> name) => copy.Serial.At.File.Path == Copies.FileName
        ? $"{copy.Serial}: {{ own: {{ {name}: … }} }}"
        : $"{copy.Serial}: {{ {name}: … }}";

    /// <summary>A finding about one copy or several that have it alike.</summary>
    public static Finding InCopies(Finding finding, IReadOnlyCollection<string> serials, int copies) => finding with
    {
        Message = serials.Count == copies && copies > 1 ? $"In every copy: {finding.Message}"
            : serials.Count == 1 ? $"In copy {serials.First()}: {finding.Message}"
            : $"In the copies {Words.List(Shortened(serials))}: {finding.Message}",
    };

    private static IEnumerable<string> Shortened(IReadOnlyCollection<string> serials) =>
        serials.Count > MostSerials ? [.. serials.Take(MostSerials), $"{serials.Count - MostSerials} more"] : serials;

    // Words of letters need no quotes in YAML, but for those that are taken for true, false or nothing.
    private static string Scalar(string word) =>
        word.All(char.IsLetter) && word.ToLowerInvariant() is not ("true" or "false" or "null" or "yes" or "no" or "on" or "off" or "y" or "n")
            ? word
            : $"\"{word.ReplaceLineEndings(" ").Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";

    private static string Told(IEnumerable<OtherReading> others) => Words.List(others.Select(other => $"{other.Setting} ({other.How})"), "or");
}
