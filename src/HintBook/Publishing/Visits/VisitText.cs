using System.Text;
using HintBook.Text;

namespace HintBook.Publishing.Visits;

/// <summary>What a visit found, for people.</summary>
public static class VisitText
{
    private const int MostNamed = 6;

    /// <summary>The report: what is wrong, each cause once, then one line that says how the site fares.</summary>
    public static string Write(VisitReport report)
    {
        var text = new StringBuilder();
        foreach (var alike in report.Faults.GroupBy(fault => (fault.Message, fault.Help)))
        {
            foreach (var fault in alike.Take(MostNamed))
                text.Append(fault.Address).Append(fault.Card is { } card ? $": {card} fails\n" : "\n");
            if (alike.Count() > MostNamed)
                text.Append("and ").Append(Words.Count(alike.Count() - MostNamed, "more address", "more addresses")).Append('\n');
            text.Append("  ").Append(alike.Key.Message).Append("\n  ").Append(alike.Key.Help).Append("\n\n");
        }

        text.Append(report.Base).Append(": ").Append(report.Asked).Append(" of ").Append(Words.Count(report.Of, "address", "addresses")).Append(" asked, ");
        text.Append(Said(report)).Append('\n');
        return string.Join('\n', text.ToString().Split('\n').Select(line => TerminalText.Shown(line)));
    }

    private static string Said(VisitReport report)
    {
        var cards = report.FailingCards.Count();
        var faults = report.Faults.IsEmpty
            ? report.Ended is null ? "everything is there as it was published." : "nothing was wrong so far."
            : cards == 0
                ? $"{Words.Count(report.Faults.Length, "fault")}, but every card leads to its page."
                : $"{Words.Count(report.Faults.Length, "fault")}; {Words.Count(cards, "card")} would fail.";
        return report.Ended is null ? faults : $"{faults} The visit ended early: {report.Ended}.";
    }
}
