using HintBook.Books;
using HintBook.Ciphers;
using HintBook.Tests.Books;
using static HintBook.Tests.Ciphers.CodeBooks;

namespace HintBook.Tests.Ciphers;

public class OtherReadingsTests
{
    private static OtherReading[] Others(Code code) => [.. Prove(code).Codes[0].Others];

    [Fact]
    public void The_right_figures_from_the_right_are_a_long_shot()
    {
        var others = Others(Number("5173", "Five hives, one queen, seven drones, three swarms", "number-words"));

        Assert.Contains(new OtherReading("3715", "read from the right", Likely: false, RuledOut: null), others);
        Assert.DoesNotContain(others, other => other.Likely);
    }

    [Fact]
    public void HB4301_another_habit_of_the_same_way_is_said()
    {
        var finding = Assert.Single(Prove(Number("255", "BEE", "letters-to-numbers")).Findings, finding => finding.Code.Id == "HB4301");

        Assert.Contains("144 (counting A as 0)", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Words_that_could_be_counted_instead_are_likely()
    {
        var others = Others(Number("123", "one two three", "number-words"));

        Assert.Contains(others, other => other.How == "“word-lengths”" && other.Setting == "335" && other.Likely);
    }

    [Fact]
    public void Each_step_could_have_been_another()
    {
        var others = Others(Number("255", "Bring every egg", "first-letters", "letters-to-numbers"));

        Assert.Contains(new OtherReading("233", "“keypad” in place of “letters-to-numbers”", Likely: false, RuledOut: null), others);
    }

    [Fact]
    public void On_letters_anything_fits_so_that_other_ways_are_long_shots() =>
        Assert.DoesNotContain(Others(Code("CL", "Cold mornings\nLight winds", 2, "ABCDEFGHIJKLMNOPQRSTUVWXYZ", Step("acrostic"))), other => other.Likely);

    [Fact]
    public void What_does_not_fit_the_lock_is_no_reading() =>
        Assert.Empty(Others(Code("22", "red, red", 2, "2", Step("resistor-colours"))));

    [Fact]
    public void What_the_author_has_ruled_out_is_not_said_again()
    {
        var code = Number("255", "BEE", "letters-to-numbers") with
        {
            RuledOut =
            [
                new RuledOut(A.Value("144"), A.Value("the card shows A = 1")),
                new RuledOut(A.Value("233"), A.Value("the box is older than telephones")),
            ],
        };

        Assert.Empty(Prove(code).Said());
        Assert.Contains(Others(code), other => other is { Setting: "144", RuledOut: "the card shows A = 1" });
    }

    [Fact]
    public void HB4302_a_setting_ruled_out_that_nothing_gives_is_a_note()
    {
        var code = Number("255", "BEE", "letters-to-numbers") with { RuledOut = [new RuledOut(A.Value("999"), A.Value("no"))] };

        Assert.Contains("HB4302", Prove(code).Findings.Select(finding => finding.Code.Id));
    }

    [Fact]
    public void The_likeliest_come_first_and_not_too_many()
    {
        var others = Others(Number("255", "BEE", "letters-to-numbers"));

        Assert.InRange(others.Length, 2, OtherReadings.Most);
        Assert.Equal(others.OrderByDescending(other => other.Likely), others);
    }
}
