using HintBook.Books;
using HintBook.Mechanism;
using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>How the box is put back, behind a warning: <see cref="ResetList"/> as a template gets it.</summary>
internal static class ResetPage
{
    public static SitePage Build(LanguageSite site) => new($"{site.Folder}reset.html", "reset.html", "reset", () => Names(site));

    private static ScriptObject Names(LanguageSite site)
    {
        var words = new ResetWords(site.Book, site.Words);
        var ticks = new Dictionary<string, int>();
        return site.Page(
            PageHead.Build(site, "reset", "reset.html"),
            ("cautions", CautionView.List(site.Book.Cautions, site)),
            ("stages", View.List(ResetList.Build(site.Book, site.Plan.Survey.WayBack).Select(entry => Entry(site, words, ticks, entry)))));
    }

    private static ScriptObject Entry(LanguageSite site, ResetWords words, Dictionary<string, int> ticks, ResetEntry entry) => View.Of(
        // What belongs to no stage is handling of the box as a whole.
        ("page", entry.Stage is { } stage ? site.Plan.Addresses.Names[stage.Id.Value][0] : "reset"),
        ("title", entry.Stage?.Title.Value),
        ("lang", site.LanguageOf(entry.Stage)),
        ("cautions", CautionView.List(entry.Cautions, site)),
        ("tasks", View.List(entry.Items.Select(item => item switch
        {
            ResetLine line => Line(site, line, words.Of(line), ticks),
            ResetNote note => Note(site, note),
            _ => null,
        }))));

    private static ScriptObject Line(LanguageSite site, ResetLine line, string says, Dictionary<string, int> ticks) => View.Of(
        ("says", says),
        ("key", Key(site, line.Stage?.Id.Value ?? "", says, ticks)),
        ("lang", LanguageOf(site, line)),
        ("text", null),
        ("photos", Photos(site, line)));

    // Parts as they stand once the line is carried out, where the author has photos of that.
    private static ScriptArray? Photos(LanguageSite site, ResetLine line)
    {
        var photos = View.List(
            from placed in line.Labels.Concat(line.Named)
            let photo = site.Book.Box.Parts.FirstOrDefault(part => part.Id.Value == placed.Name)?.Details.GetValueOrDefault(placed.Position)?.Photo
            where photo is not null
            let view = PhotoView.Build(photo, site)
            where view is not null
            select view);
        return photos.Count == 0 ? null : photos;
    }

    private static ScriptObject Note(LanguageSite site, ResetNote note) => View.Of(
        ("says", note.Says),
        ("key", null),
        ("lang", note.Never is { } never ? site.LanguageOfNever(never) : site.LanguageOf((object?)note.Step ?? note.Text)),
        ("text", site.Prose.Of(note.Text)),
        ("photos", note.HasPhotos ? PhotoView.Build(note.Stage.Photos, Place.Reset, site) : null));

    // Labels are in the language of the page; the rest is the author's, as far as it isn't translated.
    private static Html LanguageOf(LanguageSite site, ResetLine line) => line switch
    {
        { Step: { Kind: StepKind.BookMove } step } => site.LanguageOfMove(step.Move, says: false),
        { Says: null } or { Labels.IsEmpty: false } => Html.Empty,
        { Stage: null, Step: { } step } => site.LanguageOfMove(step.Move, says: true),
        _ => site.LanguageOf(line.SaidBy),
    };

    // The key under which a tick is kept says nothing, and lasts as long as the line's own words. What is done twice has two.
    private static string Key(LanguageSite site, string stage, string says, Dictionary<string, int> ticks)
    {
        var line = $"reset\n{stage}\n{says}";
        var before = ticks[line] = ticks.GetValueOrDefault(line) + 1;
        return Addresses.Derive(site.Book.Identity, before == 1 ? line : $"{line}\n{before}");
    }
}
