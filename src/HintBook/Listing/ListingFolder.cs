using System.Collections.Immutable;
using System.Text;
using HintBook.Audit;
using HintBook.Books;
using HintBook.Checking;
using HintBook.Pages;
using HintBook.Photos;
using HintBook.Publishing;
using HintBook.Spoilers;
using HintBook.Text;

namespace HintBook.Listing;

/// <summary>What comes of a description.</summary>
/// <param name="Files">The files with their names; none where something stands against it.</param>
/// <param name="Findings">What the two checks found, and what can't be made.</param>
public sealed record ListingFiles(ImmutableArray<(string Name, ReadOnlyMemory<byte> Content)> Files, Findings Findings);

/// <summary>From a book to the files that describe it for a shop or a fair.</summary>
public static class ListingFolder
{
    // At 300 dots to the inch 1,417 pixels square, and 1,890 by 1,417: what shops take (common practice, no source).
    private const double Side = 120;
    private const double Wide = 160;

    /// <summary>
    /// Makes the files. Each description is read by the search for leaks and by the audit as what anyone sees; with one finding of theirs there
    /// are no files at all.
    /// </summary>
    /// <param name="known">A book without errors.</param>
    /// <param name="language">The one language that is wanted; null for all of the book.</param>
    public static ListingFiles Make(Examined known, string? language)
    {
        var front = known.Book.Photos.FirstOrDefault(photo => photo.Place == Place.Front);
        var (square, wide) = (front is null ? null : Cut(known, front, Side), front is null ? null : Cut(known, front, Wide));
        var files = ImmutableArray.CreateBuilder<(string, ReadOnlyMemory<byte>)>();
        var findings = new List<Finding>();
        var plans = Site.InEachLanguage(known.Site.Plan);
        foreach (var (i, plan) in plans.Index().Where(each => language is null || IsIn(each.Item, language)))
        {
            var words = known.Theme.WordsIn(plan.Book.Language).Words;
            var ending = i == 0 ? "" : $".{plan.Book.Language.Value}";
            var blocks = ListingContent.Of(known, plan);
            var text = ListingText.Plain(blocks, plan.Book.Html);
            var alt = plan.Book.Photos.FirstOrDefault(photo => photo.Place == Place.Front)?.Alt?.Value ?? words["photo_without_alt"];
            findings.AddRange(Leaks.Outside(plan.Book, known.Survey, text, "the description for shops"));
            Add($"listing{ending}.md", ListingText.Markdown(blocks));
            Add($"listing{ending}.txt", text);
            Add($"listing{ending}.html", ListingText.Page(blocks, plan.Book, wide is null ? null : (wide.Jpeg, wide.Width, wide.Height, alt)));
            foreach (var (name, said) in ListingFilm.Of(plan, words))
                Add($"{name}{ending}.txt", said);
        }

        if (square is not null)
            files.Add(("photo-square.jpg", square.Jpeg));
        if (wide is not null)
            files.Add(("photo-4x3.jpg", wide.Jpeg));
        findings.AddRange(Audited(known, [.. files.Where(file => file.Item1.StartsWith("listing", StringComparison.Ordinal))]));
        var told = Findings.Of(findings);
        return new(told.All.IsEmpty ? files.ToImmutable() : [], told);

        void Add(string name, string said) => files.Add((name, Encoding.UTF8.GetBytes(said)));
    }

    /// <summary>Whether a book has a language.</summary>
    internal static bool IsIn(SitePlan plan, string language) => plan.Book.Language.Value.Equals(language, StringComparison.OrdinalIgnoreCase);

    // Cut around its middle, upright, in sRGB and without a word of metadata.
    private static PrintedPhoto? Cut(Examined known, Photo photo, double width)
    {
        if (known.Media.Photos.FirstOrDefault(each => each.File.File.Value == photo.File.Value) is not { } planned)
            return null;
        var bytes = known.Folder.ReadBytes(photo.File.Value, photo.File.At, PhotoSettings.Standard.MaxFileBytes, []);
        return bytes is null ? null : PhotoPipeline.ForPaper(bytes, planned.Plan, width, Side, whole: false);
    }

    // The audit reads files of a folder, and a page that its table doesn't name as one that anyone sees.
    private static IEnumerable<Finding> Audited(Examined known, ImmutableArray<(string Name, ReadOnlyMemory<byte> Content)> files)
    {
        var folder = Directory.CreateTempSubdirectory("hintbook-listing-").FullName;
        try
        {
            foreach (var (name, content) in files)
                File.WriteAllBytes(Path.Combine(folder, name), content.Span);
            var table = AuditTables.Build(known.Book, known.MayBeSaid, known.Addresses, known.Theme, known.Media.Photos, known.Site.Where);
            return
            [
                .. from fault in SiteAudit.Run(folder, table).Faults
                   where fault.Secret is not null
                   select (fault.IsSure ? FinishedAudit.FaultCode : FinishedAudit.DoubtCode).At(
                       known.Book.File.Top,
                       $"In {fault.File}{(fault.Line > 0 ? $", line {fault.Line}" : "")}: {fault.Message}",
                       "Take it out of what stands outside: title, welcome, care, cautions, names of parts that show."),
            ];
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
