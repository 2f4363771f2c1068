using HintBook.Reading.Folder;

namespace HintBook.Tests.Reading;

/// <summary>No link below the book's root leads out of it, whichever way it is put together.</summary>
public sealed class LinksTests : IDisposable
{
    private readonly BookOnDisk book = new();
    private readonly BookOnDisk other = new();

    public LinksTests() => other.With("inside/card.jpg", "").With("secret.md", BookOnDisk.Stage(title: "A secret"));

    public void Dispose()
    {
        book.Dispose();
        other.Dispose();
    }

    // “..” behind a link to a folder is the folder above the one that it leads to (POSIX.1-2017, 4.13, pathname resolution).
    [Fact]
    public void A_stage_behind_a_link_to_a_folder_and_a_step_up()
    {
        Directory.CreateDirectory(Path.Combine(book.Path, "drafts", "inside"));
        book.WithLink("stages/far", Path.Combine(other.Path, "inside")).WithLink("stages/02-two.md", "far/../secret.md");

        Assert.Contains("HB1009", book.Codes());
        Assert.DoesNotContain(book.Read().Book!.Stages, stage => stage.Title.Value == "A secret");
    }

    [Fact]
    public void A_photo_behind_a_link_to_a_folder_and_a_step_up()
    {
        other.With("secret.jpg", "");
        book.WithLink("photos/far", Path.Combine(other.Path, "inside"))
            .WithLink("photos/card.jpg", "far/../secret.jpg")
            .With("stages/01-the-lid.md", BookOnDisk.Stage("gives: [ honey ]\nphotos: { clue: card.jpg }"));

        Assert.Equal(["HB1009"], book.Codes());
    }

    [Fact]
    public void A_photo_in_a_folder_that_a_link_reaches_by_another()
    {
        book.WithLink("photos/far", "near")
            .WithLink("photos/near", "../next")
            .WithLink("next", Path.Combine(other.Path, "inside"))
            .With("stages/01-the-lid.md", BookOnDisk.Stage("gives: [ honey ]\nphotos: { clue: far/card.jpg }"));

        Assert.Equal(["HB1009"], book.Codes());
    }

    [Fact]
    public void Links_within_the_book_are_followed_through_steps_up()
    {
        book.With("drafts/deep/x", "").With("drafts/card.jpg", "")
            .WithLink("photos/far", "../drafts/deep")
            .WithLink("photos/card.jpg", "far/../card.jpg")
            .With("stages/01-the-lid.md", BookOnDisk.Stage("gives: [ honey ]\nphotos: { clue: card.jpg }"));

        // The file behind the first link is a photo that no stage uses, which is told.
        Assert.Equal(["HB1010"], book.Codes());
    }

    [Fact]
    public void Links_in_a_circle_lead_nowhere()
    {
        book.WithLink("one", "two").WithLink("two", "one");

        Assert.Null(RealPath.Of(Path.Combine(book.Path, "one")));
    }
}
