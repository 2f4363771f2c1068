using HintBook.Checking;
using HintBook.Publishing;
using HintBook.Text;

namespace HintBook.Tests.Publishing;

/// <summary>The example with one stage and the names of its things in French: each text is read in the language in which it stands.</summary>
public class BilingualTests
{
    private const string Names = """
        title: Le cabinet de l'apicultrice
        welcome: Rien ne demande de force. Deux chemins mènent dedans.
        things:
          smoker: { name: l’enfumoir, also: [ enfumoir en laiton ], place: dans le tiroir }
          folded-card: { name: carte pliée }
          iron-key: { name: clé de fer }
          wax-pellet: { name: boulette de cire }
        parts:
          drawer: { name: le tiroir }
        """;

    private const string Stage = """
        ---
        title: Le tiroir
        sign: Le tiroir du socle est fermé, et ses six roues ne montrent aucun mot.
        moves:
          - name: trouver le mot
            gives: [ drawer-word ]
          - name: former le mot
            needs: [ drawer-word ]
            does: { drawer: open }
            gives: [ smoker, folded-card, iron-key ]
        undo:
          put-back: [ smoker, folded-card, iron-key ]
          does: { drawer: shut }
          note: Plie la carte, pose-la dessous, puis ferme le tiroir.
        photos:
          nudge: { file: back-door.jpg, alt: La porte de derrière et six vers. }
          answer: { file: drawer.jpg, alt: Le tiroir., shows: [ drawer-word ] }
        ---
        # Nudge

        NUDGE

        # Clue

        Six vers, six roues : une lettre par ligne. Les poètes qui cachent un mot le mettent souvent là où chaque vers commence.

        # Answer

        Les premières lettres donnent **CLOVER**. Tourne les roues. Tu trouves l’enfumoir, la carte pliée et la clé de fer.
        """;

    [Fact]
    public void The_example_in_two_languages_has_no_fault_and_no_doubt()
    {
        using var book = new Copy("Les six roues attendent un mot. Lis tout ce qu’il y a à lire.");
        Assert.IsType<Published>(Pipeline.Publish(book.Folder, new PublishOptions { Output = book.Output }));
        var sound = Assert.IsType<Sound>(Check.Run(book.Folder));
        var audited = FinishedAudit.Run(PublishedSite.OfBook(book.Output), sound.Examined, sound.Findings).Findings;
        Assert.Empty(sound.Findings.All.Concat(audited)
            .Where(finding => finding.Code.Severity != Severity.Note)
            .Select(finding => $"{finding.Code.Id} {finding.Message}"));
    }

    [Theory]
    [InlineData("Cherche l’enfumoir.", "enfumoir")]
    [InlineData("Il y a des enfumoirs.", "enfumoirs")]
    [InlineData("Il y a une carte pliée là-dedans.", "carte pliée")]
    [InlineData("Il y a un smoker là-dedans.", "smoker")]
    public void What_the_translation_gives_away_is_found(string nudge, string words)
    {
        using var book = new Copy(nudge);
        var finding = Assert.Single(Check.Run(book.Folder).Findings.All, finding => finding.Code.Id == "HB3101");
        Assert.Equal(words, finding.At.Text);
    }

    private sealed class Copy : IDisposable
    {
        private readonly DirectoryInfo root = Directory.CreateTempSubdirectory("hintbook-tests-");

        public Copy(string nudge)
        {
            foreach (var file in Directory.EnumerateFiles(Reading.Where.Example, "*", SearchOption.AllDirectories))
                Write(Path.GetRelativePath(Reading.Where.Example, file), File.ReadAllBytes(file));
            File.AppendAllText(Path.Combine(Folder, "book.yaml"), "\nlanguages: [ fr ]\n");
            Write("book.fr.yaml", System.Text.Encoding.UTF8.GetBytes(Names));
            Write("stages/fr/04-the-verse.md", System.Text.Encoding.UTF8.GetBytes(Stage.Replace("NUDGE", nudge, StringComparison.Ordinal)));
        }

        public string Folder => Path.Combine(root.FullName, "book");

        public string Output => Path.Combine(root.FullName, "out");

        public void Dispose() => root.Delete(recursive: true);

        private void Write(string path, byte[] bytes)
        {
            var file = Path.Combine(Folder, path);
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllBytes(file, bytes);
        }
    }
}
