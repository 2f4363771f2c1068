using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Cards;
using HintBook.Cards.Typesetting;
using HintBook.Pages;
using HintBook.Print.Flow;

namespace HintBook.Print.Papers;

/// <summary>
/// A sheet to be filled in while somebody tries the box: who and when, and for each stage the minutes, the help that was used and room for remarks. Of the box
/// it says no more than the titles of its stages. Its columns are those of <c>sittings/*.csv</c>.
/// </summary>
public static class SittingSheet
{
    private const double MarginX = 14;
    private const double Top = 14;
    private const double Bottom = 18;

    // The widths of the columns, in millimetres; remarks have what is left.
    private const double TitleWidth = 52;
    private const double MinutesWidth = 20;
    private const double BoxWidth = 17;

    private const double RowHeight = 11.5;
    private const double HeadHeight = 9;
    private const double Tick = 4.6;
    private const double Pad = 1.2;

    // From a line between two columns to what stands behind it.
    private const double BehindLine = 2.6;
    private const double TextSize = 3.2;
    private const double HeadSize = 2.6;
    private const double FieldHeight = 12;

    /// <summary>The sheet as a PDF, in the language of the words, with as many pages as its stages need.</summary>
    /// <param name="book">The book.</param>
    /// <param name="words">What the sheet says besides the author's own words.</param>
    /// <param name="paper">The paper.</param>
    public static byte[] Write(Book book, ThemeWords words, Paper paper)
    {
        var title = $"{book.Title.Value}: {words["print_sitting"]}";
        return PaperPdf.Write(title, book.Language.Value, Layout(book, words, paper));
    }

    /// <summary>Its pages, each with the names of the columns.</summary>
    internal static ImmutableArray<PaperPage> Layout(Book book, ThemeWords words, Paper paper)
    {
        var page = Size.Of(paper);
        var room = new Rect(MarginX, Top, page.Width - (2 * MarginX), page.Height - Top - Bottom);
        var isMirrored = TextDirection.Of(book.Language.Value) == "rtl";
        ImmutableArray<Piece> head = [.. new Setter(room.Width, room.Height, isMirrored).Set(Head(book, words)), Turned(Fields(words, room.Width))];
        var columns = Turned(Columns(words, room.Width));
        Piece[] rows = [.. book.Stages.Select((stage, number) => Turned(Row($"{number + 1}  {stage.Title.Value}", room.Width)))];
        var pages = ImmutableArray.CreateBuilder<PaperPage>();
        for (var done = 0; done < rows.Length || pages.Count == 0;)
        {
            ImmutableArray<Piece> above = [.. pages.Count == 0 ? head : [], columns];
            var fit = (int)((room.Height - Paginator.HeightOf(above)) / RowHeight);
            pages.Add(new(new(page, room), Paginator.Place([.. above, .. rows.Skip(done).Take(fit)], room), []));
            done += fit;
        }

        return Furniture.Numbered(pages.ToImmutable(), $"{book.Title.Value} · {words["print_sitting"]}");

        Piece Turned(Piece piece) => isMirrored ? Mirroring.Of(piece, room.Width) : piece;
    }

    private static IEnumerable<Block> Head(Book book, ThemeWords words)
    {
        var style = new PaperStyle(TextSize);
        yield return TextBlock.Of(book.Title.Value, style.Quiet) with { WithNext = true };
        yield return TextBlock.Of(words["print_sitting"], style.Title) with { Before = style.Gap * 0.4, Role = Role.Title, Bookmark = 1 };
        yield return TextBlock.Of(words["print_sitting_how"], style.Body) with { Before = style.Gap };
    }

    // Two lines to write on, side by side.
    private static Piece Fields(ThemeWords words, double width)
    {
        var middle = width * 0.62;
        return new(FieldHeight,
        [
            .. Field(words["print_sitting_who"], 0, middle - 6),
            .. Field(words["print_sitting_date"], middle, width),
        ])
        {
            Before = 3,
        };

        static IEnumerable<Printed> Field(string name, double left, double right)
        {
            var set = Set(name, Typeface.SemiBold, TextSize, right - left, lines: 1);
            var end = left + Letters.Width(set.Lines[0], Typeface.SemiBold, set.Size);
            return
            [
                .. Lines(set, Typeface.SemiBold, Tone.Ink, left, FieldHeight - 3),
                new PrintedLine(end + 2, FieldHeight - 2, right, FieldHeight - 2, Tone.Ink),
            ];
        }
    }

    private static Piece Columns(ThemeWords words, double width)
    {
        ImmutableArray<(string Name, double Left, double Width)> heads =
        [
            (words["card_sheet_stage"], 0, TitleWidth),
            (words["print_sitting_minutes"], TitleWidth, MinutesWidth),
            .. new[] { words["nudge"], words["clue"], words["answer"], words["print_sitting_gave_up"] }
                .Select((name, box) => (name, TitleWidth + MinutesWidth + (box * BoxWidth), BoxWidth)),
            (words["print_sitting_remarks"], RemarksLeft, width - RemarksLeft),
        ];
        Printed[][] cells = [.. heads.Select(head => Lines(Set(head.Name, Typeface.SemiBold, HeadSize, head.Width - Pad, lines: 2), head.Left))];
        return new(HeadHeight, [.. cells.SelectMany(cell => cell), new PrintedBox(new(0, HeadHeight - 0.3, width, 0.3), Tone.Ink)])
        {
            Before = 4,
            WithNext = true,
            Parts = [.. cells.Select(cell => new PiecePart(PartRole.HeadCell, cell.Length)), new(PartRole.Artifact, 1)],
        };

        // The last line stands above the rule.
        static Printed[] Lines(SetText set, double left) =>
            [.. SittingSheet.Lines(set, Typeface.SemiBold, Tone.Ink, left, HeadHeight - 1.6 - ((set.Lines.Length - 1) * set.LineHeight))];
    }

    private static Piece Row(string title, double width)
    {
        var set = Set(title, Typeface.Regular, TextSize, TitleWidth - BehindLine - Pad, lines: 2);
        Printed[] name = [.. Lines(set, Typeface.Regular, Tone.Ink, 0, (RowHeight / 2) + (TextSize * 0.35) - ((set.Lines.Length - 1) * set.LineHeight / 2))];
        Printed[] adorns =
        [
            .. Enumerable.Range(0, 4).SelectMany(box => Square(TitleWidth + MinutesWidth + (box * BoxWidth), (RowHeight - Tick) / 2)),
            .. new[] { TitleWidth, TitleWidth + MinutesWidth, RemarksLeft }
                .Select(left => new PrintedLine(left - BehindLine, 0, left - BehindLine, RowHeight, Tone.Quiet)),
            new PrintedLine(0, RowHeight, width, RowHeight, Tone.Quiet),
        ];
        return new(RowHeight, [.. name, .. adorns]) { Parts = [new(PartRole.Cell, name.Length), new(PartRole.Artifact, adorns.Length)] };
    }

    private static double RemarksLeft => TitleWidth + MinutesWidth + (4 * BoxWidth);

    private static IEnumerable<Printed> Square(double left, double top) =>
    [
        new PrintedLine(left, top, left + Tick, top, Tone.Ink),
        new PrintedLine(left + Tick, top, left + Tick, top + Tick, Tone.Ink),
        new PrintedLine(left + Tick, top + Tick, left, top + Tick, Tone.Ink),
        new PrintedLine(left, top + Tick, left, top, Tone.Ink),
    ];

    private static SetText Set(string text, Typeface face, double size, double width, int lines) =>
        Paragraph.Fit(Letters.Printable(text).Text, face, width, [(size, lines), (size * 0.85, lines), (size * 0.7, lines)]);

    private static IEnumerable<Printed> Lines(SetText set, Typeface face, Tone tone, double left, double baseline) => set.Lines.Select((line, index) =>
        new PrintedText(left, baseline + (index * set.LineHeight), line, face, set.Size, tone) { RightToLeft = set.RightToLeft });
}
