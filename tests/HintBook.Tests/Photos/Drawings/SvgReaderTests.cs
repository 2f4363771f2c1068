using System.Numerics;
using System.Text;
using CsCheck;
using HintBook.Photos.Drawings;

namespace HintBook.Tests.Photos.Drawings;

/// <summary>What is read of an SVG, what is told of it, and what is left out.</summary>
public class SvgReaderTests
{
    private static readonly Gen<string> Command = Gen.OneOf(
        Gen.Select(Gen.Const("ML"), Gen.Int[-500, 500], Gen.Int[-500, 500]).Select((c, x, y) => $"{c[Math.Abs(x) % 2]}{x} {y}"),
        Gen.Int[-500, 500].Select(x => $"h{x}"),
        Gen.Int[-500, 500].Select(y => $"V{y}"),
        Gen.Int[-500, 500].Array[6].Select(n => $"c{string.Join(' ', n)}"),
        Gen.Int[-500, 500].Array[4].Select(n => $"S{string.Join(' ', n)}"),
        Gen.Int[-500, 500].Array[2].Select(n => $"t{string.Join(',', n)}"),
        Gen.Select(Gen.Int[1, 90], Gen.Int[1, 90], Gen.Int[0, 360], Gen.Bool, Gen.Bool, Gen.Int[-200, 200])
            .Select((rx, ry, turn, large, sweep, end) => $"a{rx} {ry} {turn} {(large ? 1 : 0)}{(sweep ? 1 : 0)}{end} {end + 7}"),
        Gen.Const("z"));

    [Fact]
    public void What_is_written_reads_as_the_same_drawing() => Command.Array[0, 12].Sample(commands =>
    {
        var (drawing, problems) = Read($"<path d='M0 0{string.Concat(commands)}L9 9' stroke='#123456'/>");
        Assert.Empty(problems);
        Assert.NotNull(drawing);
        var (again, _) = SvgReader.Read(Encoding.UTF8.GetString(SvgWriter.Write(drawing)));
        Assert.NotNull(again);
        Assert.Equal(Points(drawing).Length, Points(again).Length);
        Assert.All(Points(drawing).Zip(Points(again)), pair => Assert.True(Vector2.Distance(pair.First, pair.Second) < 0.02));
    });

    // SVG 1.1, section 8.3.9: the grammar lets go of every blank that isn't needed.
    [Theory]
    [InlineData("M0 0L.5.5-1-2", "M0 0L0.5 0.5L-1 -2")]
    [InlineData("M1e1 0 20 0", "M10 0L20 0")]
    [InlineData("m10 10 5 0v5", "M10 10L15 10L15 15")]
    [InlineData("M0 0h10zl5 5", "M0 0L10 0ZM0 0L5 5")]
    [InlineData("M0,0a1 1 0 0010 0", "M0 0A1 1 0 0 0 10 0")]
    public void Path_data_may_be_written_shortly(string shortly, string fully) =>
        Assert.Equal(Curves(PathData.Read(fully)), Curves(PathData.Read(shortly)));

    [Theory]
    [InlineData("L 1 1")]
    [InlineData("M 1")]
    [InlineData("M 1 1 X 2")]
    [InlineData("M 1 1 a 1 1 0 2 0 5 5")]
    [InlineData("M 1e99 1")]
    public void Path_data_that_is_wrong_is_not_read(string data) => Assert.Null(PathData.Read(data));

    [Theory]
    [InlineData("<text x='1' y='2'>Alder Row</text>", "the element “text”")]
    [InlineData("<image href='x.png'/>", "the element “image”")]
    [InlineData("<use href='#a'/>", "the element “use”")]
    [InlineData("<script>alert(1)</script>", "the element “script”")]
    [InlineData("<foreignObject/>", "the element “foreignObject”")]
    [InlineData("<a href='javascript:x'><path d='M0 0h1'/></a>", "the element “a”")]
    [InlineData("<style>path { fill: red }</style>", "the element “style”")]
    [InlineData("<defs><style>path { fill: red }</style></defs>", "the element “style”")]
    [InlineData("<linearGradient id='g'/>", "the element “linearGradient”")]
    [InlineData("<path d='M0 0h9v9' fill='url(#g)'/>", "fill=\"url(#g)\"")]
    [InlineData("<path d='M0 0h9v9' style='fill:red;opacity:.5'/>", "opacity=\".5\"")]
    [InlineData("<path d='M0 0h9v9' clip-path='url(#c)'/>", "clip-path=\"url(#c)\"")]
    [InlineData("<path d='M0 0h9v9' stroke='red' stroke-dasharray='2 1'/>", "stroke-dasharray=\"2 1\"")]
    [InlineData("<path d='M0 0h9v9' stroke='red' transform='scale(1 3)'/>", "a line that is stretched unevenly")]
    [InlineData("<path d='M0 0h9v9' transform='turn(3)'/>", "the transform “turn(3)”")]
    [InlineData("<path d='M0 0 X'/>", "a path that can't be read")]
    [InlineData("<rect width='10%' height='4'/>", "a rect that can't be read")]
    [InlineData("<path d='M0 0h9000000v1'/>", "more than a mark holds")]
    public void What_is_not_drawn_is_told(string content, string what)
    {
        var (drawing, problems) = Read(content + "<circle cx='50' cy='50' r='9'/>");
        Assert.Null(drawing);
        Assert.Equal((what, 3), (Assert.Single(problems).What, problems[0].Line));
    }

    [Theory]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg'><path d='M0 0h1'/></svg>", "no size")]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 0 9'><path d='M0 0h1'/></svg>", "no size")]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'/>", "nothing to draw")]
    [InlineData("<html/>", "no element “svg” at its head")]
    [InlineData("not at all", "broken XML")]
    [InlineData("<!DOCTYPE svg [<!ENTITY a SYSTEM 'file:///etc/passwd'>]><svg xmlns='http://www.w3.org/2000/svg'>&a;</svg>", "broken XML")]
    public void A_file_that_is_no_drawing_is_told(string file, string what) => Assert.Equal(what, Assert.Single(SvgReader.Read(file).Problems).What);

    [Fact]
    public void Everything_wrong_is_told_at_once() =>
        Assert.Equal(3, Read("<text/><image/><text/><path d='M0 0h9v9' fill='url(#g)'/>").Problems.Length);

    [Fact]
    public void Too_many_groups_in_each_other_are_told() => Assert.Single(
        Read(string.Concat(Enumerable.Repeat("<g>", 5000)) + "<path d='M0 0h9'/>" + string.Concat(Enumerable.Repeat("</g>", 5000))).Problems);

    [Fact]
    public void What_is_not_seen_is_left_out()
    {
        var (drawing, _) = SvgReader.Read(
            """
            <!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd">
            <svg xmlns="http://www.w3.org/2000/svg" xmlns:n="http://notes.example/" viewBox="0 0 10 10" onload="alert(1)">
            <title>5173</title><desc>the queen clip</desc><metadata>by somebody</metadata><n:view zoom="3"/>
            <!-- the queen clip --><g id="the-queen" onclick="alert(2)" n:label="the queen"><path id="5173" d="M0 0h10v10"/></g>
            <rect width="4" height="4" display="none"/><rect width="4" height="4" fill="none"/>
            </svg>
            """);
        Assert.NotNull(drawing);
        Assert.Equal(
            """
            <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1000 1000">
            <path fill="#000000" d="M0 0L1000 0L1000 1000"/>
            </svg>

            """,
            Encoding.UTF8.GetString(SvgWriter.Write(drawing)));
    }

    [Theory]
    [InlineData("red", 0xFF0000)]
    [InlineData("#f80", 0xFF8800)]
    [InlineData("#3A5f2c", 0x3A5F2C)]
    [InlineData("rgb(255, 128, 0)", 0xFF8000)]
    [InlineData("rgb(100%,0%,50%)", 0xFF0080)]
    [InlineData("none", null)]
    public void Colours_are_read(string text, int? colour)
    {
        Assert.True(SvgColour.TryRead(text, out var read));
        Assert.Equal(colour, read);
    }

    private static (Drawing? Drawing, System.Collections.Immutable.ImmutableArray<DrawingProblem> Problems) Read(string content) =>
        SvgReader.Read($"<svg xmlns='http://www.w3.org/2000/svg'\n viewBox='0 0 100 100'>\n{content}</svg>");

    private static Vector2[] Points(Drawing drawing) =>
    [
        .. drawing.Shapes.SelectMany(shape => shape.Figures).SelectMany(figure => figure.Curves
            .SelectMany(curve => (Vector2[])[curve.First, curve.Second, curve.End]).Prepend(figure.Start)),
    ];

    private static string Curves(IEnumerable<Figure>? figures) =>
        string.Join('\n', (figures ?? []).Select(figure => $"{figure.Start} {figure.IsClosed}: {string.Join(", ", figure.Curves)}"));
}
