using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;
using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Mechanism.Model;
using HintBook.Tests.House;

namespace HintBook.Tests.Mechanism;

/// <summary>Random boxes given to a general-purpose model checker (Debian's spin, breadth first): it must find as many states and as short a way.</summary>
public partial class ModelCheckerTests
{
    [Fact]
    public void Spin_finds_as_many_states_and_as_short_a_way() => CompareWithSpin(RandomBoxes.Any, 4);

    [Fact]
    public void Spin_finds_as_many_states_and_as_short_a_way_where_a_dial_is_turned() => CompareWithSpin(RandomBoxes.Dials, 2);

    private static void CompareWithSpin(Gen<Book> boxes, int count)
    {
        DebianProgram.Have("spin", "spin");
        DebianProgram.Have("gcc", "gcc");
        boxes.Where(book => book.Box.Reactions.IsEmpty).Array[count].Sample(
            books => Parallel.ForEach(books, Compare), iter: 1, print: books => string.Join("\n\n", books.Select(BookText.Of)));
    }

    private static void Compare(Book book)
    {
        var machine = Compiler.Compile(book);
        Assert.Equal(Solving.GraphOf(machine).Count, StatesOf(machine));
        Assert.Equal(Solving.Of(book).Shortest is Claim.Proved shortest ? shortest.Way.Length : null, ShortestOf(machine));
    }

    private static int StatesOf(Machine machine) =>
        (int)double.Parse(States().Match(Checked(machine, watched: false)).Groups["number"].ValueSpan, CultureInfo.InvariantCulture);

    private static int? ShortestOf(Machine machine) =>
        Depth().Match(Checked(machine, watched: true)) is { Success: true } found
            ? int.Parse(found.Groups["number"].ValueSpan, CultureInfo.InvariantCulture)
            : null;

    private static string Checked(Machine machine, bool watched)
    {
        var folder = Directory.CreateTempSubdirectory("hintbook-spin-").FullName;
        try
        {
            File.WriteAllText(Path.Combine(folder, "box.pml"), Promela.Of(machine, watched));
            // -o2: what is written and never read is part of a state here.
            DebianProgram.Run(folder, "spin", "-o2", "-a", "box.pml");
            DebianProgram.Run(folder, "gcc", "-w", "-DSAFETY", "-DBFS", "-o", "pan", "pan.c");
            // A box that can only be looked at any more is no error here.
            return DebianProgram.Run(folder, Path.Combine(folder, "pan"), "-m100000", "-E");
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [GeneratedRegex(@"(?<number>[\d.e+]+) states, stored")]
    private static partial Regex States();

    [GeneratedRegex(@"at depth (?<number>\d+)\)")]
    private static partial Regex Depth();
}
