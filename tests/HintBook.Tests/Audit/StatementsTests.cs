using HintBook.Audit;

namespace HintBook.Tests.Audit;

/// <summary>Codes and times of which a program holds each part by itself. More of them stand in <c>Elsewhere/ours/fragments-3</c>.</summary>
public class StatementsTests
{
    [Theory]
    [InlineData("if (h !== 5 || z !== 7 || e !== 3) return;")]
    [InlineData("ok = a === 5 && b === 7 && c === 3;")]
    [InlineData("if (x == 5)\n  if (y == 7)\n    if (z == 3) open();")]
    [InlineData("if (5 === x && 7 === y && 3 === z) open();")]
    [InlineData("const a = '5', b = '7', c = '3';")]
    [InlineData("return eq(a, 5) && eq(b, 7) && eq(c, 3);")]
    public void Figures_that_one_statement_compares_or_sets_in_the_order_of_a_code_are_a_doubt(string script) => Doubted(script, Table.Code("573"));

    [Theory]
    [InlineData("if (h !== 5 || z !== 3 || e !== 7) return;")]
    [InlineData("a = 5; draw(); b = 7; draw(); c = 3;")]
    [InlineData("if (a > 5 && b > 7 && c > 3) return;")]
    [InlineData("if (p === five && q === seven && r === three) return;")]
    [InlineData("// a === 5 or b, 7 of them, or c")]
    public void Other_figures_of_a_program_are_none(string script) => Silent(script, Table.Code("573"));

    [Theory]
    [InlineData("if (Number(hour) % 12 === 5 && Number(minute) === 50) open();")]
    [InlineData("if (minuteHand !== 50 || hourHand !== 5) return;")]
    [InlineData("if (t.getHours() === 17) { if (t.getMinutes() === 50) { open(); } }")]
    [InlineData("if (stunde === 5 && minute === 50) oeffne();")]
    [InlineData("stelleZeiger(5, 50);")]
    [InlineData("turn('hour', 5); turn('minute', 50);")]
    public void An_hour_and_a_minute_of_one_statement_are_a_doubt(string script) => Doubted(script, Time);

    [Theory]
    [InlineData("if (hour >= 5 && minute <= 50) open();")]
    [InlineData("if (hour === 5 && second === 50) open();")]
    [InlineData("if (row === 5 && column === 50) open();")]
    public void Other_numbers_of_a_program_are_no_time(string script) => Silent(script, Time);

    private static AuditSecret Time => new("5:50", [new("5:50", SpelledAs.Time)]);

    private static void Doubted(string script, AuditSecret secret)
    {
        using var site = Site.Good().Write("b.html", Site.Page("")).Write("look/site.js", script);
        var faults = site.Audit(Table.Of(secret)).Faults;
        Assert.NotEmpty(faults);
        Assert.All(faults, fault => Assert.Equal((secret.Name, false), (fault.Secret, fault.IsSure)));
    }

    private static void Silent(string script, AuditSecret secret)
    {
        using var site = Site.Good().Write("b.html", Site.Page("")).Write("look/site.js", script);
        Assert.Empty(site.Audit(Table.Of(secret)).Faults);
    }
}
