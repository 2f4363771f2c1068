using HintBook.Cli;
using HintBook.Tests.Publishing;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;

namespace HintBook.Tests.Cli;

/// <summary>The description for a shop or a fair: what shows on the closed box, and no more.</summary>
public sealed class ListingVerbTests
{
    private const StringComparison Sensitive = StringComparison.Ordinal;

    [Fact]
    public void The_example_is_described_in_three_forms_with_photos_of_two_shapes()
    {
        using var example = new WholeExample();

        var said = Said.By("listing", example.Folder, "--out", example.Output);

        Assert.Equal(ExitCode.Fine, said.Exit);
        string[] files = ["listing.html", "listing.md", "listing.txt", "photo-4x3.jpg", "photo-square.jpg"];
        Assert.Equal(files, Directory.GetFiles(example.Output).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        var text = File.ReadAllText(Path.Combine(example.Output, "listing.txt"));
        string[] parts =
        [
            "The Beekeeper's Cabinet", "Size: 220 x 150 x 310 mm", "Weight: 6 kg", "– the roof", "Languages of the help: English",
            "Not for children under 8.", "pacemaker",
        ];
        Assert.All(parts, part => Assert.Contains(part, text, Sensitive));
        // Neither what is inside nor a code.
        Assert.All(["smoker", "queen clip", "32514", "five wheels"], secret => Assert.DoesNotContain(secret, text, StringComparison.OrdinalIgnoreCase));
        var page = File.ReadAllText(Path.Combine(example.Output, "listing.html"));
        Assert.DoesNotContain("<script", page, Sensitive);
        Assert.DoesNotContain("src=\"http", page, Sensitive);
        Assert.Contains("src=\"data:image/jpeg;base64,", page, Sensitive);
        Assert.Equal(1, Shape("photo-square.jpg"), 0.01);
        Assert.Equal(4.0 / 3, Shape("photo-4x3.jpg"), 0.01);

        double Shape(string file)
        {
            using var photo = Image.Load<Rgb24>(Path.Combine(example.Output, file));
            Assert.Null(photo.Metadata.ExifProfile);
            return (double)photo.Width / photo.Height;
        }
    }

    [Fact]
    public void The_same_book_gives_the_same_bytes()
    {
        using var desk = new BookAndOutput();
        Said.By("listing", desk.Book, "--out", desk.Output);
        var first = BookAndOutput.Tree(desk.Output);

        Said.By("listing", desk.Book, "--out", desk.Output);

        Assert.Equal(first, BookAndOutput.Tree(desk.Output));
    }

    [Fact]
    public void A_text_that_the_maker_changed_is_written_over_only_where_that_is_asked_for()
    {
        using var desk = new BookAndOutput();
        Said.By("listing", desk.Book, "--out", desk.Output);
        var text = Path.Combine(desk.Output, "listing.md");
        var made = File.ReadAllText(text);
        File.AppendAllText(text, "Mine.\n");

        var refused = Said.By("listing", desk.Book, "--out", desk.Output);

        Assert.Equal(ExitCode.WrongUsage, refused.Exit);
        Assert.Contains("Add --replace", refused.Error, Sensitive);
        Assert.EndsWith("Mine.\n", File.ReadAllText(text), Sensitive);
        Assert.Equal(ExitCode.Fine, Said.By("listing", desk.Book, "--out", desk.Output, "--replace").Exit);
        Assert.Equal(made, File.ReadAllText(text));
    }

    [Fact]
    public void Time_and_difficulty_come_from_sittings_alone()
    {
        using var desk = new BookAndOutput();
        Assert.DoesNotContain("Time and difficulty", Listing(desk), Sensitive);
        Directory.CreateDirectory(Path.Combine(desk.Book, "sittings"));
        var rows = Enumerable.Range(1, 4).Select(who => $"P{who},the-number,{10 + who},{(who == 1 ? "none" : "answer")}\n");
        File.WriteAllText(Path.Combine(desk.Book, "sittings", "evening.csv"), $"who,stage,minutes,help\n{string.Concat(rows)}");

        var text = Listing(desk);

        Assert.Contains("Reckoned from 4 people who tried it: half of all solvers need no longer than ", text, Sensitive);
        Assert.Contains("At 1 of 4 steps that were noted, they took no help.", text, Sensitive);
    }

    [Fact]
    public void The_words_below_a_film_begin_with_the_warning_and_name_the_chapters()
    {
        using var desk = new BookAndOutput();
        File.AppendAllText(Path.Combine(desk.Book, "book.yaml"), "\nfilm: { address: \"https://films.example/x?t={seconds}\" }\n");
        desk.Change("stages/02-the-number.md", "sign:", "clip: { from: 2:16, to: 3:03 }\nsign:");

        Assert.Equal(ExitCode.Fine, Said.By("listing", desk.Book, "--out", desk.Output).Exit);

        var lines = File.ReadAllLines(Path.Combine(desk.Output, "film.txt"));
        Assert.StartsWith("Spoiler warning: ", lines[0], Sensitive);
        Assert.StartsWith("2:16 ", lines[^1], Sensitive);
    }

    [Fact]
    public void A_language_that_the_book_has_not_is_told()
    {
        using var desk = new BookAndOutput();

        var said = Said.By("listing", desk.Book, "--language", "fr");

        Assert.Equal((ExitCode.WrongUsage, ""), (said.Exit, said.Out));
        Assert.Contains("isn't written in “fr”", said.Error, Sensitive);
    }

    private static string Listing(BookAndOutput desk)
    {
        Assert.Equal(ExitCode.Fine, Said.By("listing", desk.Book, "--out", desk.Output, "--replace").Exit);
        return File.ReadAllText(Path.Combine(desk.Output, "listing.txt"));
    }
}
