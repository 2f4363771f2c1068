using HintBook.Starting;

namespace HintBook.Workbench.Writing;

/// <summary>What a maker says of a new book, as the page sends it.</summary>
/// <param name="Title">What the box is called.</param>
/// <param name="Maker">Who makes it.</param>
/// <param name="Language">The language tag.</param>
/// <param name="Sample">Whether it begins with the small box that teaches.</param>
internal sealed record BookWish(string Title, string Maker, string Language, bool Sample);

/// <summary>Begins a book in a folder that is empty or isn't there.</summary>
internal static class BookBeginning
{
    /// <summary>Whether nothing stands in a folder, or there is no such folder. What is hidden doesn't count.</summary>
    public static bool IsPossible(string root)
    {
        try
        {
            return !File.Exists(root)
                && (!Directory.Exists(root) || Directory.EnumerateFileSystemEntries(root).All(path => Path.GetFileName(path).StartsWith('.')));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    /// <summary>Begins it.</summary>
    /// <returns>Null if the book is there; otherwise why not.</returns>
    public static string? Begin(string root, BookWish wish)
    {
        if (string.IsNullOrWhiteSpace(wish.Title) || string.IsNullOrWhiteSpace(wish.Maker) || string.IsNullOrWhiteSpace(wish.Language))
            return "A book needs a title, a maker and a language.";
        if (!IsPossible(root))
            return $"“{root}” isn't empty any more, so nothing was written there.";
        try
        {
            NewBook.In(root, NewBook.Of(new(wish.Title.Trim(), wish.Maker.Trim(), wish.Language.Trim()), wish.Sample));
            return null;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return $"The book can't be written: {failure.Message}";
        }
    }
}
