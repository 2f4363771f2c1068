using System.Collections.Immutable;
using HintBook.Spoilers;
using HintBook.Tests.Audit;
using HintBook.Tests.Reading;

namespace HintBook.Tests.Spoilers;

/// <summary>
/// Numbers of rooms, houses and homes, and compounds of a thing's noun, are doubts at most to the check of the source and to the audit; what really tells is
/// an error to both. The sentences are our own; those of numbers were written before the words that doubt them.
/// </summary>
public class PlacesAndCompoundsTests
{
    private static readonly ImmutableArray<Line> Lines =
    [
        .. from line in File.ReadLines(Path.Combine(Where.Tests, "Spoilers", "places-and-compounds.txt"))
           where line.Length > 0 && line[0] != '#'
           let cells = line.Split('|', 5, StringSplitOptions.TrimEntries)
           select new Line(cells[0], cells[1], cells[2] == "!", cells[3], cells[4]),
    ];

    public static TheoryData<string> Classes => [.. Lines.Select(line => line.Class).Distinct()];

    [Theory]
    [MemberData(nameof(Classes))]
    public void What_is_innocent_is_no_error_to_the_check_of_the_source(string one) =>
        Nothing(line => line.Class == one && !line.Tells && IsErrorInSource(line));

    [Theory]
    [MemberData(nameof(Classes))]
    public void What_is_innocent_is_no_fault_to_the_audit(string one) =>
        Nothing(line => line.Class == one && !line.Tells && IsFaultOfAudit(line));

    [Theory]
    [MemberData(nameof(Classes))]
    public void What_tells_is_an_error_to_the_check_of_the_source(string one) =>
        Nothing(line => line.Class == one && line.Tells && !IsErrorInSource(line));

    [Theory]
    [MemberData(nameof(Classes))]
    public void What_tells_is_a_fault_to_the_audit(string one) =>
        Nothing(line => line.Class == one && line.Tells && !IsFaultOfAudit(line));

    [Theory]
    [MemberData(nameof(Classes))]
    public void Each_class_has_eight_innocent_lines_and_four_that_tell_at_least(string one)
    {
        Assert.InRange(Lines.Count(line => line.Class == one && !line.Tells), 8, int.MaxValue);
        Assert.InRange(Lines.Count(line => line.Class == one && line.Tells), 4, int.MaxValue);
    }

    private static void Nothing(Func<Line, bool> isWrong)
    {
        var wrong = Lines.Where(isWrong).Select(line => $"{line.Language}: {line.Text}").ToArray();
        Assert.True(wrong.Length == 0, string.Join('\n', wrong));
    }

    private static bool IsErrorInSource(Line line)
    {
        var kind = line.IsCode ? SecretKind.Answer : SecretKind.Name;
        var finder = new Finder(Hidden.Of(("it", kind, [line.Secret])), line.Language);
        return finder.In(line.Text).Any(mention => mention.Sureness == Sureness.Sure);
    }

    private static bool IsFaultOfAudit(Line line)
    {
        using var site = Site.Good().Write("b.html", Site.Page($"<p>{line.Text}</p>"));
        var secret = line.IsCode ? Table.Code(line.Secret) : Table.Name(line.Secret);
        return site.Audit(Table.Of(secret) with { Language = line.Language }).Faults.Any(fault => fault.Secret is not null && fault.IsSure);
    }

    private sealed record Line(string Class, string Language, bool Tells, string Secret, string Text)
    {
        public bool IsCode => char.IsAsciiDigit(Secret[0]);
    }
}
