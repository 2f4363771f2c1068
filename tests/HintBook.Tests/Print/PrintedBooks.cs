using HintBook.Cards;
using HintBook.Checking;
using HintBook.Print;
using HintBook.Print.Booklets;
using HintBook.Tests.Reading;

namespace HintBook.Tests.Print;

/// <summary>Books as the papers take them, without their photos, and the papers of the example.</summary>
internal static class PrintedBooks
{
    private static readonly Lazy<Sound> Checked = new(() => Assert.IsType<Sound>(Check.Run(Where.Example)));
    private static readonly Lazy<SetBooklet> ExampleBooklet = new(() => Booklet.Set(Example));

    /// <summary>The example.</summary>
    public static PaperBook Example => Of(Checked.Value.Examined);

    /// <summary>The example's booklet as it comes.</summary>
    public static SetBooklet Hints => ExampleBooklet.Value;

    /// <summary>The example, checked.</summary>
    public static Examined Examined => Checked.Value.Examined;

    public static PaperBook Of(Examined book) => new()
    {
        Plan = book.Site.Plan,
        Words = book.Theme.WordsIn(book.Book.Language).Words,
        Where = book.Site.Where,
        Picture = _ => null,
        Paper = Paper.A4,
    };
}
