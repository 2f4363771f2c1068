using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Sealing;
using HintBook.Text;

namespace HintBook.Checking;

/// <summary>
/// Looks at the gates of stages. A gate is asked before any help of its stage, so what it asks for must be known to everybody who stands there: otherwise
/// the one who is stuck is locked out, and not only the one who wants to skip.
/// </summary>
internal static class GateCheck
{
    /// <summary>What is wrong with them, and how long each holds.</summary>
    /// <param name="book">The book, in its own language: a translation has the same gates.</param>
    /// <param name="survey">What is certain before each stage.</param>
    public static IEnumerable<Finding> Run(Book book, Survey survey) =>
        book.Stages.SelectMany(stage => stage.Gate is { } gate ? Of(book, survey, stage, gate) : []);

    private static IEnumerable<Finding> Of(Book book, Survey survey, Stage stage, StageGate gate)
    {
        var code = gate.CodeIn(book.Box);
        if (book.Sealed is null)
            return [GateFindings.LiesOpen(gate.Written)];
        if (code is null && !gate.IsWord && WrongName(book.Box, gate.Written) is { } wrong)
            return [wrong];
        var typed = Typed(book, gate, code).ToArray();
        if (typed.Select(each => Wrong(gate, each.Word, each.At)).FirstOrDefault(finding => finding is not null) is { } odd)
            return [odd];
        if (code is not null && !IsCertain(survey, stage, code))
            return [NotKnownYet(book, survey, stage, gate, code)];
        var least = typed.Select(each => (Guesses: GateWord.Guesses(code, each.Word), each.Word)).OrderBy(each => each.Guesses).FirstOrDefault();
        return least.Word is null
            ? []
            : [GateFindings.Strength(gate.Written, code?.Lock is null && !least.Word.Any(char.IsAsciiDigit), least.Guesses, GateWord.TimeFor(least.Guesses))];
    }

    // What is typed, and where it is written if not at the gate.
    private static IEnumerable<(string Word, Span? At)> Typed(Book book, StageGate gate, Code? code) => code switch
    {
        null => [(gate.Written.Value, null)],
        { AnswerByCopy: { } own } => book.Copies.Where(copy => !copy.Retired).Select(copy => copy[own.Value]).OfType<Located<string>>()
            .Select(value => (value.Value, (Span?)value.At)),
        _ => [(code.Answer.Value, code.Answer.At)],
    };

    private static Finding? WrongName(Box box, Located<string> gate)
    {
        var isDeclared = box.Names.Any(named => named.Id.Value == gate.Value);
        var near = Nearest.To(gate.Value, box.Codes.Select(code => code.Id.Value));
        return isDeclared || near is not null ? GateFindings.NoCode(gate, isDeclared, near) : null;
    }

    private static Finding? Wrong(StageGate gate, string word, Span? at) =>
        GateWord.Odd(word) is { } odd ? GateFindings.Odd(gate.Written, at, odd, GateWord.InPlaceOf(odd))
        : Gate.Plain(word).Length == 0 ? GateFindings.Empty(gate.Written, at)
        : null;

    // Of a stage that nobody can reach something else is told.
    private static bool IsCertain(Survey survey, Stage stage, Code code) =>
        code.Seen || survey.Stages.GetValueOrDefault(stage.Id.Value) is not { Reachable: true } known || known.Gained.Contains(code.Id.Value);

    private static Finding NotKnownYet(Book book, Survey survey, Stage stage, StageGate gate, Code code)
    {
        var giver = Gives(stage, code) ? stage : book.Stages.FirstOrDefault(each => Gives(each, code));
        return GateFindings.NotKnownYet(
            gate.Written,
            stage.Title.Value,
            giver?.Title,
            isOwn: giver == stage,
            isProved: survey.Stages[stage.Id.Value].Exact,
            [.. book.Box.Codes.Where(each => IsCertain(survey, stage, each)).Select(each => each.Id.Value)]);
    }

    private static bool Gives(Stage stage, Code code) =>
        stage.Moves.SelectMany(move => move.Changes).Any(change => change.Name.Value == code.Id.Value && change.Position.Value == code.Attained);
}
