using HintBook.Pages;
using HintBook.Publishing;
using HintBook.Reading.Folder;

namespace HintBook.Starting;

/// <summary>A theme of the tool, laid into a book for its maker to change.</summary>
public static class OwnTheme
{
    /// <summary>Where a theme of a book lies.</summary>
    public static string FolderOf(string book, string theme) => Path.Combine(book, "themes", theme);

    /// <summary>Whether that place lies in the book; a link may lead out of it.</summary>
    public static bool LiesInBook(string book, string theme) =>
        RealPath.Of(FolderOf(book, theme)) is { } real && RealPath.Of(book) is { } home && RealPath.IsWithin(real, home);

    /// <summary>Writes all files of a theme into a book. What is there already is overwritten: ask first.</summary>
    /// <param name="book">The book's folder.</param>
    /// <param name="theme">One of <see cref="Theme.BuiltInNames"/>.</param>
    public static void In(string book, string theme)
    {
        foreach (var (name, text) in Theme.TextsOf(theme))
            SingleFile.Write(Path.Combine(FolderOf(book, theme), name), text);
    }
}
