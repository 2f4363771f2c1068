using System.Diagnostics;
using HintBook.Tests.House;

namespace HintBook.Browser.Tests.Sites;

/// <summary>A film of six seconds, of which the first step of the small book shows the part from 0:02 to 0:03. Debian's ffmpeg makes it.</summary>
internal static class Film
{
    /// <summary>Adds the film to a copy of the small book; where it can't be made the test is skipped.</summary>
    /// <param name="book">The folder of the book.</param>
    public static void AddTo(string book)
    {
        Make(Path.Combine(book, "clips"));
        var stage = Path.Combine(book, "stages", "01-plover.md");
        var text = File.ReadAllText(stage).Replace("minutes: 5", "minutes: 5\nclip: { file: film.webm, from: 0:02, to: 0:03 }", StringComparison.Ordinal);
        File.WriteAllText(stage, text);
    }

    /// <summary>Makes the film in a folder; where it can't be made the test is skipped.</summary>
    /// <param name="folder">The folder.</param>
    public static void Make(string folder)
    {
        if (!File.Exists("/usr/bin/ffmpeg") && (!DebianPackages.MayBeInstalled || DebianPackages.Install("ffmpeg") is not null))
            Assert.Skip("ffmpeg is not installed here (on Debian: apt install ffmpeg).");
        var clips = Directory.CreateDirectory(folder).FullName;
        string[] film = ["-f", "lavfi", "-i", "testsrc=size=160x120:rate=25:duration=6", "-c:v", "libvpx", "-deadline", "realtime", "-g", "25"];
        using var ffmpeg = Process.Start("/usr/bin/ffmpeg", ["-nostdin", "-v", "error", .. film, Path.Combine(clips, "film.webm")]);
        ffmpeg.WaitForExit();
    }
}
