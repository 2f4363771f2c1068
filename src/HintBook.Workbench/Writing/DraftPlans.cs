using System.Collections.Immutable;
using System.Text;
using HintBook.Books;
using HintBook.Photos.Films;
using HintBook.Reading;
using HintBook.Starting.Drafting;
using HintBook.Text;
using HintBook.Workbench.Showing;

namespace HintBook.Workbench.Writing;

/// <summary>What a maker wants drafted, as the page sends it.</summary>
/// <param name="Name">What their file of captions is called.</param>
/// <param name="Captions">The file, in Base64: its encoding isn't known before it is read.</param>
/// <param name="Chapters">A list of chapters as it was pasted; empty for none.</param>
/// <param name="Film">The film in the folder <c>clips</c>; empty where it isn't there.</param>
internal sealed record DraftWish(string Name, string Captions, string Chapters = "", string Film = "");

/// <summary>Steps to start from, out of what is said in a film: as the verb <c>draft</c> makes them, and told before they are written.</summary>
internal static class DraftPlans
{
    /// <summary>Plans new stage files; those that are there stay as they are.</summary>
    /// <param name="root">The book's folder.</param>
    /// <param name="wish">What is wanted.</param>
    /// <exception cref="IOException">The folder can't be read.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    public static StagePlan Of(string root, DraftWish wish)
    {
        if (BytesOf(wish.Captions) is not { } captions)
            return new StagePlan.Refused("The captions didn't arrive whole. Choose the file once more.");
        if (Reader.Read(root).Book is not { } book)
            return new StagePlan.Refused("“book.yaml” can't be read. Mend it first; the list of what was found says where.");
        if (wish.Film.Length > 0 && !new MediaFiles(root).Films.Contains(wish.Film))
            return new StagePlan.Refused($"There is no film “{wish.Film}” in the folder “clips” any more.");
        var stages = new DirectoryInfo(Path.Combine(root, "stages"));
        var taken = stages.Exists ? stages.GetFiles() : [];
        var chapters = string.IsNullOrWhiteSpace(wish.Chapters) ? null : FilmTexts.ChaptersIn("The list of chapters", Encoding.UTF8.GetBytes(wish.Chapters));
        var film = wish.Film.Length > 0 ? wish.Film : null;
        var length = film is null ? null : FilmFile.LengthOf(Path.Combine(root, "clips", film));
        var draft = BookDraft.Of(book, taken.Select(file => file.Name), FilmTexts.SpokenIn(wish.Name, captions), chapters, film, length);
        if (draft.Stages.IsEmpty)
            return new StagePlan.Refused(string.Join(' ', draft.Says));
        var lineEnd = LineEndIn(taken);
        return new StagePlan.Ready(
            [.. draft.Says, .. draft.Stages.Select(Told), .. Named(draft.Things), $"Each says “{Draft.Open}” where you have something to write."],
            new(
                $"Draft {Words.Count(draft.Stages.Length, "step")} from “{wish.Name}”",
                [.. draft.Stages.Select(stage => new ChangedFile(stage.Path, null, [.. Encoding.UTF8.GetBytes(stage.Text().ReplaceLineEndings(lineEnd))]))]),
            draft.Stages[0].Path);
    }

    private static string Told(DraftedStage stage) =>
        string.Join(' ', [
            $"{DraftedStage.Moment(stage.Step.From)}: {(stage.Step.Title.Length > 0 ? $"“{stage.Step.Title}”" : "a step without a title")}.",
            .. Perhaps("needs", stage.Needs),
            .. Perhaps("gives", stage.Gives),
        ]);

    private static IEnumerable<string> Perhaps(string key, ImmutableArray<NamedThing> things) =>
        things.IsEmpty ? [] : [$"Perhaps {key}: {string.Join(", ", things.Select(thing => thing.Id))}."];

    private static IEnumerable<string> Named(ImmutableArray<NamedThing> things) => things.IsEmpty
        ? []
        : [$"Often named, and not in book.yaml: {string.Join(", ", things.Select(thing => thing.Id))}. What can be held is a thing, what moves is a part."];

    // As the first of the book's stages has them.
    private static string LineEndIn(FileInfo[] stages)
    {
        var first = stages.Where(file => file.Extension == ".md").OrderBy(file => file.Name, StringComparer.Ordinal).FirstOrDefault();
        return first is not null && File.ReadAllText(first.FullName).Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
    }

    private static byte[]? BytesOf(string base64)
    {
        var bytes = new byte[base64.Length];
        return Convert.TryFromBase64String(base64, bytes, out var written) ? bytes[..written] : null;
    }
}
