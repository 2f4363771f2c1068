using HintBook.Books;
using HintBook.Photos;
using Scriban.Runtime;

namespace HintBook.Pages;

/// <summary>The maker's mark as templates get it: small, so that the smallest of its sizes is enough.</summary>
internal static class LogoView
{
    /// <summary>The mark, or null where there is none or it wasn't published.</summary>
    /// <param name="maker">The maker.</param>
    /// <param name="pictures">The published pictures, by file.</param>
    /// <param name="root">The way from the page to the folder of the pictures' paths.</param>
    public static ScriptObject? Of(Maker? maker, IReadOnlyDictionary<string, Picture> pictures, string root) =>
        maker?.Logo is { } logo && pictures.TryGetValue(logo.File.Value, out var picture)
            ? View.Of(("src", root + picture.Files[0].Path), ("width", picture.Files[0].Width), ("height", picture.Files[0].Height))
            : null;
}
