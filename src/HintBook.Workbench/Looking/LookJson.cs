using System.Collections.Immutable;
using HintBook.Text;

namespace HintBook.Workbench.Looking;

/// <summary>A look as the page reads it.</summary>
internal static class LookJson
{
    /// <summary>
    /// <c>number</c>, <c>current</c>, <c>title</c> (null before there is one), <c>files</c>, <c>themes</c>, <c>languages</c> (the book's own first),
    /// <c>pages</c> (each stage's <c>page</c>, <c>title</c> and <c>file</c>), <c>rehearsals</c> (each one's <c>title</c> and <c>file</c>),
    /// <c>verdicts</c> (<c>says</c>, <c>status</c>, <c>why</c>) and <c>found</c> (<see cref="FindingsJson"/>).
    /// </summary>
    /// <param name="look">The look.</param>
    /// <param name="root">The book's folder.</param>
    /// <param name="files">The names of the book's text files.</param>
    /// <param name="themes">The themes it can be seen in.</param>
    /// <param name="begins">Whether there is no book yet, and one may be begun (<c>begins</c>).</param>
    public static byte[] Of(Look look, string root, ImmutableArray<string> files, ImmutableArray<string> themes, bool begins) => JsonLists.Document(json =>
    {
        json.WriteNumber("number", look.Number);
        json.WriteBoolean("current", look.IsCurrent);
        json.WriteBoolean("begins", begins);
        json.WriteString("title", look.Shown?.Book.Title.Value);
        json.WriteTexts("files", files);
        json.WriteTexts("themes", themes);
        json.WriteTexts("languages", look.Shown is { Book: var book } ? book.Translations.Prepend(book).Select(each => each.Language.Value) : []);
        json.WriteObjects("pages", look.Shown?.Book.Stages ?? [], stage =>
        {
            json.WriteString("page", look.Shown?.Addresses.PageOf(stage.Id.Value));
            json.WriteString("title", stage.Title.Value);
            json.WriteString("file", stage.File.Path);
        });
        json.WriteObjects("rehearsals", look.Shown?.Book.Rehearsals ?? [], kept =>
        {
            json.WriteString("title", kept.Title);
            json.WriteString("file", kept.File.Path);
        });
        json.WriteObjects("verdicts", look.Verdicts, verdict =>
        {
            json.WriteString("says", verdict.Says);
            json.WriteString("status", verdict.Status);
            json.WriteString("why", verdict.Why);
        });
        json.WritePropertyName("found");
        json.WriteRawValue(FindingsJson.Write(root, look.Findings, withNotes: true));
    });
}
