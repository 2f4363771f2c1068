using System.Collections.Immutable;
using HintBook.Cards;
using HintBook.Cards.Codes;
using HintBook.Cards.Typesetting;

namespace HintBook.Print.Flow;

/// <summary>
/// Sets blocks in a column. A paragraph of four lines or more may be split, but never so that a single line stands alone at the foot or at the head of a
/// page (no orphans, no widows); one of three lines is never split.
/// </summary>
/// <param name="Width">The column's width, in millimetres.</param>
/// <param name="Height">The height of a page's column: what stands together is only kept so if it fits.</param>
/// <param name="RightToLeft">Whether lines run from right to left.</param>
internal sealed record Setter(double Width, double Height, bool RightToLeft)
{
    // The baseline of a first line lies this far below its top, in ems, for a font whose ascent is 0.97 em.
    private const double FirstBaseline = 1.02;

    // Half the height of capitals, in ems.
    private const double HalfCapital = 0.364;
    private const double MarkerGap = 1.2;
    private const double TickBoxSide = 3.4;
    private const double QuoteRule = 0.35;
    private const double CautionRule = 0.7;
    private const double CautionInside = 2.2;
    private const double PointsPerInch = 25.4;

    // How much lower a photo may be where a page has too little room, and the height in millimetres under which it would no longer be made out.
    private static readonly double[] Lower = [0.9, 0.8, 0.7, 0.6];
    private const double LeastPhoto = 31;

    /// <summary>The pieces of some blocks, in order.</summary>
    public ImmutableArray<Piece> Set(IEnumerable<Block> blocks)
    {
        var pieces = LeftToRight(blocks);
        return RightToLeft ? [.. pieces.Select(piece => Mirroring.Of(piece, Width))] : pieces;
    }

    private ImmutableArray<Piece> LeftToRight(IEnumerable<Block> blocks)
    {
        var pieces = ImmutableArray.CreateBuilder<Piece>();
        var newPage = false;
        foreach (var block in blocks)
        {
            if (block is PageBreakBlock)
            {
                newPage = true;
                continue;
            }

            var set = Set(block);
            if (newPage && set.Length > 0)
            {
                set = set.SetItem(0, set[0] with { OnNewPage = true });
                newPage = false;
            }

            pieces.AddRange(set);
        }

        return pieces.ToImmutable();
    }

    private ImmutableArray<Piece> Set(Block block)
    {
        var pieces = block switch
        {
            TextBlock text => Text(text),
            PhotoBlock photo => Photo(photo),
            PhotoRowBlock row => [PhotoRow(row)],
            CautionBlock caution => [Caution(caution)],
            TableBlock table => Table(table),
            TickRowBlock row => [TickRow(row)],
            CodeBlock code => [Code(code)],
            MarkBlock mark => [Mark(mark)],
            FieldBlock field => [Field(field)],
            TogetherBlock together => Together(together),
            _ => throw new InvalidOperationException("a block is set in one of these ways"),
        };
        if (pieces.IsEmpty)
            return pieces;
        pieces = pieces.SetItem(0, pieces[0] with { Before = Math.Max(pieces[0].Before, block.Before) });
        return block.WithNext ? pieces.SetItem(pieces.Length - 1, pieces[^1] with { WithNext = true }) : pieces;
    }

    private ImmutableArray<Piece> Together(TogetherBlock together)
    {
        var pieces = LeftToRight(together.Parts);
        return Paginator.HeightOf(pieces) > Height
            ? pieces
            : [.. pieces.Select((piece, i) => i + 1 < pieces.Length ? piece with { WithNext = true } : piece)];
    }

    private ImmutableArray<Piece> Text(TextBlock text)
    {
        ImmutableArray<SetLine> lines =
        [
            .. LineBreaker.Break(text.Runs, text.Style, Width - text.Indent)
                .Select(line => line with { ReadsLeftToRight = line.ReadsLeftToRight || text.ReadsLeftToRight }),
        ];
        if (lines is [{ Parts.IsEmpty: true }])
            return [];
        var words = string.Concat(text.Runs.Select(run => run.Text)).ReplaceLineEndings(" ");
        return
        [
            .. Groups(lines.Length).Select((group, i) => new Piece(group.Count * text.Style.LineHeight, Things(text, lines, group.First, group.Count))
            {
                Role = text.Role,
                Parts = text.Marker is null ? [] : PartsOf(text, lines, group.First, group.Count),
                Continues = i > 0,
                WithNext = text.Role is Role.Title or Role.Heading or Role.Subheading,
                Bookmark = i == 0 && text.Bookmark > 0 ? (text.Bookmark, words) : null,
            }),
        ];
    }

    // Two lines stay together at either end.
    private static IEnumerable<(int First, int Count)> Groups(int lines)
    {
        if (lines <= 3)
            return [(0, lines)];
        return [(0, 2), .. Enumerable.Range(2, lines - 4).Select(line => (line, 1)), (lines - 2, 2)];
    }

    private ImmutableArray<Printed> Things(TextBlock text, ImmutableArray<SetLine> lines, int first, int count)
    {
        var style = text.Style;
        var things = ImmutableArray.CreateBuilder<Printed>();
        if (text.IsQuoted)
            things.Add(new PrintedBox(new(text.Indent - 2.5, 0, QuoteRule, count * style.LineHeight), Tone.Rule));
        for (var i = 0; i < count; i++)
        {
            var baseline = (FirstBaseline * style.Size) + (i * style.LineHeight);
            if (first + i == 0)
                things.AddRange(MarkerOf(text, baseline));
            things.AddRange(Line(lines[first + i], style, text.Indent, baseline));
        }

        return things.ToImmutable();
    }

    // In the order in which they are set: the rule beside what is quoted, the marker, the lines.
    private static ImmutableArray<PiecePart> PartsOf(TextBlock text, ImmutableArray<SetLine> lines, int first, int count)
    {
        var body = new PiecePart(PartRole.Body, lines.Skip(first).Take(count).Sum(line => line.Parts.Length));
        return
        [
            .. text.IsQuoted ? new[] { new PiecePart(PartRole.Artifact, 1) } : [],
            .. first == 0 ? new[] { new PiecePart(PartRole.Label, MarkerOf(text, 0).Count()) } : [],
            body,
        ];
    }

    private static IEnumerable<Printed> MarkerOf(TextBlock text, double baseline)
    {
        switch (text.Marker)
        {
            case Marker.Sign(var sign):
                yield return new PrintedText(
                    text.Indent - MarkerGap, baseline, sign, Typeface.SemiBold, text.Style.Size, text.Style.Tone, FromRight: true);
                break;
            case Marker.TickBox:
                var top = baseline - (HalfCapital * text.Style.Size) - (TickBoxSide / 2);
                foreach (var line in Frame(new(text.Indent - TickBoxSide - 1.8, top, TickBoxSide, TickBoxSide)))
                    yield return line;
                break;
        }
    }

    /// <summary>The four sides of a rectangle.</summary>
    public static IEnumerable<Printed> Frame(Rect place, Tone tone = Tone.Ink) =>
    [
        new PrintedLine(place.X, place.Y, place.Right, place.Y, tone),
        new PrintedLine(place.Right, place.Y, place.Right, place.Bottom, tone),
        new PrintedLine(place.Right, place.Bottom, place.X, place.Bottom, tone),
        new PrintedLine(place.X, place.Bottom, place.X, place.Y, tone),
    ];

    private ImmutableArray<Piece> Photo(PhotoBlock block)
    {
        var photo = block.Photo;
        var most = Math.Min(block.MostHeight, Height * 0.8);
        var width = Math.Min(Math.Min(Width, (double)photo.Width / Photos.PrintedPhoto.LeastResolution * PointsPerInch), most * photo.Width / photo.Height);
        var height = width * photo.Height / photo.Width;
        var keys = photo.Marks.SelectMany((mark, i) => Text(new TextBlock([new Run(mark.Says)], block.Style)
        {
            Indent = 6,
            Marker = new Marker.Sign($"{i + 1}"),
        }));
        return
        [
            new Piece(height, Scaled(1))
            {
                Lower = [.. Lower.Where(scale => height * scale >= LeastPhoto).Select(scale => (height * scale, Scaled(scale)))],
                Role = Role.Figure,
                Shows = block.Shows,
                WithNext = !photo.Marks.IsEmpty,
            },
            .. keys.Select(key => key with { Before = 1 }),
        ];

        ImmutableArray<Printed> Scaled(double scale) =>
        [
            new PrintedPhoto(new(0, 0, width * scale, height * scale), photo.Jpeg),
            .. photo.Marks.SelectMany((mark, i) => Mark(width * scale * mark.X / 100, height * scale * mark.Y / 100, $"{i + 1}")),
        ];
    }

    private Piece PhotoRow(PhotoRowBlock row)
    {
        var height = RowHeight(row.Photos);
        var things = ImmutableArray.CreateBuilder<Printed>();
        var x = 0.0;
        foreach (var (photo, _, _, _) in row.Photos)
        {
            var width = height * photo.Width / photo.Height;
            things.Add(new PrintedPhoto(new(x, 0, width, height), photo.Jpeg));
            x += width + PhotoRowBlock.Gap;
        }

        return new(height, things.ToImmutable()) { Role = Role.Figure, Shows = string.Join("; ", row.Photos.Select(photo => photo.Shows)) };
    }

    /// <summary>Whether photos can stand beside each other and still be made out.</summary>
    public bool HasRoomBeside(ImmutableArray<PhotoBlock> photos) =>
        photos.All(photo => photo.Photo.Marks.IsEmpty && photo.Photo.Width > 0) && RowHeight(photos) >= LeastPhoto;

    // As high as the column's width, each one's pixels and their blocks let all of them be.
    private double RowHeight(ImmutableArray<PhotoBlock> photos) => Math.Min(
        (Width - ((photos.Length - 1) * PhotoRowBlock.Gap)) / photos.Sum(block => (double)block.Photo.Width / block.Photo.Height),
        photos.Min(block => Math.Min(block.MostHeight, (double)block.Photo.Height / Photos.PrintedPhoto.LeastResolution * PointsPerInch)));

    private static IEnumerable<Printed> Mark(double x, double y, string number)
    {
        const double side = 4.2;
        yield return new PrintedBox(new(x - (side / 2), y - (side / 2), side, side), Tone.Ink);
        yield return new PrintedWhite(new(x - (side / 2) + 0.3, y - (side / 2) + 0.3, side - 0.6, side - 0.6));
        yield return new PrintedText(x - (Letters.Width(number, Typeface.SemiBold, 3) / 2), y + 1.1, number, Typeface.SemiBold, 3, Tone.Ink);
    }

    private Piece Caution(CautionBlock block)
    {
        var (name, text) = (block.Style with { Face = Typeface.SemiBold, Tone = Tone.Warning }, block.Style);
        var side = 2 * block.Style.LineHeight;
        var left = CautionInside + side + 2;
        ImmutableArray<SetLine> lines = block.Name.Length == 0 ? [] : LineBreaker.Break([new Run($"{block.Name} ")], name, Width - left - CautionInside);
        var says = LineBreaker.Break([new Run(block.Text)], text, Width - left - CautionInside);
        var letters = (lines.Length + says.Length) * text.LineHeight;
        var height = Math.Max(side, letters) + (2 * CautionInside) - 0.6;
        // A single line stands beside the middle of the sign.
        var top = CautionInside - 0.3 + Math.Max(0, (side - letters) / 2);
        ImmutableArray<Printed> things =
        [
            new PrintedBox(new(0, 0, CautionRule, height), Tone.Warning),
            .. Frame(new(0, 0, Width, height), Tone.Warning),
            new PrintedSign(new(CautionInside + 0.4, CautionInside, side, side), block.Sign),
            .. Lines(lines, name, left, top),
            .. Lines(says, text, left, top + (lines.Length * text.LineHeight)),
        ];
        return new(height, things) { Role = Role.Paragraph };
    }

    private IEnumerable<Printed> Lines(ImmutableArray<SetLine> lines, TextStyle style, double left, double top) =>
        lines.SelectMany((line, i) => Line(line, style, left, top + (FirstBaseline * style.Size) + (i * style.LineHeight)));

    // The parts of a line that reads from left to right are turned round before the column is mirrored, which turns them back.
    private IEnumerable<PrintedText> Line(SetLine line, TextStyle style, double left, double baseline) =>
        from part in line.Parts
        let x = RightToLeft && line.ReadsLeftToRight ? line.Width - part.X - Letters.Width(part.Text, part.Face, style.Size) : part.X
        select new PrintedText(left + x, baseline, part.Text, part.Face, style.Size, style.Tone) { ReadsLeftToRight = line.ReadsLeftToRight };

    private ImmutableArray<Piece> Table(TableBlock table)
    {
        var gives = table.Rows.Append(table.Head).Max(row => Letters.Width(Letters.Printable(row.Gives).Text, Typeface.SemiBold, table.Style.Size));
        // Words that are added up are a little wider than those that are measured as one.
        var right = Math.Min(gives + 0.5, Width / 2);
        var left = Width - right - 4;
        return
        [
            Row(table.Head, table.Style with { Face = Typeface.SemiBold, Tone = Tone.Quiet }, PartRole.HeadCell) with { WithNext = true },
            .. table.Rows.Select((row, i) => Row(row, table.Style, PartRole.Cell) with { WithNext = i is 0 || i == table.Rows.Length - 2 }),
        ];

        Piece Row((string Read, string Gives) row, TextStyle style, PartRole cell)
        {
            var (read, given) = (LineBreaker.Break([new Run(row.Read)], style, left), LineBreaker.Break([new Run(row.Gives, Strong: true)], style, right));
            var height = (Math.Max(read.Length, given.Length) * style.LineHeight) + 1;
            Printed[][] cells = [[.. Lines(read, style, 0, 0.4)], [.. Lines(given, style, left + 4, 0.4)]];
            return new(height, [.. cells[0], .. cells[1], new PrintedBox(new(0, height - 0.1, Width, 0.1), Tone.Rule)])
            {
                Parts = [new(cell, cells[0].Length), new(cell, cells[1].Length), new(PartRole.Artifact, 1)],
            };
        }
    }

    private Piece TickRow(TickRowBlock block)
    {
        const double number = 9;
        const double above = 0.8;
        var right = Width - (block.Columns.Length * block.ColumnWidth);
        var (words, height) = (ImmutableArray.CreateBuilder<Printed>(), above);
        foreach (var (text, style) in block.Lines)
        {
            var lines = LineBreaker.Break([new Run(text)], style, right - number - 3);
            words.AddRange(Lines(lines, style, number, height));
            height += lines.Length * style.LineHeight;
        }

        height = Math.Max(height, above + block.Style.LineHeight) + above;
        var baseline = above + (FirstBaseline * block.Style.Size);
        var top = baseline - (HalfCapital * block.Style.Size) - (TickBoxSide / 2);
        Printed[][] cells =
        [
            block.Number.Length == 0 ? []
                : [new PrintedText(number - 2.5, baseline, block.Number, Typeface.SemiBold, block.Style.Size, block.Style.Tone, FromRight: true)],
            [.. words],
            .. block.Columns.Select((column, i) => Cell(column, right + ((i + 0.5) * block.ColumnWidth))),
        ];
        var role = block.Number.Length == 0 ? PartRole.HeadCell : PartRole.Cell;
        return new(height, [.. cells.SelectMany(cell => cell), new PrintedBox(new(0, height - 0.1, Width, 0.1), Tone.Rule)])
        {
            Parts = [.. cells.Select(cell => new PiecePart(role, cell.Length)), new(PartRole.Artifact, 1)],
        };

        Printed[] Cell(string? column, double middle)
        {
            if (column is null)
                return [];
            if (column.Length == 0)
                return [.. Frame(new(middle - (TickBoxSide / 2), top, TickBoxSide, TickBoxSide))];
            var name = LineBreaker.Break([new Run(column)], block.Style, block.ColumnWidth - 1);
            var width = name.Max(line => line.Parts.Sum(part => Letters.Width(part.Text, part.Face, block.Style.Size)));
            return [.. Lines(name, block.Style, middle - (width / 2), above)];
        }
    }

    private static Piece Code(CodeBlock block)
    {
        var module = block.Side / block.Code.SizeWithQuietZone;
        // What is dark stands flush with the words above and below; the quiet zone at its side lies in the margin.
        return new(block.Side, [new PrintedCode(0, QrMatrix.QuietZone * module, module, block.Code)]) { Role = Role.Figure, Shows = block.Says };
    }

    private static Piece Mark(MarkBlock block)
    {
        var scale = Math.Min(block.MostWidth / block.Mark.Width, block.MostHeight / block.Mark.Height);
        var (width, height) = (block.Mark.Width * scale, block.Mark.Height * scale);
        return new(height, [new PrintedDrawing(new(0, 0, width, height), block.Mark)]) { Role = Role.Figure, Shows = block.Maker };
    }

    private Piece Field(FieldBlock block)
    {
        var name = LineBreaker.Break([new Run(block.Name)], block.Style, Width - 3);
        return new(block.Height, [.. Frame(new(0, 0, Width, block.Height), Tone.Quiet), .. Lines(name, block.Style, 1.5, 0.8)]);
    }
}
