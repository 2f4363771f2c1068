using System.Collections.Immutable;
using System.Text;
using HintBook.Books;
using HintBook.Checking;
using HintBook.Mechanism;
using HintBook.Publishing;
using HintBook.Reading;
using HintBook.Starting;
using HintBook.Workbench.Writing;

namespace HintBook.Workbench.Rehearsing;

/// <summary>The rehearsals that a maker keeps as files: written, and played again.</summary>
internal static class RehearsalFiles
{
    /// <summary>Writes the steps so far into a new file. No file is ever written over.</summary>
    /// <param name="book">The book.</param>
    /// <param name="title">What the maker calls it.</param>
    /// <param name="keys">The steps, as <see cref="Rehearsal.KeyOf"/> names them.</param>
    public static Saved Keep(Examined book, string title, IEnumerable<string> keys)
    {
        if (StepsOf(book.Book, keys) is not { Length: > 0 } steps)
            return new Saved.Refused("These steps aren't possible in the book as it is now. Nothing was kept.");
        var folder = Path.Combine(book.Folder.Root, Rehearsals.Folder);
        var called = title.Trim() is { Length: > 0 } given ? given.ReplaceLineEndings(" ") : "A rehearsal";
        var name = RehearsalText.NameFor(called, taken => SingleFile.IsThere(Path.Combine(folder, taken)));
        try
        {
            if (new DirectoryInfo(folder).LinkTarget is not null)
                return new Saved.Refused($"“{Rehearsals.Folder}” is a link to another folder, and nothing is written outside of the book.");
            var text = RehearsalText.Write(book.Book, called, steps);
            SingleFile.Write(Path.Combine(folder, name), text);
            return new Saved.Done(BookFiles.DigestOf(Encoding.UTF8.GetBytes(text)));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return new Saved.Refused($"“{Rehearsals.Folder}/{name}” can't be written: {failure.Message} The steps are still on this page.");
        }
    }

    /// <summary>
    /// The steps of a kept rehearsal, as <see cref="Rehearsal.KeyOf"/> names them, as far as they are possible; null if there is none of that name.
    /// </summary>
    /// <param name="book">The book.</param>
    /// <param name="name">Its file, relative to the book.</param>
    public static ImmutableArray<string>? KeysOf(Book book, string name)
    {
        if (book.Rehearsals.FirstOrDefault(each => each.File.Path == name) is not { } kept)
            return null;
        var keys = ImmutableArray.CreateBuilder<string>();
        var box = Rehearsal.Begin(book).Box;
        foreach (var written in kept.Steps)
        {
            if (box is null || Next(book, box, written) is not var (made, after))
                break;
            keys.AddRange(made);
            box = after;
        }

        return keys.ToImmutable();
    }

    // A dial goes to where it shall be over all that lies between.
    private static (ImmutableArray<string> Keys, Rehearsal After)? Next(Book book, Rehearsal box, PlayedStep written)
    {
        var ways = RehearsalCheck.Meant(book, written).Select(Rehearsal.KeyOf).Select(key => (ImmutableArray<string>?)[key]);
        if (written is PlayedStep.Moved moved)
            ways = ways.Append(box.Turning(moved.Part.Value, moved.To.Value));
        foreach (var way in ways.OfType<ImmutableArray<string>>())
        {
            if (way.Aggregate<string, Rehearsal?>(box, (at, key) => at?.After(key)) is { } after)
                return (way, after);
        }

        return null;
    }

    private static ImmutableArray<Step>? StepsOf(Book book, IEnumerable<string> keys)
    {
        var steps = ImmutableArray.CreateBuilder<Step>();
        var box = Rehearsal.Begin(book).Box;
        foreach (var key in keys)
        {
            box = box?.After(key);
            if (box?.Last is not { } step)
                return null;
            steps.Add(step);
        }

        return steps.ToImmutable();
    }
}
