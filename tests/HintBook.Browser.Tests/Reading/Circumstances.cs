using HintBook.Browser.Tests.Sites;

namespace HintBook.Browser.Tests.Reading;

/// <summary>How a reader comes to the site.</summary>
/// <param name="Script">Whether the browser runs script.</param>
/// <param name="Phone">A phone, 390 × 844, or else a desk, 1280 × 800.</param>
/// <param name="Dark">Whether the reader likes it dark.</param>
/// <param name="Source">Where the site is read from.</param>
public sealed record Circumstances(bool Script = true, bool Phone = true, bool Dark = false, Source Source = Source.Http)
{
    /// <summary>Every one of them.</summary>
    public static TheoryData<Circumstances> All => Rows(
        from script in new[] { true, false }
        from phone in new[] { true, false }
        from dark in new[] { false, true }
        from source in new[] { Source.Http, Source.File }
        select new Circumstances(script, phone, dark, source));

    /// <summary>Five in which each two choices meet in all four ways (a covering array of strength two).</summary>
    public static IEnumerable<Circumstances> Pairs =>
    [
        new(false, false, false, Source.Http),
        new(false, true, true, Source.File),
        new(true, false, true, Source.File),
        new(true, true, false, Source.File),
        new(true, true, true, Source.Http),
    ];

    /// <summary>The same for each book.</summary>
    public static TheoryData<string, Circumstances> PairsForEachBook => ForEachBook(Pairs);

    /// <summary>With script, from a web host and from a memory stick.</summary>
    public static TheoryData<Circumstances> WithScript => Rows([new(Phone: true), new(Phone: false, Source: Source.File)]);

    /// <summary>With and without script, from a web host and from a memory stick.</summary>
    public static TheoryData<string, Circumstances> WithAndWithoutScriptForEachBook => ForEachBook(
        from script in new[] { true, false }
        from source in new[] { Source.Http, Source.File }
        select new Circumstances(script, Source: source));

    /// <summary>Both sizes in light and dark.</summary>
    public static TheoryData<string, Circumstances> LooksForEachBook => ForEachBook(
        from phone in new[] { true, false }
        from dark in new[] { false, true }
        select new Circumstances(Phone: phone, Dark: dark));

    public override string ToString() =>
        $"script {(Script ? "on" : "off")}, {(Phone ? "phone" : "desk")}, {(Dark ? "dark" : "light")}, {(Source == Source.Http ? "http" : "file")}";

    private static TheoryData<string, Circumstances> ForEachBook(IEnumerable<Circumstances> circumstances)
    {
        var rows = new TheoryData<string, Circumstances>();
        foreach (var book in Shelf.Names)
        {
            foreach (var one in circumstances)
                rows.Add(book, one);
        }

        return rows;
    }

    private static TheoryData<Circumstances> Rows(IEnumerable<Circumstances> circumstances) => [.. circumstances];
}
