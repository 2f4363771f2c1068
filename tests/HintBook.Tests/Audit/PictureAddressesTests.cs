using HintBook.Audit;

namespace HintBook.Tests.Audit;

/// <summary>What files of pictures, films and sounds are called. More of them stand in <c>Elsewhere/ours/fragments-3</c>.</summary>
public class PictureAddressesTests
{
    private static readonly AuditTable Secrets = Table.Of(
        Table.Name("bronze rowlock"), new AuditSecret("lantern", [new("lantern", SpelledAs.Thing, Sure: false)]));

    [Theory]
    [InlineData("pictures/02-slid-rowlock.avif", "bronze rowlock")]
    [InlineData("s5-lantern-door-open.webp", "lantern")]
    [InlineData("films/openLantern.mp4", "lantern")]
    [InlineData("sounds/rowlock_creaks.mp3", "bronze rowlock")]
    public void The_name_of_a_file_of_a_picture_tells_what_it_shows_as_a_doubt(string path, string told)
    {
        using var site = Site.Good().Write("b.html", Site.Page("")).Write(path, "-");
        var fault = Assert.Single(site.Audit(Secrets).Faults, fault => fault.Secret is not null);
        Assert.Equal((path, told, false), (fault.File, fault.Secret, fault.IsSure));
    }

    [Theory]
    [InlineData("pictures/3f9a21c07b-400w.jpg")]
    [InlineData("pictures/rowlockless-7.jpg")]
    [InlineData("icons/icon-lamp.svg")]
    [InlineData("lantern-festival.jpg")]
    [InlineData("look/open-lantern-glow.css")]
    public void The_name_of_a_file_that_shows_something_else_tells_nothing(string path)
    {
        using var site = Site.Good().Write("b.html", Site.Page("")).Write(path, path.EndsWith(".svg", StringComparison.Ordinal)
            ? "<svg xmlns='http://www.w3.org/2000/svg'/>"
            : "");
        Assert.DoesNotContain(site.Audit(Secrets).Faults, fault => fault.Secret is not null);
    }

    [Fact]
    public void A_picture_may_be_called_after_what_anyone_knows()
    {
        using var site = Site.Good().Write("b.html", Site.Page("")).Write("rowlock.webp", "-");
        Assert.DoesNotContain(site.Audit(Secrets with { Outside = Table.Set(2, 0) }).Faults, fault => fault.Secret is not null);
    }
}
