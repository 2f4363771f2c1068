using HintBook.Tests.House;

namespace HintBook.Tests.Cards;

/// <summary>The finished PDF, drawn by poppler and read by zbar: Debian's programs, neither of which the tool uses.</summary>
public class PrintedPageTests
{
    [Fact]
    public void Every_code_of_a_rendered_page_is_read_by_zbar()
    {
        DebianProgram.Have("pdftoppm", "poppler-utils");
        DebianProgram.Have("zbarimg", "zbar-tools");
        var book = CardBooks.Of("Drawers", CardBooks.Stages(7));
        var addresses = CardBooks.AddressesOf(book);
        var folder = Directory.CreateTempSubdirectory("hintbook-cards-");
        try
        {
            var (cards, page) = (Path.Combine(folder.FullName, "cards.pdf"), Path.Combine(folder.FullName, "page"));
            File.WriteAllBytes(cards, CardBooks.Pdf(CardBooks.Print(book).Set));
            DebianProgram.Run("/", "pdftoppm", "-r", "300", "-f", "2", "-l", "2", "-gray", "-singlefile", cards, page);
            var read = DebianProgram.Run("/", "zbarimg", "--nodbus", "--quiet", "--raw", $"{page}.pgm");
            Assert.Equal(
                book.Stages.Select(stage => addresses.PrintedFor(stage.Id.Value)!).Append(CardBooks.Address).Order(StringComparer.Ordinal),
                read.Split('\n', StringSplitOptions.RemoveEmptyEntries).Order(StringComparer.Ordinal));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
