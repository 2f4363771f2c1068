using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Pages;
using HintBook.Tests.Books;
using HintBook.Tests.Reading;

namespace HintBook.Tests.Pages;

// A site in several languages: the same page names in a folder for each, one set of pictures, and a switch on every page.
public class LanguagesTests
{
    private static readonly ImmutableSortedDictionary<string, string> Pages = Sites.Texts(Site.Build(Plan(), Theme.BuiltIn(Theme.Default).Theme).Site.Files);

    [Fact]
    public void Every_page_stands_in_every_language() =>
        Assert.Equal(
            Pages.Keys.Where(page => !page.Contains('/')).Select(page => $"ar/{page}"),
            Pages.Keys.Where(page => page.StartsWith("ar/", StringComparison.Ordinal)));

    [Fact]
    public void Every_page_says_its_language_and_direction_and_leads_to_itself_in_the_others()
    {
        foreach (var (path, html) in Pages)
        {
            var page = Sites.Parse(html);
            var name = path.Split('/')[^1];
            var arabic = path != name;

            Assert.Equal(arabic ? ("ar", "rtl") : ("en", "ltr"), (page.DocumentElement.GetAttribute("lang"), page.DocumentElement.GetAttribute("dir")));
            Assert.Equal(
                arabic ? [$"../{name}", $"../ar/{name}"] : [name, $"ar/{name}"],
                page.QuerySelectorAll("[data-language]").Select(link => link.GetAttribute("href")));
            Assert.Equal(arabic ? "ar" : "en", page.QuerySelector("[data-language][aria-current]")!.GetAttribute("data-language"));
            Assert.Equal(["en", "ar"], page.QuerySelectorAll("link[rel=alternate]").Select(link => link.GetAttribute("hreflang")));
        }
    }

    [Fact]
    public void Pictures_films_and_assets_are_shared()
    {
        var stage = Sites.Parse(Pages[$"ar/{A.Addresses(Plan().Book).PageOf("lid")}"]);

        Assert.All(stage.QuerySelectorAll("img[src], script[src], link[rel=stylesheet], link[rel=icon]"), each =>
            Assert.StartsWith("../", each.GetAttribute("src") ?? each.GetAttribute("href"), StringComparison.Ordinal));
        Assert.StartsWith("../films/", stage.QuerySelector("video")!.GetAttribute("src"), StringComparison.Ordinal);
    }

    [Fact]
    public void Texts_are_those_of_the_language()
    {
        var page = A.Addresses(Plan().Book).PageOf("lid");

        Assert.Equal("lid-title", Sites.Parse(Pages[page]).QuerySelector("h1")!.TextContent);
        Assert.Equal("الغطاء", Sites.Parse(Pages[$"ar/{page}"]).QuerySelector("h1")!.TextContent);
    }

    // What the device learns on one language's pages it can say on those of another.
    [Fact]
    public void A_link_says_its_title_in_the_other_languages_for_the_device_alone()
    {
        var addresses = A.Addresses(Plan().Book);
        var (english, arabic) = (Other(""), Other("ar/"));

        Assert.Equal(("ar", "rtl", "الغطاء"), (english.GetAttribute("lang"), english.GetAttribute("dir"), english.QuerySelector("b")!.TextContent));
        Assert.Equal(("en", "lid-title"), (arabic.GetAttribute("lang"), arabic.QuerySelector("b")!.TextContent));
        Assert.True(english.HasAttribute("hidden"));

        AngleSharp.Dom.IElement Other(string folder) => Assert.Single(
            Sites.Parse(Pages[folder + addresses.PageOf("lid")]).QuerySelectorAll($"[data-did] [data-page='{addresses.Names["lid"][0]}'] span"));
    }

    // WCAG 2.2, 3.1.2 (language of parts, AA).
    [Fact]
    public void A_text_that_is_not_translated_says_its_own_language()
    {
        var addresses = A.Addresses(Plan().Book);
        var (translated, left) = (Sites.Parse(Pages[$"ar/{addresses.PageOf("lid")}"]), Sites.Parse(Pages[$"ar/{addresses.PageOf("left")}"]));

        Assert.Empty(translated.QuerySelectorAll("h1[lang], .tier .prose[lang]"));
        Assert.Equal(5, left.QuerySelectorAll("h1[lang=en][dir=ltr], .sign bdi[lang=en][dir=ltr], .tier .prose[lang=en][dir=ltr]").Length);
        Assert.Empty(Sites.Parse(Pages[addresses.PageOf("left")]).QuerySelectorAll("main [lang]:not([hidden])"));
    }

    // A stage that is translated can still have a note, a photo's words or a reset note that nobody has translated.
    [Fact]
    public void A_piece_that_is_not_translated_says_its_own_language()
    {
        var book = A.Book(A.Stage("lid") with
        {
            Cautions = [A.Caution(CautionKind.Glass, "Mind the rim."), A.Caution(CautionKind.Heavy, "Two hands.")],
            Photos = [A.Photo("card.jpg", Place.Clue, "A card."), A.Photo("lid.jpg", Place.Nudge, "A lid.")],
            Reset = A.Prose("Shut it."),
        }) with
        { Welcome = A.Prose("Hello."), Care = A.Prose("Oil it."), CareTopics = ImmutableSortedDictionary<string, Prose>.Empty.Add("finish", A.Prose("Wax.")) };
        var lid = book.Stages[0];
        var arabic = book with
        {
            Language = A.Value("ar"),
            Source = book,
            Stages =
            [
                lid with
                {
                    Title = A.Value("الغطاء"),
                    Cautions = [lid.Cautions[0], lid.Cautions[1] with { Note = "بكلتا اليدين" }],
                    Photos = [lid.Photos[0], lid.Photos[1] with { Alt = A.Value("غطاء") }],
                },
            ],
        };
        var pages = Sites.Pages(Sites.Plan(book with { Translations = [arabic] }));
        var page = A.Addresses(book).PageOf("lid");

        Assert.Equal(["Mind the rim."], Texts($"ar/{page}", ".note[lang=en][dir=ltr]"));
        Assert.Equal(["A card."], Alts("figure[lang=en][dir=ltr] img"));
        Assert.Equal(["غطاء"], Alts("figure:not([lang]) img"));
        Assert.Equal(["Hello."], Texts("ar/index.html", ".welcome[lang=en][dir=ltr]"));
        Assert.Equal(["Oil it.", "Wax."], Texts("ar/care.html", ".prose[lang=en][dir=ltr]"));
        Assert.Equal(["Shut it."], Texts("ar/reset.html", ".tasks .prose[lang=en][dir=ltr]"));
        Assert.Empty(Texts(page, "main [lang]:not([hidden])"));

        IEnumerable<string> Texts(string of, string selector) => Sites.Parse(pages[of]).QuerySelectorAll(selector).Select(each => each.TextContent.Trim());

        IEnumerable<string?> Alts(string selector) => Sites.Parse(pages[$"ar/{page}"]).QuerySelectorAll(selector).Select(each => each.GetAttribute("alt"));
    }

    [Fact]
    public void The_way_back_is_told_in_the_words_of_the_language_and_what_nobody_translated_says_its_own()
    {
        const string Drawer = "needs: [ key, { door: shut }, { lamp: lit } ]\ndoes: { drawer: open }\ngives: [ honey ]\n";
        using var folder = new BookOnDisk()
            .With("book.yaml", """
                title: The Tea Caddy
                languages: [ fr ]
                goal: [ honey ]
                parts:
                  door: { positions: [ shut, open ], name: the door }
                  lamp: { positions: [ dark, lit ], name: the lamp }
                  drawer: { positions: { shut: pushed in, open: pulled out }, name: the drawer }
                things:
                  honey: { name: pot of honey, place: in the drawer, behind: { drawer: open } }
                  key: { name: flat key, place: on a hook, behind: { door: open } }
                moves:
                  - { name: shut the door, needs: [ { door: open } ], does: { door: shut } }
                  - { name: light the lamp, does: { lamp: lit }, undo: { does: { lamp: dark }, says: Blow out the lamp. } }
                """)
            .With("stages/01-the-lid.md", Stage("The door", "does: { door: open }"))
            .With("stages/02-the-key.md", Stage("The key", "needs: [ { door: open } ]\ngives: [ key ]\nundo: { put-back: [ key ], says: Ward upward. }"))
            .With("stages/03-the-drawer.md", Stage("The drawer", Drawer + "undo: { put-back: [ honey ], does: { drawer: shut }, says: Gently. }"))
            .With("book.fr.yaml", """
                title: La boîte à thé
                parts: { drawer: { name: le tiroir, positions: { shut: enfoncé } } }
                things: { honey: { name: pot de miel, place: dans le tiroir } }
                moves: { shut the door: fermer la porte }
                """)
            .With("stages/fr/01-the-lid.md", Stage("La porte", "does: { door: open }"))
            .With("stages/fr/03-the-drawer.md", Stage("Le tiroir", Drawer + "undo: { put-back: [ honey ], does: { drawer: shut }, note: Doucement. }"));
        var book = folder.Read().Book!;
        var (survey, _) = Surveyor.Survey(book, whole: true);
        var page = Sites.Parse(Sites.Texts(Site.Build(Sites.Plan(book, survey), Theme.BuiltIn(Theme.Default).Theme).Site.Files)["fr/reset.html"]);

        Assert.Equal(
            [
                "Remettre : pot de miel (dans le tiroir).",
                "Remettre sur « enfoncé » : le tiroir.",
                "Doucement.",
                "Encore une fois : La porte.",
                "Remettre : flat key (on a hook).",
                "Ward upward.",
                "Blow out the lamp.",
                "Fermer la porte.",
            ],
            page.QuerySelectorAll(".tasks label").Select(task => task.TextContent.Trim().Replace('\u202f', ' ')));
        Assert.Equal(
            ["The key", "Ward upward.", "Blow out the lamp."],
            page.QuerySelectorAll(".steps h2[lang=en], .tasks [lang=en]").Select(each => each.TextContent));

        static string Stage(string title, string keys) =>
            $"---\ntitle: {title}\nsign: So.\n{keys}\n---\n# Nudge\nLook.\n\n# Clue\nLook closer.\n\n# Answer\nPull.\n";
    }

    [Fact]
    public void A_site_in_one_language_says_nothing_of_languages() =>
        Assert.Empty(Sites.StagePage(Sites.Everything(), "lid").QuerySelectorAll("[data-language], link[rel=alternate]"));

    private static SitePlan Plan()
    {
        var plan = Sites.Everything();
        var arabic = plan.Book with
        {
            Language = A.Value("ar"),
            Source = plan.Book,
            Stages = plan.Book.Stages.Replace(plan.Book.Stages[0], plan.Book.Stages[0] with { Title = A.Value("الغطاء") }),
        };
        return plan with { Book = plan.Book with { Translations = [arabic] } };
    }
}
