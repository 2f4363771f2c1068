using System.Runtime.CompilerServices;
using HintBook.Text;

namespace HintBook.Tests.Reading;

/// <summary>Where things are: in a text, and in the source of these tests.</summary>
internal static class Where
{
    /// <summary>The folder of this test project.</summary>
    public static string Tests { get; } = Path.GetFullPath(Path.Combine(Here(), "../.."));

    /// <summary>The book that the project shows.</summary>
    public static string Example { get; } = Path.GetFullPath(Path.Combine(Tests, "../../content-example"));

    /// <summary>Line and column, both from 1.</summary>
    public static (int Line, int Column) Place(this Finding finding) => finding.At.File.PlaceOf(finding.At.Start);

    private static string Here([CallerFilePath] string path = "") => path;
}
