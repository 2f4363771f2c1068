using System.Collections.Frozen;
using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Pages;
using HintBook.Print.Flow;

namespace HintBook.Print.Booklets;

/// <summary>Writes the entries of a booklet: three for each stage, and one for each question of the finder.</summary>
internal sealed class EntryTexts
{
    /// <summary>How high a photo may be, in millimetres.</summary>
    public const double MostPhoto = 45;

    private const double SignRoom = 4;

    private readonly PaperBook paper;
    private readonly PaperStyle style;
    private readonly double column;
    private readonly ProseBlocks prose;
    private readonly FrozenDictionary<string, ImmutableArray<string>> next;
    private readonly FrozenSet<string> ends;

    /// <summary>Prepares it.</summary>
    /// <param name="paper">The book.</param>
    /// <param name="style">How the booklet is set.</param>
    /// <param name="column">The width of its pages' text, in millimetres.</param>
    public EntryTexts(PaperBook paper, PaperStyle style, double column)
    {
        (this.paper, this.style, this.column, prose) = (paper, style, column, paper.Prose(style));
        next = NextStages.OpenedBy(paper.Plan);
        ends = NextStages.Ends(paper.Plan, next);
    }

    /// <summary>The entries; the first question first.</summary>
    public ImmutableArray<Entry> All() =>
    [
        .. paper.Where.Pages.Select(Question),
        .. paper.Book.Stages.SelectMany(stage => new[] { Nudge(stage), Clue(stage), Answer(stage) }),
    ];

    private Entry Question(WhereaboutsPage page)
    {
        var leads = page.Lines.Select(line => line.To).Append(page.None).Append(page.Other).OfType<WhereaboutsEnd.Stage>().Select(end => end.Id);
        return new()
        {
            Key = Entry.QuestionOf(page.File),
            Stages = [.. page.Signs.Concat(leads).Distinct(StringComparer.Ordinal)],
            IsQuestion = true,
            Text = numbers => new(
                [
                    TextBlock.Of(paper.Words["where"], style.Heading) with { Role = Role.Heading },
                    .. page.Signs.IsEmpty ? [] : (Block[])
                    [
                        Plain(paper.Words["print_signs"], style.Quiet),
                        .. page.Signs.Select(stage => Choice(SignOf(stage), numbers(Entry.NudgeOf(stage)))),
                    ],
                    .. page.Lines.IsEmpty ? [] : (Block[])
                    [
                        Plain(paper.Words[page.Signs.IsEmpty ? "where_lines" : "where_or_lines"], style.Quiet),
                        .. page.Lines.Select(line => Choice(WhereWords.Of(paper.Book, paper.Words, line), NumberOf(line.To, numbers))),
                    ],
                    .. page.None is { } none ? [Choice(paper.Words["where_none"], NumberOf(none, numbers))] : (Block[])[],
                    .. page.Other is { } other ? [Choice(paper.Words["where_other"], NumberOf(other, numbers))] : (Block[])[],
                ],
                [],
                []),
        };
    }

    private string NumberOf(WhereaboutsEnd end, Func<string, string> numbers) => numbers(end switch
    {
        WhereaboutsEnd.Stage(var stage) => Entry.NudgeOf(stage),
        WhereaboutsEnd.Page(var file) => Entry.QuestionOf(file),
        _ => Entry.QuestionOf(paper.Where.Pages[0].File),
    });

    private string SignOf(string stage) => StageOf(stage).Sign.Value;

    private Stage StageOf(string id) => paper.Book.Stages.First(stage => stage.Id.Value == id);

    private Entry Nudge(Stage stage) => Of(stage, Entry.NudgeOf(stage.Id.Value), numbers => new(
        [
            TextBlock.Of(stage.Title.Value, style.Heading) with { Role = Role.Heading },
            Plain(stage.Sign.Value, style.Quiet) with { WithNext = true },
            .. Cautions(stage),
            .. PaperBook.WithPhotos(prose.Of(stage.Nudge), [.. Photos(stage, Place.Nudge)]),
        ],
        [],
        [More(numbers(Entry.ClueOf(stage.Id.Value)))]));

    private Entry Clue(Stage stage) => Of(stage, Entry.ClueOf(stage.Id.Value), numbers => new(
        [.. PaperBook.WithPhotos(prose.Of(stage.Clue), [.. Photos(stage, Place.Clue)])],
        [],
        [More(numbers(Entry.AnswerOf(stage.Id.Value)))]));

    private Entry Answer(Stage stage) => Of(stage, Entry.AnswerOf(stage.Id.Value), numbers => new(
        [.. Cautions(stage)],
        [.. PaperBook.WithPhotos(prose.Of(stage.Answer), [.. Photos(stage, Place.Answer)])],
        [Plain(GoOn(stage, numbers), style.Subheading)]));

    private string GoOn(Stage stage, Func<string, string> numbers)
    {
        if (ends.Contains(stage.Id.Value))
            return paper.Words["next_last"];
        if (stage.RedHerring)
            return paper.Words["next_red_herring"];
        // By their numbers, which say nothing of their order.
        var opened = next[stage.Id.Value].Select(id => numbers(Entry.NudgeOf(id)))
            .OrderBy(number => number.Length)
            .ThenBy(number => number, StringComparer.Ordinal)
            .ToArray();
        return opened.Length == 0
            ? paper.Words["next_nothing"]
            : paper.Words.Say("print_next", ("numbers", Joined(opened)));
    }

    private string Joined(string[] numbers) => numbers.Length < 2
        ? string.Concat(numbers)
        : $"{string.Join(paper.Words["list_comma"], numbers[..^1])}{paper.Words["list_or"]}{numbers[^1]}";

    private static Entry Of(Stage stage, string key, Func<Func<string, string>, EntryText> text) => new() { Key = key, Stages = [stage.Id.Value], Text = text };

    private IEnumerable<Block> Cautions(Stage stage) => paper.CautionsOf(stage.Cautions, style).Select(caution => caution with { WithNext = true });

    private IEnumerable<PhotoBlock> Photos(Stage stage, Place place) => paper.Photos(stage.Photos, place, column, MostPhoto, style);

    private TextBlock Plain(string text, TextStyle look) => TextBlock.Of(text, look) with { Before = style.Gap };

    private TextBlock More(string number) => Plain(paper.Words.Say("print_more", ("number", number)), style.Subheading);

    // The number stands at the end of its line's words, so that nobody reads it beside the wrong one.
    private TextBlock Choice(string says, string number) =>
        new TextBlock([new Run($"{says}  "), new Run($"→\u00A0{number}", Strong: true)], style.Body)
        {
            Before = style.Gap,
            Indent = SignRoom,
            Marker = new Marker.Sign("•"),
        };
}
