using System.Text.Json;
using HintBook.Cli;
using HintBook.Tests.Publishing;
using HintBook.Tests.Publishing.Visits;

namespace HintBook.Tests.Cli;

public sealed class VisitVerbTests : IDisposable
{
    private readonly BookAndOutput desk = new();

    public void Dispose() => desk.Dispose();

    [Fact]
    public void A_site_that_is_as_it_was_published_ends_well()
    {
        desk.Published();
        using var host = new LoopbackHost(desk.Site);

        var said = Said.By("visit", desk.Book, "--out", desk.Output, "--base", host.Address.AbsoluteUri);

        Assert.True(said.Exit == ExitCode.Fine, said.ToString());
        Assert.EndsWith("everything is there as it was published.\n", said.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_site_that_was_not_uploaded_again_is_told_as_text_and_as_json()
    {
        desk.Published();
        var uploaded = Path.Combine(desk.Root, "uploaded");
        Directory.Move(desk.Site, uploaded);
        desk.Change("stages/02-the-number.md", "# Nudge", "# Nudge\n\nOne more sentence.");
        desk.Published();
        using var host = new LoopbackHost(uploaded);

        var said = Said.By("visit", desk.Book, "--out", desk.Output, "--base", host.Address.AbsoluteUri.TrimEnd('/'));
        var json = Said.By("visit", desk.Book, "--out", desk.Output, "--base", host.Address.AbsoluteUri, "--format", "json");

        Assert.Equal((ExitCode.BookHasErrors, ExitCode.BookHasErrors), (said.Exit, json.Exit));
        Assert.Contains("of “The picture on the lid” fails", said.Out, StringComparison.Ordinal);
        using var read = JsonDocument.Parse(json.Out);
        Assert.Contains(read.RootElement.GetProperty("faults").EnumerateArray(), fault =>
            fault.GetProperty("message").GetString() == "What is there isn't what was published.");
    }

    [Fact]
    public void Where_nobody_answers_the_machine_failed()
    {
        desk.Published();
        var said = Said.By("visit", desk.Book, "--out", desk.Output, "--base", LoopbackHost.Nobody().AbsoluteUri);
        Assert.Equal(ExitCode.MachineFailed, said.Exit);
        Assert.Contains("nothing answers there", said.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("visit", "BOOK", "--out", "OUT")]
    [InlineData("visit", "BOOK", "--out", "NOWHERE", "--base", "http://localhost:1/")]
    [InlineData("visit", "NOWHERE", "--base", "http://localhost:1/")]
    [InlineData("visit", "BOOK", "--out", "OUT", "--base", "localhost")]
    [InlineData("visit", "BOOK", "--out", "OUT", "--base", "file:///etc")]
    [InlineData("visit", "BOOK", "--out", "OUT", "--base", "http://localhost:1/", "--time", "NaN")]
    [InlineData("visit", "BOOK", "--out", "OUT", "--base", "http://localhost:1/", "--time", "1e15")]
    [InlineData("visit", "BOOK", "--out", "OUT", "--base", "http://localhost:1/", "--format", "xml")]
    public void What_can_not_be_visited_is_wrong_usage(params string[] words)
    {
        Directory.CreateDirectory(desk.Site);
        var said = Said.By([.. words.Select(word => word switch
        {
            "BOOK" => desk.Book,
            "OUT" => desk.Output,
            "NOWHERE" => Path.Combine(desk.Root, "nowhere"),
            _ => word,
        })]);
        Assert.Equal(ExitCode.WrongUsage, said.Exit);
        Assert.NotEmpty(said.Error);
    }
}
