using System.Collections.Immutable;
using HintBook.Cards;
using HintBook.Cards.Kept;
using HintBook.Cards.Typesetting;
using HintBook.Photos.Drawings;

namespace HintBook.Tests.Cards.Kept;

public class KeptWorkTests
{
    [Fact]
    public void What_was_asked_for_is_read_again_and_all_else_is_dropped()
    {
        var first = new KeptWork();
        first.Keep("a", [1]);
        first.Keep("b", [2, 3]);
        var second = KeptWork.Read(first.Write());
        Assert.True(second.TryTake("b", out var content));
        Assert.Equal([2, 3], content);
        Assert.True(second.IsChanged);
        var third = KeptWork.Read(second.Write());
        Assert.False(third.TryTake("a", out _));
        Assert.True(third.TryTake("b", out _));
        Assert.False(third.IsChanged);
    }

    [Fact]
    public void A_file_with_any_byte_changed_or_cut_off_keeps_nothing()
    {
        var kept = new KeptWork();
        kept.Keep("a", [1, 2, 3]);
        var file = kept.Write();
        for (var at = 0; at < file.Length; at++)
        {
            var changed = (byte[])file.Clone();
            changed[at] ^= 0x10;
            Assert.False(KeptWork.Read(changed).TryTake("a", out _));
            Assert.False(KeptWork.Read(file[..at]).TryTake("a", out _));
        }
    }

    public static TheoryData<int> Changes => [.. Enumerable.Range(0, All.Length)];

    // One change at a time, in each property of each thing that can be printed.
    [Theory]
    [MemberData(nameof(Changes))]
    public void A_document_with_one_thing_changed_has_another_key(int one)
    {
        var (before, after) = All[one];
        Assert.NotEqual(Key(before), Key(after));
        Assert.Equal(Key(before), Key(before with { }));
    }

    [Fact]
    public void Every_thing_that_stands_on_cards_has_a_key() => Assert.Equal(
        typeof(Printed).Assembly.GetTypes()
            .Where(type => type.IsSubclassOf(typeof(Printed)) && type.Namespace == typeof(Printed).Namespace)
            .Select(type => type.Name)
            .Order(),
        All.Select(pair => pair.Before.GetType().Name).Distinct().Order());

    [Fact]
    public void The_sheet_its_colours_and_its_bleed_count_too()
    {
        var page = new PrintedPage(new(210, 297), []);
        PrintedPage[] others = [page with { Size = new(210, 298) }, page with { Bleed = 3 }, page with { Look = Parlour }];
        Assert.All(others, other => Assert.NotEqual(WorkKey.OfPdf("T", [page]), WorkKey.OfPdf("T", [other])));
        Assert.NotEqual(WorkKey.OfPdf("T", [page]), WorkKey.OfPdf("U", [page]));
        Assert.NotEqual(WorkKey.OfPdf("T", [page]), WorkKey.OfPdf("T", [page, page]));
    }

    private static CardLook Parlour => CardLook.Of(HintBook.Pages.Theme.BuiltIn("parlour").Theme).Look;

    private static ImmutableArray<(Printed Before, Printed After)> All
    {
        get
        {
            var text = new PrintedText(1, 2, "Stuck?", Typeface.Regular, 3, Tone.Ink);
            var box = new PrintedBox(new(1, 2, 3, 4), Tone.Ink);
            var line = new PrintedLine(1, 2, 3, 4, Tone.Ink);
            var stroke = new PrintedStroke([(1, 2), (3, 4)], 0.2, Tone.Ink);
            var shape = new PrintedShape([(1, 2), (3, 4), (5, 6)], Tone.Ink);
            var picture = new PrintedPicture(new(1, 2, 3, 4), new(new byte[] { 1, 2 }, 1, 1, IsMark: false));
            var drawing = new PrintedDrawing(new(1, 2, 3, 4), Mark("red"));
            var sign = new PrintedSign(new(1, 2, 3, 3), "heavy");
            var turned = new PrintedTurned(new(1, 2, 3, 4), Turn.UpsideDown, [box]);
            var code = new PrintedCode(1, 2, 0.5, HintBook.Cards.Codes.QrMatrix.Encode("https://a.example/")!);
            return
            [
                (text, text with { X = 9 }), (text, text with { Baseline = 9 }), (text, text with { Text = "Stuck" }), (text, text with { Size = 9 }),
                (text, text with { Face = Typeface.SemiBold }), (text, text with { Tone = Tone.Quiet }), (text, text with { FromRight = true }),
                (text, text with { RightToLeft = true }),
                (box, box with { Place = new(1, 2, 3, 5) }), (box, box with { Tone = Tone.Quiet }),
                (line, line with { X1 = 9 }), (line, line with { Y1 = 9 }), (line, line with { X2 = 9 }), (line, line with { Y2 = 9 }),
                (line, line with { Tone = Tone.Quiet }),
                (stroke, stroke with { Points = [(1, 2), (3, 5)] }), (stroke, stroke with { Thickness = 9 }), (stroke, stroke with { Tone = Tone.Quiet }),
                (shape, shape with { Corners = [(1, 2), (3, 4), (5, 7)] }), (shape, shape with { Tone = Tone.Quiet }),
                (picture, picture with { Place = new(1, 2, 3, 5) }),
                (picture, picture with { Picture = picture.Picture with { Jpeg = new byte[] { 1, 3 } } }),
                (drawing, drawing with { Place = new(1, 2, 3, 5) }), (drawing, drawing with { Drawing = Mark("blue") }),
                (sign, sign with { Place = new(1, 2, 4, 4) }), (sign, sign with { Sign = "glass" }),
                (turned, turned with { Around = new(1, 2, 3, 5) }), (turned, turned with { Turn = Turn.Mirrored }),
                (turned, turned with { Things = [line] }),
                (code, code with { X = 9 }), (code, code with { Y = 9 }), (code, code with { Module = 9 }),
                (code, code with { Code = HintBook.Cards.Codes.QrMatrix.Encode("https://b.example/")! }),
            ];
        }
    }

    private static Drawing Mark(string colour) =>
        SvgReader.Read($"<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 3 4'><path d='M0 0h3v4z' fill='{colour}'/></svg>").Drawing!;

    private static string Key(Printed thing) => WorkKey.OfPdf("T", [new PrintedPage(new(210, 297), [thing])]);
}
