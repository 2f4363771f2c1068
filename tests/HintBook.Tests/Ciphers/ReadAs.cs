using HintBook.Ciphers;

namespace HintBook.Tests.Ciphers;

/// <summary>Reads texts in a way by its name, as a book would.</summary>
internal static class ReadAs
{
    /// <summary>What a way makes of a text, without white space only if the way leaves none.</summary>
    public static string Way(string way, string text, params string[] told) =>
        Assert.IsType<ReadingResult.Gave>(Ways.Named(way)!.Read(text, [.. told])).Text;

    /// <summary>Why a way doesn't apply to a text.</summary>
    public static string Stuck(string way, string text, params string[] told) =>
        Assert.IsType<ReadingResult.Stuck>(Ways.Named(way)!.Read(text, [.. told])).Why;

    /// <summary>Why a way can't use what it was told.</summary>
    public static string Mistold(string way, string text, params string[] told) =>
        Assert.IsType<ReadingResult.BadArgument>(Ways.Named(way)!.Read(text, [.. told])).Why;

    /// <summary>The words that a way can't read in a text.</summary>
    public static string[] Unread(string way, string text, params string[] told) =>
        [.. Assert.IsType<ReadingResult.Unread>(Ways.Named(way)!.Read(text, [.. told])).Words];
}
