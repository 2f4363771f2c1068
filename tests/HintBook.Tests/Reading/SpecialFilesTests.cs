using HintBook.Checking;
using HintBook.Reading;
using HintBook.Reading.Folder;
using HintBook.Tests.House;
using HintBook.Tests.Publishing;

namespace HintBook.Tests.Reading;

/// <summary>A pipe or a device in the place of a file is told at once. Opening a pipe would wait for a writer that never comes.</summary>
public sealed class SpecialFilesTests : IDisposable
{
    private readonly BookOnDisk book = new();

    public void Dispose() => book.Dispose();

    [Theory]
    [InlineData("book.yaml")]
    [InlineData("stages/01-the-lid.md")]
    [InlineData("stages/02-two.yaml")]
    public void A_pipe_in_the_place_of_a_text(string path)
    {
        book.Without(path);
        Pipes.Make(Path.Combine(book.Path, path));

        var finding = book.Read().Findings.All.First(finding => finding.IsError);

        Assert.Equal(("HB1004", path), (finding.Code.Id, finding.At.File.Path));
        Assert.Contains("pipe", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("photos: { clue: card.jpg }", "photos/card.jpg")]
    [InlineData("clip: { file: card.mp4, from: 0:01, to: 0:02 }", "clips/card.mp4")]
    public void A_pipe_in_the_place_of_a_photo_or_a_film(string key, string path)
    {
        book.With("stages/01-the-lid.md", BookOnDisk.Stage($"gives: [ honey ]\n{key}")).With(path + ".other", "");
        Pipes.Make(Path.Combine(book.Path, path));

        Assert.Equal(["HB1004"], book.Codes());
    }

    [Fact]
    public void A_link_within_the_book_to_a_pipe()
    {
        Pipes.Make(Path.Combine(book.Path, "pipe"));

        Assert.Equal("HB1004", book.WithLink("stages/02-two.md", "../pipe").Only().Code.Id);
    }

    [Theory]
    [InlineData("book")]
    [InlineData("out")]
    public void A_pipe_in_the_place_of_the_list_of_addresses(string place)
    {
        using var desk = new BookAndOutput();
        Directory.CreateDirectory(desk.Output);
        Pipes.Make(Path.Combine(desk.Root, place, AddressList.FileName));

        var findings = Check.Run(desk.Book, new() { LastPublished = desk.Output }).Findings;

        Assert.Contains(findings.All, finding => finding.Code.Id == "HB1004");
    }

    // Linux: Documentation/admin-guide/devices.txt has /dev/null and /dev/zero on every system.
    [Theory]
    [InlineData("/dev/null", true)]
    [InlineData("/dev/zero", true)]
    [InlineData("/", false)]
    [InlineData("/no/such/file", false)]
    public void Devices_are_told_from_folders_and_from_nothing(string path, bool isSpecial)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "There are no such paths.");
        Assert.Equal(isSpecial, SpecialFile.Is(path));
        Assert.False(SpecialFile.Is(Path.Combine(book.Path, "book.yaml")));
    }
}
