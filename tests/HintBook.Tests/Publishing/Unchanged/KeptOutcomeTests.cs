using System.Collections.Immutable;
using System.Reflection;
using System.Text;
using System.Text.Json.Serialization;
using HintBook.Audit;
using HintBook.Mechanism;
using HintBook.Publishing;
using HintBook.Publishing.Unchanged;
using HintBook.Text;

namespace HintBook.Tests.Publishing.Unchanged;

/// <summary>What is kept of an outcome is all of it.</summary>
public class KeptOutcomeTests
{
    private static readonly SourceFile Stage = new("stages/01-a.md", "one\ntwo “three”\n");
    private static readonly FindingCode Code = new("HB9999", Severity.Warning, "a title");

    private static readonly Report Full = new()
    {
        Book = "A Box",
        Folder = "/somewhere",
        Books = 2,
        IsShelf = true,
        HasAddress = true,
        CardsAreProofs = true,
        CardsBeforePages = 3,
        Moved = ImmutableSortedDictionary<string, string>.Empty.Add("https://old.example/", "/somewhere/moved/old"),
        Pages = 4,
        Photos = 5,
        Developed = 6,
        Clips = new(7, 8),
        SiteBytes = 1L << 40,
        Cards = new(9, 10, 11) { Figures = new(0.5, 360, double.PositiveInfinity, 21), KeptFromPictures = 12, KeptFromPdf = 13 },
        CardSheets = ["cards.pdf", "more.pdf"],
        Papers = ["booklet.pdf"],
        PaperCodes = new(25, 26, 27, new(0.5, 360, 4, 21)),
        IsWithCard = true,
        Filter = new(4.5, 0.1, 1.1),
        Print = new(14, 15, [Fault]) { Kept = 16 },
        Audit = new(17, 18, 19, 20, [Fault]) { Opened = 21, Cards = 22, OnOthers = new(23, 24) },
        Claims = [new("opens", "the box opens", BookVerdict.NotProved, "it is heavy")],
        Findings = new(
        [
            Code.At(new(Stage, 4, 7), "message", "help", new Related(Stage.Top, "there")),
            Code.At(SourceFile.Unread("photos").Top, "unread"),
        ]),
    };

    private static AuditFault Fault => new("a.html", 1, 2, "wrong") { Secret = "the key", IsSure = false };

    [Fact]
    public void Whatever_a_report_says_is_read_again_as_it_was_written()
    {
        var written = new KeptOutcome(Full, [new("a-book", Full)]).Write();

        var read = KeptOutcome.Read(written);

        Assert.Equal(Encoding.UTF8.GetString(written), Encoding.UTF8.GetString(read!.Write()));
        AssertSame(Full, read.Report, "the report");
        AssertSame(Full, Assert.Single(read.Books).Report, "the book");
    }

    // A property that a report gets later is set above, or this fails.
    [Fact]
    public void The_report_tried_here_has_something_in_every_property()
    {
        var bare = new Report
        {
            Book = "",
            Folder = "",
            Pages = 0,
            Photos = 0,
            Developed = 0,
            SiteBytes = 0,
            Cards = new(0, 0, 0),
            Audit = AuditReport.Nothing,
            Claims = [],
            Findings = Findings.None,
        };
        Assert.All(Written(typeof(Report)), property => Assert.NotEqual(property.GetValue(bare), property.GetValue(Full)));
    }

    [Fact]
    public void Half_a_letter_in_a_title_is_told_as_the_sign_for_what_is_no_letter() =>
        Assert.Equal("\ufffd", KeptOutcome.Read(new KeptOutcome(Full with { Book = "\ud800" }, []).Write())!.Report.Book);

    [Theory]
    [InlineData("")]
    [InlineData("{}")]
    [InlineData("[1]")]
    [InlineData("null")]
    public void Anything_else_is_no_outcome(string text) => Assert.Null(KeptOutcome.Read(Encoding.UTF8.GetBytes(text)));

    private static IEnumerable<PropertyInfo> Written(Type type) =>
        type.GetProperties(BindingFlags.Instance | BindingFlags.Public).Where(each => each.CanWrite && each.GetCustomAttribute<JsonIgnoreAttribute>() is null);

    // By every property of every record; texts, numbers and the like by themselves.
    private static void AssertSame(object? one, object? other, string where)
    {
        if (one is null || one is string || one.GetType().IsPrimitive || one is Enum)
            Assert.True(Equals(one, other), where);
        else if (one is System.Collections.IEnumerable many)
        {
            object?[] ones = [.. many.Cast<object?>()], others = [.. ((System.Collections.IEnumerable)other!).Cast<object?>()];
            Assert.True(ones.Length == others.Length, where);
            for (var i = 0; i < ones.Length; i++)
                AssertSame(ones[i], others[i], $"{where}, {i}");
        }
        else
        {
            foreach (var property in one.GetType().GetProperties(BindingFlags.Instance | BindingFlags.Public).Where(each => each.GetIndexParameters() is []))
            {
                if (property.PropertyType != typeof(Span) || property.DeclaringType != typeof(SourceFile))
                    AssertSame(property.GetValue(one), property.GetValue(other), $"{where}, {property.Name}");
            }
        }
    }
}
