using HintBook.Tests.House;
using HintBook.Text;

namespace HintBook.Tests.Reading;

/// <summary>Where things are: in a text, and in the source of these tests.</summary>
internal static class Where
{
    /// <summary>The folder of this test project.</summary>
    public static string Tests { get; } = Path.Combine(Repository.Root, "tests", "HintBook.Tests");

    /// <summary>The book that the project shows.</summary>
    public static string Example => Repository.Example;

    /// <summary>Line and column, both from 1.</summary>
    public static (int Line, int Column) Place(this Finding finding) => finding.At.File.PlaceOf(finding.At.Start);
}
