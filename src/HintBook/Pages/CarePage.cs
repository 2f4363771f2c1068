using System.Globalization;
using HintBook.Books;
using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>How an owner looks after the box. It stands in the open, so only dangers of the box as a whole are spoken of.</summary>
internal static class CarePage
{
    public static SitePage Build(LanguageSite site) => new($"{site.Folder}care.html", "care.html", "care", () => Names(site));

    private static ScriptObject Names(LanguageSite site)
    {
        var dangers = site.Book.Cautions.Select(caution => caution.Kind).ToHashSet();
        return site.Page(
            PageHead.Build(site, "care", "care.html"),
            ("text", site.Prose.Of(site.Book.Care)),
            ("text_lang", site.LanguageOf(site.Book.Care)),
            ("cautions", CautionView.List(site.Book.Cautions, site)),
            ("topics", View.List(
                from topic in CareTopic.All
                let own = site.Book.CareTopics.GetValueOrDefault(topic.Name)
                where own is not null || topic.Where.IsEmpty || topic.Where.Any(dangers.Contains)
                select Topic(site, topic, own))));
    }

    private static ScriptObject Topic(LanguageSite site, CareTopic topic, Prose? own) => View.Of(
        ("title", site.Words[$"care_{topic.Name}"]),
        ("own", site.Prose.Of(own)),
        ("lang", site.LanguageOf(own)),
        ("text", own is not null && topic.Instead ? null : Usual(site, topic)));

    // The age that the maker gives stands where an owner looks for it; without one the usual words leave it to the maker.
    private static string Usual(LanguageSite site, CareTopic topic)
    {
        var text = site.Words[$"care_{topic.Name}_text"];
        return topic.Name == "children" && site.Age is { } age
            ? $"{site.Words.Say("care_children_age", ("age", age.ToString(CultureInfo.InvariantCulture)))} {text}"
            : text;
    }
}
