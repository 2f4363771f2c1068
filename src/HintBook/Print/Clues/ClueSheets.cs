using System.Collections.Immutable;
using HintBook.Cards;
using HintBook.Cards.Typesetting;
using HintBook.Ciphers.Making;

namespace HintBook.Print.Clues;

/// <summary>Lays a made clue out on paper at its true size, and its mask on a second sheet. The sheets don't show the answer.</summary>
internal static class ClueSheets
{
    private const double Margin = 15;
    private const double Top = 45;
    private const double LetterSize = 6;

    // Half the cap height of the embedded font, in em (its capitals are 0.727 em high). Centres letters in their cells.
    private const double HalfCapital = 0.364;

    /// <summary>One sheet, or two for a clue with a mask; or why there is no room.</summary>
    public static (ImmutableArray<Sheet> Sheets, string? NoRoom) Layout(MadeClue clue, Paper paper, string? serial = null)
    {
        var size = Size.Of(paper);
        var piece = Piece(clue, size.Width - (2 * Margin));
        var room = new Rect(Margin, Top, size.Width - (2 * Margin), size.Height - Top - 40);
        if (piece.Width > room.Width || piece.Height > room.Height)
        {
            return ([], $"It would be {piece.Width:0} × {piece.Height:0} mm, and a sheet has room for {room.Width:0} × {room.Height:0} mm. "
                + "Take a shorter answer or another way.");
        }

        var at = (X: (size.Width - piece.Width) / 2, Y: Top);
        ImmutableArray<Drawn> things = [.. piece.Things.Select(thing => Moved(thing, at.X, at.Y))];
        var sheet = new Sheet("", size,
        [
            .. Frame(size, $"Clue: {clue.Way}{ForCopy(serial)}", $"Cut along the frame, or copy what stands in it.{About(clue.Look)}"),
            .. Corners(new Rect(at.X, at.Y, piece.Width, piece.Height)),
            .. things,
        ]);
        return clue.Mask is { } mask ? ([sheet, Overlay(mask, at, size, serial)], null) : ([sheet], null);
    }

    private static Sheet Overlay(Grille mask, (double X, double Y) at, Size size, string? serial)
    {
        var edge = new Rect(at.X, at.Y, mask.Width, mask.Height);
        var says = mask.Clockwise is null
            ? "Cut along the frame, and cut out the squares."
            : "Cut along the frame, cut out the squares, and turn it so that 1, 2, 3 and 4 come to the top in turn.";
        return new Sheet("overlay", size,
        [
            .. Frame(size, $"Mask{ForCopy(serial)}", says),
            .. Corners(edge),
            new DrawnBox(edge, null, "edge"),
            .. mask.Holes.Select(hole => new DrawnBox(new Rect(at.X + hole.X, at.Y + hole.Y, Grille.HoleSide, Grille.HoleSide), null, "hole")),
            .. mask.Clockwise is { } clockwise ? Sides(edge, clockwise) : [Centred("top", edge.X + (edge.Width / 2), edge.Y + 5, 3.2)],
        ]);
    }

    // Turned clockwise, the left side comes to the top next.
    private static IEnumerable<Drawn> Sides(Rect edge, bool clockwise)
    {
        const double inside = 5;
        yield return Centred("1", edge.X + (edge.Width / 2), edge.Y + inside, 4);
        yield return Centred(clockwise ? "2" : "4", edge.X + inside, edge.Y + (edge.Height / 2), 4);
        yield return Centred("3", edge.X + (edge.Width / 2), edge.Bottom - inside, 4);
        yield return Centred(clockwise ? "4" : "2", edge.Right - inside, edge.Y + (edge.Height / 2), 4);
    }

    private static (double Width, double Height, IEnumerable<Drawn> Things) Piece(MadeClue clue, double room) => clue.Look switch
    {
        ClueLook.Block => Block(clue.Text.Split('\n')),
        ClueLook.Signs => Signs(clue.Text, room),
        ClueLook.Colours => Colours(clue.Text.Split(", "), room),
        ClueLook.Arms => Rows([.. clue.Text.Split('\n').Select(Signaller.With)], Signaller.Width, Signaller.Height, room),
        ClueLook.Flags => Rows([.. clue.Text.Split('\n').Select(name => SignalFlag.Of(name[0]))], SignalFlag.Width, SignalFlag.Height, room),
        ClueLook.Cells => Rows([.. clue.Text.Select(BrailleCell.Of)], BrailleCell.Width, BrailleCell.Height, room),
        ClueLook.Dice => Rows([.. clue.Text.Select(Die.Of)], Die.Width, Die.Width, room),
        _ => Lines(clue.Text, room),
    };

    private static string About(ClueLook look) => look switch
    {
        ClueLook.Arms => " The signallers face the reader.",
        ClueLook.Flags => " The mast is at the left of each flag.",
        _ => "",
    };

    // Things of one size, line by line.
    private static (double, double, IEnumerable<Drawn>) Rows(ImmutableArray<ImmutableArray<Drawn>> things, double width, double height, double room)
    {
        const double inside = 6;
        var across = Math.Max(1, Math.Min(things.Length, (int)((room - (2 * inside)) / width)));
        var down = (things.Length + across - 1) / across;
        var (wide, high) = ((across * width) + (2 * inside), (down * height) + (2 * inside));
        var placed = things.Index().SelectMany(one =>
            one.Item.Select(thing => Moved(thing, inside + (one.Index % across * width), inside + (one.Index / across * height))));
        return (wide, high, [new DrawnBox(new Rect(0, 0, wide, high), null, "edge"), .. placed]);
    }

    private static (double, double, IEnumerable<Drawn>) Block(string[] lines)
    {
        var (width, height) = ((lines[0].Length * Grille.Pitch) + (2 * Grille.Rim), (lines.Length * Grille.Pitch) + (2 * Grille.Rim));
        var letters =
            from row in Enumerable.Range(0, lines.Length)
            from column in Enumerable.Range(0, lines[row].Length)
            select Centred(lines[row][column].ToString(), Grille.Rim + ((column + 0.5) * Grille.Pitch), Grille.Rim + ((row + 0.5) * Grille.Pitch), LetterSize);
        return (width, height, [new DrawnBox(new Rect(0, 0, width, height), null, "edge"), .. letters]);
    }

    // A dash is as long as three dots, a gap as one, between letters three (ITU-R M.1677-1).
    private static (double, double, IEnumerable<Drawn>) Signs(string text, double room)
    {
        const double unit = 2;
        const double line = 8;
        var (x, y, things) = (line, line, new List<Drawn>());
        foreach (var sign in text.Split(' '))
        {
            var width = sign.Sum(mark => mark == '.' ? 2 * unit : 4 * unit) - unit;
            if (x > line && x + width > room - line)
                (x, y) = (line, y + line);
            foreach (var mark in sign)
            {
                var length = mark == '.' ? unit : 3 * unit;
                things.Add(new DrawnBox(new Rect(x, y, length, unit), "000000", "sign"));
                x += length + unit;
            }

            x += 2 * unit;
        }

        var right = things.OfType<DrawnBox>().Max(box => box.Place.Right);
        return (right + line, y + unit + line, [new DrawnBox(new Rect(0, 0, right + line, y + unit + line), null, "edge"), .. things]);
    }

    private static (double, double, IEnumerable<Drawn>) Colours(string[] words, double room)
    {
        const double band = 12;
        var each = Math.Min(band, room / words.Length);
        var bands = words.Select((word, place) => new DrawnBox(new Rect(place * each, 0, each, 2 * band), Inks.Of(word), "band"));
        return (words.Length * each, 2 * band, [.. bands, new DrawnBox(new Rect(0, 0, words.Length * each, 2 * band), null, "edge")]);
    }

    private static (double, double, IEnumerable<Drawn>) Lines(string text, double room)
    {
        const double inside = 6;
        var lines = text.Split('\n').SelectMany(line => Paragraph.Flow(line, Typeface.Regular, LetterSize, room - (2 * inside)).Lines).ToArray();
        var leading = LetterSize * SetText.Leading;
        var width = lines.Max(line => Letters.Width(line, Typeface.Regular, LetterSize)) + (2 * inside);
        var height = (lines.Length * leading) + (2 * inside);
        var set = lines.Select((line, place) => new DrawnText(inside, inside + ((place + 0.78) * leading), line, LetterSize));
        return (width, height, [new DrawnBox(new Rect(0, 0, width, height), null, "edge"), .. set]);
    }

    private static string ForCopy(string? serial) => serial is null ? "" : $", copy {Letters.Printable(serial).Text}";

    private static IEnumerable<Drawn> Frame(Size size, string title, string says)
    {
        yield return new DrawnText(Margin, 20, title, 5, Bold: true);
        yield return new DrawnText(Margin, 27, says, 3.2);
        yield return new DrawnText(Margin, 32, "Print it at its true size (100 %, not “fit to page”): the ruler at the foot must measure 100 mm.", 3.2);
        var (left, foot) = (Margin, size.Height - 20);
        yield return new DrawnLine(left, foot, left + 100, foot);
        for (var mm = 0; mm <= 100; mm += 5)
            yield return new DrawnLine(left + mm, foot, left + mm, foot - (mm % 50 == 0 ? 5 : mm % 10 == 0 ? 3.5 : 2));
        foreach (var mm in new[] { 0, 50, 100 })
            yield return new DrawnText(left + mm, foot + 4.5, mm == 0 ? "0" : $"{mm} mm", 3.2, Centred: true);
    }

    // Registration marks in the same places on both sheets, to align one on the other against the light.
    private static IEnumerable<Drawn> Corners(Rect piece)
    {
        const double away = 6;
        const double radius = 2;
        var (left, right, top, bottom) = (piece.X - away, piece.Right + away, piece.Y - away, piece.Bottom + away);
        foreach (var (x, y) in new[] { (left, top), (right, top), (left, bottom), (right, bottom) })
        {
            yield return new DrawnRing(x, y, radius);
            yield return new DrawnLine(x - (2 * radius), y, x + (2 * radius), y);
            yield return new DrawnLine(x, y - (2 * radius), x, y + (2 * radius));
        }
    }

    private static DrawnText Centred(string text, double x, double y, double size) => new(x, y + (size * HalfCapital), text, size, Bold: true, Centred: true);

    private static Drawn Moved(Drawn thing, double x, double y) => thing switch
    {
        DrawnText text => text with { X = text.X + x, Baseline = text.Baseline + y },
        DrawnBox box => box with { Place = box.Place with { X = box.Place.X + x, Y = box.Place.Y + y } },
        DrawnLine line => new DrawnLine(line.X1 + x, line.Y1 + y, line.X2 + x, line.Y2 + y),
        DrawnRing ring => ring with { X = ring.X + x, Y = ring.Y + y },
        DrawnShape shape => shape with { Corners = [.. shape.Corners.Select(at => (at.X + x, at.Y + y))] },
        DrawnDisc disc => disc with { X = disc.X + x, Y = disc.Y + y },
        _ => thing,
    };
}
