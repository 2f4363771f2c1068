using HintBook.Browser.Tests.Sites;

namespace HintBook.Browser.Tests.Reading;

/// <summary>How a reader comes to the site.</summary>
/// <param name="Script">Whether the browser runs script.</param>
/// <param name="Phone">A phone, 390 × 844, or else a desk, 1280 × 800.</param>
/// <param name="Dark">Whether the reader likes it dark.</param>
/// <param name="Source">Where the site is read from.</param>
/// <param name="Locale">The browser's language.</param>
public sealed record Circumstances(bool Script = true, bool Phone = true, bool Dark = false, Source Source = Source.Http, string Locale = "en-GB")
{
    /// <summary>Five in which each two choices meet in all four ways (a covering array of strength two).</summary>
    public static TheoryData<Circumstances> Pairs => Rows(InPairs);

    /// <summary>The same for the small book, and two opposite ones for each other book: for what has to look at every page.</summary>
    public static TheoryData<string, Circumstances> SweepsOfEachBook =>
    [
        .. from book in Shelf.Names
           from one in book == SmallBook.Title ? InPairs : [new(true, false, false, Source.Http), new(false, true, true, Source.File)]
           select new TheoryDataRow<string, Circumstances>(book, one),
    ];

    /// <summary>With script, from a web host and from a memory stick.</summary>
    public static TheoryData<Circumstances> WithScript => Rows([new(Phone: true), new(Phone: false, Source: Source.File)]);

    /// <summary>With script from a web host, without it from a memory stick.</summary>
    public static TheoryData<string, Circumstances> WithAndWithoutScriptForEachBook => ForEachBook([new(Script: true), new(Script: false, Source: Source.File)]);

    /// <summary>A phone in light, a desk in dark.</summary>
    public static TheoryData<string, Circumstances> LooksForEachBook => ForEachBook([new(Phone: true, Dark: false), new(Phone: false, Dark: true)]);

    private static Circumstances[] InPairs =>
    [
        new(false, false, false, Source.Http),
        new(false, true, true, Source.File),
        new(true, false, true, Source.File),
        new(true, true, false, Source.File),
        new(true, true, true, Source.Http),
    ];

    public override string ToString() =>
        $"script {(Script ? "on" : "off")}, {(Phone ? "phone" : "desk")}, {(Dark ? "dark" : "light")}, {(Source == Source.Http ? "http" : "file")}";

    private static TheoryData<string, Circumstances> ForEachBook(IEnumerable<Circumstances> circumstances) =>
        [.. from book in Shelf.Names from one in circumstances select new TheoryDataRow<string, Circumstances>(book, one)];

    private static TheoryData<Circumstances> Rows(IEnumerable<Circumstances> circumstances) => [.. circumstances];
}
