using HintBook.Audit;

namespace HintBook.Tests.Audit;

public class SiteReadingTests
{
    private static readonly string[] All =
        ["index.html", "a7k2.html", "b.html", "look/site.css", "look/site.js", "look/grain.svg", "pictures/3f-400w.jpg", "pictures/3f-800w.jpg"];

    private static Site Faulty() => Site.Good().Write("b.html", Site.Page("""<p><a href="gone.html">x</a> the honey jar</p>"""));

    private static AuditTable Forbidding => Table.Of(new AuditSecret("jar", [new("honey jar")])) with { Pages = [], Free = [] };

    [Fact]
    public void What_was_read_while_the_site_grew_gives_the_same_report()
    {
        using var site = Faulty();
        var reading = new SiteReading(site.Folder, Forbidding);
        Parallel.ForEach(All, reading.Read);
        Same(site, reading);
    }

    [Fact]
    public void What_nobody_announced_is_read_at_the_end()
    {
        using var site = Faulty();
        var reading = new SiteReading(site.Folder, Forbidding);
        reading.Read("index.html");
        Same(site, reading);
    }

    [Fact]
    public void A_file_that_was_written_again_is_read_again()
    {
        using var site = Site.Good().Write("b.html", Site.Page("<p>x</p>"));
        var reading = new SiteReading(site.Folder, Forbidding);
        foreach (var path in All)
            reading.Read(path);
        site.Write("b.html", Site.Page("""<p><a href="gone.html">x</a> the honey jar</p>"""));
        Same(site, reading);
        Assert.NotEmpty(reading.End().Faults);
    }

    [Fact]
    public void A_file_that_was_taken_back_is_no_part_of_the_site()
    {
        using var site = Faulty();
        var reading = new SiteReading(site.Folder, Forbidding);
        foreach (var path in All)
            reading.Read(path);
        File.Delete(Path.Combine(site.Folder, "b.html"));
        Same(site, reading);
        Assert.Empty(reading.End().Faults);
    }

    private static void Same(Site site, SiteReading reading)
    {
        var (now, at) = (site.Audit(Forbidding), reading.End());
        Assert.Equal(now.Faults.AsEnumerable(), at.Faults);
        Assert.Equal((now.Files, now.Pages, now.Links, now.Outgoing), (at.Files, at.Pages, at.Links, at.Outgoing));
    }
}
