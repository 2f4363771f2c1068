using System.Security.Cryptography;
using HintBook.Books;
using HintBook.Print.Papers;
using HintBook.Publishing;
using HintBook.Reading;
using HintBook.Sealing;
using HintBook.Starting.Edition;
using HintBook.Text;

namespace HintBook.Cli.Verbs;

/// <summary>
/// What <c>copies</c> does with the key of a sealed book and with the numbers on its cards. Of a book that isn't sealed there is nothing to do.
/// </summary>
internal sealed class SealedCopies(Book book, string path, Terminal terminal)
{
    private const string UntilPublished = "Publish, and upload the whole site with the old files deleted.";

    private readonly SealedEdition? edition = book.Sealed is not null && book.Id is { } id ? new(path, id.Value) : null;

    /// <summary>Why the numbers of a sealed book can't be changed; null where they can, or where there are none.</summary>
    public string? WhyNot() => book.Sealed is null ? null
        : edition is null ? "The book is sealed and has no “id”. Write “id:” with a name that you will never change."
        : edition.Read().Why;

    /// <summary>The code on a copy's card for the whole box; null for a copy that has none.</summary>
    public string? CodeOf(Copy copy) =>
        edition?.Codes is { } codes && edition.Read().Kept?[copy.Serial.Value] is { Retired: false } kept ? $"card {codes.OfBox(kept).ToGroups()}" : null;

    /// <summary>The number on a copy's cards, which a letter of its owner names; null for a copy that has none.</summary>
    public string? NumberOf(Copy copy) => edition?.Read().Kept?[copy.Serial.Value] is { } kept ? $"card number {kept.Number}" : null;

    /// <summary>Gives new copies a number, and the book its key if it has none.</summary>
    public void Number(IEnumerable<string> serials) => edition?.Complete(Serials.Concat(serials), BookSecret.Draw, RandomNumberGenerator.GetInt32);

    /// <summary>Takes a copy's number out of use.</summary>
    public void Retire(string serial)
    {
        if (edition?.Read().Kept is { } kept)
            edition.Keep(kept.Retire(serial));
    }

    /// <summary>Makes what is missing.</summary>
    public int Seal()
    {
        if (edition is null)
            return Refuse(WhyNot() ?? "The book isn't sealed. Write “sealed: true” in book.yaml first.");
        var had = edition.Read().Kept;
        var (kept, why) = edition.Complete(Serials, BookSecret.Draw, RandomNumberGenerator.GetInt32);
        if (kept is null)
            return Refuse(why ?? "");
        var fresh = kept.Copies.Length - (had?.Copies.Length ?? 0);
        terminal.Out.WriteLine($"{Words.Count(kept.Copies.Length, "copy", "copies")} with a number, {fresh} of them new.");
        if (had is null)
            terminal.Say($"{KeyFile.FileName} is the key of this book: keep it to yourself, and a copy of it elsewhere. Without it no copy can be added.");
        return ExitCode.Fine;
    }

    /// <summary>Another card for a copy.</summary>
    public int Reissue(string serial)
    {
        if (Copies.WithSerial(book, serial) is null)
            return Refuse(Copies.Unknown(book, serial));
        return Change(kept => kept[serial] switch
        {
            null => (null, $"Copy {serial} has no number yet: run “hintbook copies BOOK --seal” first."),
            { Retired: true } => (null, $"Copy {serial} is out of use."),
            _ => (kept.Reissue(serial), $"Copy {serial} gets another card; the one before opens nothing that is published from now on. {UntilPublished}"),
        });
    }

    /// <summary>A new epoch.</summary>
    public int Rotate() =>
        Change(kept => (kept.Rotate(), $"What was saved of the help opens nothing that is published from now on; all cards work on. {UntilPublished}"));

    /// <summary>The key on paper.</summary>
    public int Backup(string file)
    {
        if (edition is null)
            return Refuse(WhyNot() ?? "The book isn't sealed, so it has no key.");
        if (edition.Read().Why is { } why)
            return Refuse(why);
        if (edition.KeyLetters is not { } letters)
            return Refuse("The book has no key yet: run “hintbook copies BOOK --seal” first.");
        if (!file.EndsWith(".pdf", StringComparison.OrdinalIgnoreCase))
            return Refuse("The sheet is a PDF: give it a name that ends in .pdf.");
        if (SingleFile.IsThere(file))
            return Refuse($"{TerminalText.Shown(file)} is there. Put it elsewhere first: nothing is written over it.");
        SingleFile.WritePrivate(file, KeySheet.Write(book.Title.Value, edition.Id, letters));
        terminal.Out.WriteLine($"{TerminalText.Shown(file)} is written: print it, lay it where only you can find it, and delete the file.");
        return ExitCode.Fine;
    }

    /// <summary>The key from paper.</summary>
    public int Restore(string letters)
    {
        if (edition is null)
            return Refuse(WhyNot() ?? "The book isn't sealed. Write “sealed: true” in book.yaml first.");
        if (BookSecret.Read(letters) is not { } secret)
            return Refuse("These letters are no key: one is missing or wrong. Compare them group by group; there are 14 groups of four.");
        if (edition.Restore(secret) is { } why)
            return Refuse(why);
        terminal.Out.WriteLine($"{KeyFile.FileName} is written.");
        return ExitCode.Fine;
    }

    private IEnumerable<string> Serials => book.Copies.Where(copy => !copy.Retired).Select(copy => copy.Serial.Value);

    private int Change(Func<KeptCopies, (KeptCopies? Kept, string Says)> change)
    {
        if (edition is null)
            return Refuse(WhyNot() ?? "The book isn't sealed, so its cards hold no keys.");
        var (had, why) = edition.Read();
        if (had is null)
            return Refuse(why ?? "The book has no key yet: run “hintbook copies BOOK --seal” first.");
        var (kept, says) = change(had);
        if (kept is null)
            return Refuse(says);
        edition.Keep(kept);
        terminal.Out.WriteLine(says);
        return ExitCode.Fine;
    }

    private int Refuse(string why) => CopiesVerb.Refuse(why, terminal);
}
