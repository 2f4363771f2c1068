using HintBook.Publishing.Visits;

namespace HintBook.Tests.Publishing.Visits;

/// <summary>What is asked for on a visit.</summary>
public sealed class VisitPlanTests : IDisposable
{
    private readonly BookAndOutput desk = new();

    public void Dispose() => desk.Dispose();

    [Fact]
    public void Cards_come_first_then_every_other_file_and_all_at_the_address_of_the_book()
    {
        desk.Change("book.yaml", "https://my-workshop.example/my-first-box/", "https://bücher.home.arpa/my-first-box/");
        desk.Published();

        var plan = Of(null);

        Assert.Equal("https://xn--bcher-kva.home.arpa/my-first-box/", plan.Base.AbsoluteUri);
        Assert.Equal(plan.Base, plan.Files[0].Address);
        Assert.Equal([true, true, true, true, false], plan.Files.Take(5).Select(file => file.Card is not null));
        Assert.All(plan.Files, file => Assert.StartsWith(plan.Base.AbsoluteUri, file.Address.AbsoluteUri, StringComparison.Ordinal));
        Assert.Equal("http://xn--bcher-kva.home.arpa/my-first-box/", plan.Unencrypted?.AbsoluteUri);
        Assert.Empty(plan.OldCards);
    }

    [Fact]
    public void The_pages_of_stages_that_are_gone_and_the_places_before_are_asked_for_too()
    {
        desk.Change("book.yaml", "https://my-workshop.example/", "https://boxes.home.arpa/");
        desk.Published();
        File.Move(desk.StageFile, Path.Combine(desk.Book, "stages", "02-four-wheels.md"));
        desk.Change("book.yaml", "https://boxes.home.arpa/", "https://new.home.arpa/");
        desk.Published();

        var plan = Of(null);

        Assert.Single(plan.Files, file => file.Card?.EndsWith("of a stage that is gone", StringComparison.Ordinal) == true);
        Assert.Equal(5, plan.OldCards.Length);
        Assert.All(plan.OldCards, card =>
        {
            Assert.StartsWith("https://boxes.home.arpa/my-first-box/", card.Address.AbsoluteUri, StringComparison.Ordinal);
            Assert.StartsWith("https://new.home.arpa/my-first-box/", card.Now.AbsoluteUri, StringComparison.Ordinal);
            Assert.True(File.Exists(card.LeadsOn));
        });
        Assert.Empty(Of(new Uri("http://localhost:1/")).OldCards);
    }

    [Fact]
    public void What_the_maker_put_among_the_files_is_asked_for_unless_hosts_hide_it()
    {
        desk.Published();
        File.WriteAllText(Path.Combine(desk.Site, "by the host #1.txt"), "x");
        File.WriteAllText(Path.Combine(desk.Site, ".htaccess"), "x");

        var files = Of(new Uri("http://localhost:1/box/")).Files;

        var own = Assert.Single(files, file => file.Path.StartsWith("by", StringComparison.Ordinal));
        Assert.Equal("http://localhost:1/box/by%20the%20host%20%231.txt", own.Address.AbsoluteUri);
        Assert.DoesNotContain(files, file => file.Path == ".htaccess");
    }

    [Theory]
    [InlineData("", "address for examples")]
    [InlineData("address: https://my-workshop.example/my-first-box/", "has no address")]
    public void A_book_that_lives_nowhere_can_not_be_visited(string leftOut, string why)
    {
        if (leftOut.Length > 0)
            desk.Change("book.yaml", leftOut, "");
        desk.Published();
        var (plan, said) = VisitPlan.Of(desk.Book, desk.Output, null);
        Assert.Null(plan);
        Assert.Contains(why, said, StringComparison.Ordinal);
    }

    private VisitPlan Of(Uri? local)
    {
        var (plan, why) = VisitPlan.Of(desk.Book, desk.Output, local);
        Assert.Equal("", why);
        Assert.NotNull(plan);
        return plan;
    }
}
