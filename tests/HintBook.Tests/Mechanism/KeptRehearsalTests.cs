using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Checking;
using HintBook.Mechanism;
using HintBook.Starting;
using HintBook.Tests.Publishing;
using HintBook.Tests.Reading;
using HintBook.Text;

namespace HintBook.Tests.Mechanism;

/// <summary>A way through the box that is kept as a file is played again at each check.</summary>
public sealed class KeptRehearsalTests : IDisposable
{
    private const int Walks = 20;
    private const int Steps = 40;

    private const string Keys = """
        format: 2
        title: The Tea Caddy
        goal: [ honey ]
        parts:
          lid: { positions: [ shut, open ], name: the lid }
          dial: { positions: 0-9, turns: next, needs: [ { lid: open } ] }
          flap: { positions: [ up, down ], free: true }
        things: { honey: {} }
        moves:
          - { name: look behind the flap, needs: [ { flap: down } ], does: { lid: open }, reversible: true }
          - { name: put the honey back, needs: [ honey ], does: { honey: hidden, lid: shut, dial: 0, flap: up } }
        """;

    private readonly BookOnDisk book = new BookOnDisk().With("book.yaml", Keys)
        .With("stages/01-the-lid.md", BookOnDisk.Stage("needs: [ { dial: 7 } ]\ngives: [ honey ]"));

    public void Dispose() => book.Dispose();

    [Fact]
    public void A_rehearsal_that_comes_out_says_nothing() => Assert.Empty(Told("""
        steps: [ { part: flap, to: down }, { move: look behind the flap }, { part: dial, to: 7 }, the-lid ]
        then: [ honey, { dial: 7 }, { lid: open } ]
        """));

    [Theory]
    [InlineData("[ the-lid ]", "Step 1, “The lid”, can't be done any more: its needs don't hold.")]
    [InlineData("[ { stage: the-lid, move: The lid } ]", "Step 1, “The lid”, can't be done any more: its needs don't hold.")]
    [InlineData("[ { part: flap, to: down }, { part: dial, to: 7 } ]", "Step 2, “dial: 7”, can't be done any more: it can't be turned.")]
    [InlineData("[ { part: flap, to: down }, { move: look behind the flap }, { move: look behind the flap, back: { lid: ajar } } ]",
        "Step 3, “back: look behind the flap”, can't be done any more: nothing says that it came from there.")]
    [InlineData("[ the-lit ]", "The book has no stage “the-lit”.")]
    [InlineData("[ { move: look behind the clap } ]", "The book has no move “look behind the clap”.")]
    [InlineData("[ { stage: the-lid, move: pull } ]", "The book has no move “pull”.")]
    [InlineData("[ { part: lid, to: open } ]", "The book has no free part “lid”.")]
    [InlineData("[ { part: dial, to: 12 } ]", "The book has no position of “dial” “12”.")]
    public void A_step_that_is_not_possible_is_told_with_its_reason(string steps, string message)
    {
        var found = Assert.Single(Told($"steps: {steps}"));

        Assert.Equal(("HB2160", message), (found.Code.Id, found.Message));
    }

    [Fact]
    public void What_the_step_asks_for_is_shown_where_the_book_asks_for_it()
    {
        var related = Assert.Single(Assert.Single(Told("steps: [ the-lid ]")).Related);

        Assert.Equal("dial", related.At.Text);
        Assert.Equal("stages/01-the-lid.md", related.At.File.Path);
    }

    [Fact]
    public void All_names_that_the_book_has_not_are_told_at_once() =>
        Assert.Equal(["the-lit", "flop", "side"], Told("steps: [ the-lit, { part: flop, to: down }, { part: flap, to: side } ]").Select(each => each.At.Text));

    [Theory]
    [InlineData("{ flap: up }", "After the last step “flap” is “down”.")]
    [InlineData("honey", "After the last step “honey” is “hidden”.")]
    [InlineData("spoon", "After the last step this doesn't hold.")]
    [InlineData("any: [ honey, { flap: up } ]", "After the last step this doesn't hold.")]
    public void Where_it_ends_is_held_against_what_is_written(string then, string message)
    {
        var found = Assert.Single(Told($"steps: [ {{ part: flap, to: down }} ]\nthen:\n  - {then}"));

        Assert.Equal(("HB2161", message), (found.Code.Id, found.Message));
    }

    [Fact]
    public void A_book_is_published_with_a_rehearsal_that_does_not_come_out()
    {
        book.With("rehearsals/evening.yaml", "steps: [ the-lid ]");

        Assert.IsType<Sound>(Check.Run(book.Path));
    }

    [Fact]
    public void What_is_no_rehearsal_is_a_mistake_with_its_place()
    {
        book.With("rehearsals/evening.yaml", "steps: [ { part: flap } ]\nstops: here\n");

        var found = Check.Run(book.Path).Findings.All.Where(finding => finding.At.File.Path == "rehearsals/evening.yaml");

        Assert.Equal([(1, 10), (2, 1)], found.Select(finding => finding.At.File.PlaceOf(finding.At.Start)));
    }

    // Whatever is played, what is written of it is read as the same steps, which leave the box as it was left.
    [Fact]
    public void What_is_kept_of_a_walk_comes_out_when_it_is_played_again()
    {
        using var example = new WholeExample();
        var known = Assert.IsType<Sound>(Check.Run(example.Folder)).Examined.Book;
        for (var walk = 0; walk < Walks; walk++)
        {
            var way = ByChance(known, new Random(walk));
            File.WriteAllText(Path.Combine(Directory.CreateDirectory(Path.Combine(example.Folder, "rehearsals")).FullName, $"{walk}.yaml"),
                RehearsalText.Write(known, $"Walk \"{walk}\"", way));
        }

        var found = Check.Run(example.Folder);

        var again = Assert.IsType<Sound>(found).Examined.Book.Rehearsals;
        Assert.Equal(Walks, again.Count(kept => kept.Title.StartsWith("Walk \"", StringComparison.Ordinal)));
        Assert.DoesNotContain(found.Findings.All, finding => finding.At.File.Path.StartsWith("rehearsals/", StringComparison.Ordinal));
        Assert.All(again, kept => Assert.NotEmpty(kept.Then));
    }

    [Theory]
    [InlineData("Friends, first evening", "friends-first-evening.yaml")]
    [InlineData("  ", "rehearsal.yaml")]
    [InlineData("../../etc", "etc.yaml")]
    [InlineData("Ärger & Öl", "ärger-öl.yaml")]
    [InlineData("taken", "taken-3.yaml")]
    public void A_file_is_named_by_its_title_and_never_takes_anothers_name(string title, string name) =>
        Assert.Equal(name, RehearsalText.NameFor(title, taken => taken is "taken.yaml" or "taken-2.yaml"));

    private static ImmutableArray<Step> ByChance(Book known, Random chance)
    {
        var box = Rehearsal.Begin(known).Box ?? throw new InvalidOperationException("The example can't be tried.");
        var way = ImmutableArray.CreateBuilder<Step>();
        while (way.Count < Steps && !box.Solved)
        {
            var possible = box.Possible;
            way.Add(possible[chance.Next(possible.Length)]);
            box = box.After(Rehearsal.KeyOf(way[^1])) ?? throw new InvalidOperationException($"{way[^1]}");
        }

        return way.ToImmutable();
    }

    private Finding[] Told(string rehearsal)
    {
        book.With("rehearsals/evening.yaml", rehearsal);
        return [.. Check.Run(book.Path).Findings.All.Where(finding => finding.At.File.Path == "rehearsals/evening.yaml")];
    }
}
