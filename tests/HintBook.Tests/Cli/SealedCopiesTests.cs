using HintBook.Audit;
using HintBook.Cli;
using HintBook.Sealing;
using HintBook.Tests.Publishing;
using UglyToad.PdfPig;

namespace HintBook.Tests.Cli;

/// <summary>What <c>copies</c> does with the key of a sealed book.</summary>
public sealed class SealedCopiesTests : IDisposable
{
    private readonly BookAndOutput desk = new();

    public SealedCopiesTests()
    {
        File.AppendAllText(Path.Combine(desk.Book, "book.yaml"), "\nid: paper-key\nsealed: true\n");
        File.WriteAllText(Path.Combine(desk.Book, "copies.yaml"), "copies:\n  \"001\": { sold: true }\n");
    }

    public void Dispose() => desk.Dispose();

    [Fact]
    public void The_key_comes_back_from_the_letters_and_from_the_code_on_its_sheet()
    {
        Said.By("copies", desk.Book, "--seal");
        var key = File.ReadAllText(KeyPath);

        var backup = Said.By("copies", desk.Book, "--backup", Sheet);

        Assert.Equal((ExitCode.Fine, ""), (backup.Exit, backup.Error));
        using var document = PdfDocument.Open(Sheet);
        var page = Assert.Single(document.GetPages());
        var letters = string.Concat(page.Letters.Select(letter => letter.Value).Where(letter => !string.IsNullOrWhiteSpace(letter)));
        var scanned = Assert.Single(page.Paths.Where(DrawnCode.MayBe).Select(DrawnCode.Read));
        Assert.Contains(scanned!, letters, StringComparison.Ordinal);
        File.Delete(KeyPath);
        Assert.Equal(ExitCode.Fine, Said.By("copies", desk.Book, "--restore", scanned!).Exit);
        Assert.Equal(key, File.ReadAllText(KeyPath));
    }

    [Fact]
    public void The_sheet_says_nothing_on_the_terminal_and_nobody_else_may_read_it()
    {
        Said.By("copies", desk.Book, "--seal");
        var letters = KeyFile.Read(File.ReadAllText(KeyPath))!.Secret.ToGroups();

        var backup = Said.By("copies", desk.Book, "--backup", Sheet);

        Assert.DoesNotContain(letters.Split(' '), group => (backup.Out + backup.Error).Contains(group, StringComparison.OrdinalIgnoreCase));
        if (!OperatingSystem.IsWindows())
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(Sheet));
    }

    [Fact]
    public void Without_a_key_there_is_no_sheet_and_none_is_written_over()
    {
        Assert.Contains("no key yet", Said.By("copies", desk.Book, "--backup", Sheet).Error, StringComparison.Ordinal);
        Assert.False(File.Exists(Sheet));
        Said.By("copies", desk.Book, "--seal");
        Said.By("copies", desk.Book, "--backup", Sheet);
        var first = File.ReadAllBytes(Sheet);

        Assert.Contains("nothing is written over", Said.By("copies", desk.Book, "--backup", Sheet).Error, StringComparison.Ordinal);
        Assert.Contains("ends in .pdf", Said.By("copies", desk.Book, "--backup", Path.ChangeExtension(Sheet, ".txt")).Error, StringComparison.Ordinal);
        Assert.Equal(first, File.ReadAllBytes(Sheet));
    }

    [Fact]
    public void The_list_names_the_number_that_a_letter_of_an_owner_names()
    {
        Said.By("copies", desk.Book, "--seal");
        var line = File.ReadAllLines(Path.Combine(desk.Book, KeptCopies.FileName)).Single(line => line.EndsWith(" 001", StringComparison.Ordinal));

        Assert.Contains($"card number {line.Split(' ')[1]}", Said.By("copies", desk.Book).Out, StringComparison.Ordinal);
    }

    private string KeyPath => Path.Combine(desk.Book, KeyFile.FileName);

    private string Sheet => Path.Combine(desk.Root, "key.pdf");
}
