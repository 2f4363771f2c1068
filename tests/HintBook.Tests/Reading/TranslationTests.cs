using HintBook.Reading;
using HintBook.Tests.House;

namespace HintBook.Tests.Reading;

// A book in several languages: book.fr.yaml and stages/fr/ hold texts, the box stays the one of book.yaml.
public class TranslationTests
{
    private const string TwoLanguages =
        "title: The Tea Caddy\nlanguages: [ fr ]\ngoal: [ honey ]\n"
        + "things: { honey: { name: pot of honey, place: in the caddy } }\n"
        + BookOnDisk.WayBack;

    private const string French =
        """
        ---
        title: Le couvercle
        sign: Il est fermé.
        translates: DIGEST
        ---
        # Coup de pouce
        Levez les yeux.

        # Clue
        Regardez le couvercle.

        # Réponse
        Soulevez le couvercle.
        """;

    // Of the stage that the small book has: worked out by the program, so only that it changes with the texts is tested.
    private static readonly string Digest = DigestOfTheLid();

    [Fact]
    public void Texts_are_those_of_the_language_and_the_box_is_the_same()
    {
        using var book = Bilingual();
        var (_, english, findings) = book.Read();
        var french = Assert.Single(english!.Translations);

        Assert.Empty(findings.All);
        Assert.Equal(("fr", "La boîte à thé"), (french.Language.Value, french.Title.Value));
        var lid = french.Stages[0];
        Assert.Equal(("Le couvercle", "Il est fermé.", "Levez les yeux."), (lid.Title.Value, lid.Sign.Value, lid.Nudge.Markdown));
        Assert.Equal(english.Stages[0].Moves[0].Changes, french.Stages[0].Moves[0].Changes);
    }

    [Fact]
    public void A_thing_keeps_its_first_name_as_another_name()
    {
        using var book = Bilingual();
        var honey = book.Read().Book!.Translations[0].Box.Things[0];

        Assert.Equal(("pot de miel", "dans la boîte"), (honey.Name, honey.Place));
        Assert.Equal(["le miel", "pot of honey"], honey.Also.Select(name => name.Value));
    }

    [Fact]
    public void A_stage_that_is_not_translated_stands_in_the_books_own_language_with_a_note()
    {
        using var book = Bilingual().Without("stages/fr/01-the-lid.md");
        var (_, english, findings) = book.Read();

        Assert.Equal("The lid", english!.Translations[0].Stages[0].Title.Value);
        Assert.Equal("HB1604", Assert.Single(findings.All).Code.Id);
    }

    [Theory]
    [InlineData("stages/fr/02-the-led.md", "HB1603")]
    [InlineData("stages/fr/notes.txt", "HB1310")]
    [InlineData("stages/de/01-the-lid.md", "HB1310")]
    public void A_file_that_translates_nothing_is_told(string file, string code)
    {
        using var book = Bilingual().With(file, French.Replace("DIGEST", Digest, StringComparison.Ordinal));

        Assert.Equal(code, Assert.Single(book.Read().Findings.All).Code.Id);
    }

    [Theory]
    [InlineData("parts: { honey: { name: miel } }", "In book.yaml it stands under “things”: move it there.")]
    [InlineData("things: { bocal-de-miel: { name: miel } }", "Write one of the names that book.yaml has there, “honey”, and the translation behind it.")]
    [InlineData("codes: { bocal-de-miel: { name: miel } }", "Take it out: book.yaml has no names under that heading.")]
    public void A_name_at_the_wrong_place_is_told_the_right_one(string keys, string help)
    {
        using var book = Bilingual().With("book.fr.yaml", $"title: La boîte\n{keys}\n");
        Assert.Equal(("HB1605", help), (Assert.Single(book.Read().Findings.All).Code.Id, Assert.Single(book.Read().Findings.All).Help));
    }

    [Fact]
    public void A_name_that_the_book_does_not_have_is_told_with_the_nearest()
    {
        using var book = Bilingual().With("book.fr.yaml", "title: La boîte\nthings: { hony: { name: miel } }\n");
        var finding = Assert.Single(book.Read().Findings.All);

        Assert.Equal("HB1605", finding.Code.Id);
        Assert.Contains("Write instead: honey", finding.Help, StringComparison.Ordinal);
    }

    [Fact]
    public void Moves_have_names_in_each_language_those_of_the_book_by_their_name_there_those_of_a_stage_where_they_stand()
    {
        const string Drawer = "title: The Tea Caddy\nlanguages: [ fr ]\ngoal: [ honey ]\nthings: { honey: { name: pot of honey } }\n"
            + "parts: { drawer: { positions: { shut: shut, open: pulled out }, name: the drawer } }\n"
            + "moves: [ { name: shut the drawer, needs: [ { drawer: open } ], does: { drawer: shut } } ]\n";
        const string English = "title: The drawer\nsign: It is shut.\nmoves:\n  - { name: find the catch, does: { drawer: open } }\n"
            + "  - { name: pull, needs: [ { drawer: open } ], does: { drawer: open } }\nnudge: Look.\nclue: Look closer.\nanswer: Pull.\n";
        const string Translated = "title: Le tiroir\nsign: Il est fermé.\nmoves: [ { name: trouver le loquet }, { name: tirer } ]\n"
            + "nudge: Regarde.\nclue: Regarde mieux.\nanswer: Tire.\n";
        using var book = Bilingual().With("book.yaml", Drawer)
            .With("book.fr.yaml", "title: La boîte\nparts: { drawer: { positions: { open: ouvert } } }\nmoves: { shut the drawer: fermer le tiroir }\n")
            .With("stages/02-the-drawer.yaml", English).With("stages/fr/02-the-drawer.yaml", Translated);
        var french = book.Read().Book!.Translations[0];

        Assert.Equal("fermer le tiroir", Assert.Single(french.Box.Moves).Name.Value);
        Assert.Equal(["trouver le loquet", "tirer"], french.Stages[1].Moves.Select(move => move.Name.Value));
        Assert.Equal("Le couvercle", Assert.Single(french.Stages[0].Moves).Name.Value);
        Assert.Equal(("shut", "ouvert"), (french.Box.Parts[^1].Say("shut"), french.Box.Parts[^1].Say("open")));
    }

    [Fact]
    public void A_move_that_the_book_does_not_have_is_told_with_the_nearest()
    {
        using var book = Bilingual().With("book.fr.yaml", "title: La boîte\nmoves: { put teh honey back: remettre le miel }\n");
        var finding = Assert.Single(book.Read().Findings.All);

        Assert.Equal(("HB1605", "Write instead: put the honey back"), (finding.Code.Id, finding.Help));
    }

    [Fact]
    public void A_language_without_its_book_is_told()
    {
        using var book = Bilingual().Without("book.fr.yaml");

        Assert.Equal("HB1602", Assert.Single(book.Read().Findings.All).Code.Id);
    }

    [Fact]
    public void The_books_own_language_is_no_translation()
    {
        using var book = new BookOnDisk().With("book.yaml", BookOnDisk.Keys + "languages: [ en ]\n");
        var (_, english, findings) = book.Read();

        Assert.Empty(english!.Translations);
        Assert.Equal("HB1601", Assert.Single(findings.All).Code.Id);
    }

    [Fact]
    public void What_the_box_does_cannot_be_translated()
    {
        using var book = Bilingual().With("book.fr.yaml", "title: La boîte\ngoal: [ honey ]\n");

        Assert.True(book.Read().Findings.AnyError);
    }

    // At first there were three signs for each of the seven texts.
    [Theory]
    [InlineData("Look up.", 0)]
    [InlineData("Look down.", 1)]
    public void A_digest_of_an_earlier_version_still_counts(string nudge, int told)
    {
        using var book = Bilingual();
        var now = TextDigest.Of(book.Read().Book!.Stages[0]);
        var before = string.Concat(now.Chunk(6).Select(signs => new string(signs[..3])));
        book.With("stages/fr/01-the-lid.md", French.Replace("DIGEST", before, StringComparison.Ordinal))
            .With("stages/01-the-lid.md", BookOnDisk.Stage("gives: [ honey ]").Replace("Look up.", nudge, StringComparison.Ordinal));
        Assert.Equal((21, told), (before.Length, book.Read().Findings.All.Count(finding => finding.Code.Id == "HB1607")));
    }

    [Fact]
    public void A_translation_without_a_digest_is_noted_with_the_one_to_write()
    {
        using var book = Bilingual().With("stages/fr/01-the-lid.md", French.Replace("translates: DIGEST\n", "", StringComparison.Ordinal));
        var finding = Assert.Single(book.Read().Findings.All);
        Assert.Equal("HB1606", finding.Code.Id);
        var help = finding.Help ?? "";
        var line = help[help.IndexOf("translates:", StringComparison.Ordinal)..];
        book.With("stages/fr/01-the-lid.md", French.Replace("translates: DIGEST", line, StringComparison.Ordinal));
        Assert.Empty(book.Read().Findings.All);
    }

    [Theory]
    [InlineData("Look up.", "Look down.", "the nudge")]
    [InlineData("It is shut.", "It is open.", "the sign")]
    [InlineData("Lift the lid.", "Lift the lid, gently.", "the answer")]
    [InlineData("gives: [ honey ]", "gives: [ honey ]\ncautions: [ { kind: glass, note: Mind the pot. } ]", "the words among the keys")]
    public void What_has_changed_in_the_original_is_told_at_the_digest(string old, string now, string text)
    {
        using var book = Bilingual();
        var original = BookOnDisk.Stage("gives: [ honey ]");
        book.With("stages/01-the-lid.md", original.Replace(old, now, StringComparison.Ordinal));
        var finding = Assert.Single(book.Read().Findings.All);

        Assert.Equal(("HB1607", "stages/fr/01-the-lid.md", 4), (finding.Code.Id, finding.At.File.Path, finding.Place().Line));
        Assert.EndsWith($"has changed: {text}.", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("gives: [ honey ]", "gives: [ honey ]\nminutes: 5")]
    [InlineData("Look up.", "Look up.  ")]
    public void What_no_translator_needs_to_know_changes_no_digest(string old, string now)
    {
        using var book = Bilingual();
        book.With("stages/01-the-lid.md", BookOnDisk.Stage("gives: [ honey ]").Replace(old, now, StringComparison.Ordinal).ReplaceLineEndings("\r\n"));
        Assert.Empty(book.Read().Findings.All);
    }

    [Fact]
    public void What_is_no_digest_at_all_is_told()
    {
        using var book = Bilingual().With("stages/fr/01-the-lid.md", French.Replace("DIGEST", "yes", StringComparison.Ordinal));
        Assert.Contains("no digest", Assert.Single(book.Read().Findings.All).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_digest_in_the_original_is_refused()
    {
        using var book = Bilingual().With("stages/01-the-lid.md", BookOnDisk.Stage("gives: [ honey ]\ntranslates: x"));
        Assert.Equal("HB1608", Assert.Single(book.Read().Findings.All).Code.Id);
    }

    [Theory]
    [InlineData("de", "# Anstoß\nx\n\n# Hinweis\ny\n\n# Auflösung\nz\n\n# Zurück auf Anfang\nw\n")]
    [InlineData("de-AT", "# anstoß\nx\n\n# Clue\ny\n\n# Auflösung:\nz\n\n# Reset\nw\n")]
    [InlineData("fr", "# Coup de pouce\nx\n\n# Indice\ny\n\n# Réponse\nz\n\n# Remettre la boîte à l'état initial\nw\n")]
    [InlineData("es", "# Empujoncito\nx\n\n# Pista\ny\n\n# Respuesta\nz\n\n# Dejar la caja como estaba\nw\n")]
    [InlineData("ja", "# ひと押し\nx\n\n# 手がかり\ny\n\n# 答え\nz\n\n# 箱を元に戻す\nw\n")]
    [InlineData("ar", "# إشارة خفيفة\nx\n\n# دليل\ny\n\n# الجواب\nz\n\n# إعادة الصندوق إلى حالته الأولى\nw\n")]
    [InlineData("ar", "# دفعة صغيرة\nx\n\n# دليل\ny\n\n# الجواب\nz\n\n# إعادة الصندوق إلى حالته الأولى\nw\n")]
    public void Headings_are_read_in_the_authors_language(string language, string text)
    {
        using var book = new BookOnDisk().With("book.yaml", BookOnDisk.Keys + $"language: {language}\n")
            .With("stages/01-the-lid.md", $"---\ntitle: x\nsign: y\ngives: [ honey ]\n---\n{text}");
        var (_, read, findings) = book.Read();

        Assert.Empty(findings.All);
        var stage = read!.Stages[0];
        Assert.Equal(("x", "y", "z", "w"), (stage.Nudge.Markdown, stage.Clue.Markdown, stage.Answer.Markdown, stage.Reset?.Markdown));
    }

    [Fact]
    public void A_heading_that_is_nearly_one_is_told_in_the_authors_language()
    {
        using var book = new BookOnDisk().With("book.yaml", BookOnDisk.Keys + "language: de\n")
            .With("stages/01-the-lid.md", "---\ntitle: x\nsign: y\ngives: [ honey ]\n---\n# Anstos\nx\n\n# Hinweis\ny\n\n# Auflösung\nz\n");
        var findings = book.Read().Findings.All;

        var finding = Assert.Single(findings);
        Assert.Equal("HB1306", finding.Code.Id);
        Assert.StartsWith("Write instead: # Anstoß.", finding.Help, StringComparison.Ordinal);
    }

    [Fact]
    public void A_heading_of_another_language_is_none() =>
        Assert.Equal(["HB1306"], new BookOnDisk()
            .With("stages/01-the-lid.md", BookOnDisk.Stage("gives: [ honey ]").Replace("# Nudge", "# Anstoß", StringComparison.Ordinal)).Codes());

    [Fact]
    public void Headings_are_the_words_that_the_pages_have() => Assert.All(TierHeadings.Languages, language =>
    {
        var words = File.ReadAllLines(Path.Combine(Repository.Root, "themes", "shared", $"words.{language}.yaml"));
        Assert.Equal(
            new[] { "nudge", "clue", "answer", "reset" }.Select(key => words.Single(line => line.StartsWith($"{key}: ", StringComparison.Ordinal))),
            TierHeadings.Of(language).InOrder.Zip(["nudge", "clue", "answer", "reset"], (heading, key) => $"{key}: \"{heading}\""));
    });

    private static string DigestOfTheLid()
    {
        using var book = new BookOnDisk();
        return TextDigest.Of(book.Read().Book!.Stages[0]);
    }

    private static BookOnDisk Bilingual() => new BookOnDisk()
        .With("book.yaml", TwoLanguages)
        .With("book.fr.yaml", "title: La boîte à thé\nthings: { honey: { name: pot de miel, also: [ le miel ], place: dans la boîte } }\n")
        .With("stages/fr/01-the-lid.md", French.Replace("DIGEST", Digest, StringComparison.Ordinal));
}
