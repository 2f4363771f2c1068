using System.Collections.Immutable;

namespace HintBook.Photos.Films;

/// <summary>What a film is packed in, and how its pictures and sounds are coded.</summary>
/// <param name="Container">What it is packed in, as makers call it: <c>MP4</c>, <c>QuickTime</c>, <c>WebM</c>, <c>Matroska</c>.</param>
/// <param name="Codings">How its pictures and sounds are coded, each once, in the order of the tracks.</param>
public sealed record FilmForm(string Container, ImmutableArray<FilmCoding> Codings)
{
    /// <summary>
    /// What not every browser plays of it: its container, or codings; empty where all of it plays in Chromium, Firefox and WebKit. Of an MP4
    /// these are H.264 and AAC, of a WebM VP8, VP9, Vorbis and Opus (what engines play is from memory; an iPhone plays WebM since iOS 17.4).
    /// </summary>
    public ImmutableArray<string> NotPlayed => Container switch
    {
        "MP4" => [.. Codings.Where(coding => coding.Name is not ("H.264" or "AAC")).Select(coding => coding.Name)],
        "WebM" => [.. Codings.Where(coding => coding.Name is not ("VP8" or "VP9" or "Vorbis" or "Opus")).Select(coding => coding.Name)],
        _ => [Container, .. Codings.Where(coding => coding.Name is not ("H.264" or "AAC")).Select(coding => coding.Name)],
    };
}

/// <summary>How a track is coded.</summary>
/// <param name="Name">The coding as makers know it: <c>H.264</c>; what isn't known is called as the file calls it.</param>
public sealed record FilmCoding(string Name);
