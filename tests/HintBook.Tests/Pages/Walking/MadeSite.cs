using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Checking;
using HintBook.Mechanism;
using HintBook.Pages;
using HintBook.Tests.Mechanism;
using HintBook.Text;

namespace HintBook.Tests.Pages.Walking;

/// <summary>The finished pages of a book, and what they were made from.</summary>
/// <param name="Book">The book.</param>
/// <param name="Survey">What is proved of its box.</param>
/// <param name="Addresses">Where each stage's page lives.</param>
/// <param name="Pages">The pages by their files, as they are published.</param>
/// <param name="ToldApart">Whether no finding says that places can't be told apart.</param>
internal sealed record MadeSite(Book Book, Survey Survey, Addresses Addresses, IReadOnlyDictionary<string, string> Pages, bool ToldApart)
{
    // Places that can't be told apart, and pages that weren't made from every state.
    private static readonly string[] Told = ["HB7223", "HB7224"];
    private const string NotLookedFor = "HB3301";

    /// <summary>Names that the check says it doesn't look for, since they are words of every day: the bolt.</summary>
    public IReadOnlyList<string> Everyday { get; init; } = [];

    /// <summary>The site of a book that nothing is wrong with.</summary>
    public static MadeSite Of(Sound sound) => new(
        sound.Examined.Book,
        sound.Examined.Survey,
        sound.Examined.Addresses,
        Sites.Texts(sound.Examined.Site.Files),
        IsToldApart(sound.Findings))
    {
        Everyday = [.. sound.Findings.All.Where(finding => finding.Code.Id == NotLookedFor).Select(finding => finding.Message.Split('“', '”')[1])],
    };

    /// <summary>Writes a book into a folder, and checks it there; null where something is wrong with it.</summary>
    public static MadeSite? Of(Book book)
    {
        var folder = Directory.CreateTempSubdirectory("hintbook-walk-").FullName;
        try
        {
            WrittenBook.Write(book, folder);
            return HintBook.Checking.Check.Run(folder) is Sound sound ? Of(sound) : null;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>The same book as if its box had too many states to look at each of them.</summary>
    public MadeSite WithoutStates()
    {
        var (survey, _) = Surveyor.Survey(Book, whole: true, Surveyor.Limits with { Plainly = 0 });
        Assert.NotNull(survey);
        var plan = Sites.Plan(Book, survey) with { Addresses = Addresses };
        var (site, findings) = Site.Build(plan, Theme.BuiltIn(Theme.Default).Theme);
        return this with { Survey = survey, Pages = Sites.Texts(site.Files), ToldApart = IsToldApart(findings) };
    }

    private static bool IsToldApart(Findings findings) => !findings.All.Any(finding => Told.Contains(finding.Code.Id));
}
