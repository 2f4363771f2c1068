using System.CommandLine;
using System.Globalization;
using HintBook.Print;
using HintBook.Print.Flow;
using HintBook.Publishing;
using HintBook.Text;

namespace HintBook.Cli.Verbs;

/// <summary><c>print BOOK [PAPER…]</c>: makes what is printed of a book: the papers that are named, or those that it asks for.</summary>
internal static class PrintVerb
{
    public static Command Make(Terminal terminal, CancellationToken stop)
    {
        var papers = new Argument<string[]>("PAPER")
        {
            Description = $"What to print: {Words.List([.. PaperKinds.All.Select(kind => kind.Name)], "or")}, or {PaperKinds.Everything} (the default).",
            Arity = ArgumentArity.ZeroOrMore,
        };
        papers.AcceptOnlyFromAmong([.. PaperKinds.All.Select(kind => kind.Name), PaperKinds.Everything]);
        var copies = new Option<string[]>("--copy")
        {
            Description = "The papers of this copy alone: its own cards, label, clues, leaflet and reset sheet.",
            HelpName = "SERIAL",
        };
        var asked = new HashSet<PaperKind>();
        var ofSome = false;
        var verb = PublishingVerb.Make(
            "print",
            "Make what is printed: cards, booklet of hints, solution, reset sheet, box label, clues.",
            (book, options) => Pipeline.PrintPapers(book, asked, options, stop),
            report => Told(report, asked, ofSome),
            terminal,
            (Add, With));
        verb.Validators.Add(given =>
        {
            if (given.GetValue(copies) is { Length: > 0 } && (given.GetValue(papers) ?? []).Contains(PaperKinds.NameOf(PaperKind.Booklet)))
                given.AddError("The booklet says nothing of one copy: every box gets the same. Print it without --copy.");
        });
        return verb;

        void Add(Command added)
        {
            added.Add(papers);
            added.Add(copies);
        }

        PublishOptions With(ParseResult parsed, PublishOptions options)
        {
            var serials = parsed.GetValue(copies) ?? [];
            ofSome = serials.Length > 0;
            asked.UnionWith(Kinds(parsed.GetValue(papers) ?? [], ofSome));
            return options with { Copies = [.. serials] };
        }
    }

    private static IEnumerable<PaperKind> Kinds(string[] names, bool ofOneCopy) =>
        names.Length == 0 || names.Contains(PaperKinds.Everything)
            ? ofOneCopy ? PaperKinds.OfOneCopy : PaperKinds.All.Select(kind => kind.Kind)
            : names.Select(PaperKinds.Named).OfType<PaperKind>();

    /// <summary>What the audit read of the printed files, and how much of it was read by an earlier run.</summary>
    public static string Audited(Report report) =>
        $"{Words.Count(report.Print.Files, "printed file")} checked again for spoilers"
        + (report.Print.Kept == 0 ? "" : $"; not read again, since an earlier run read the same bytes: {report.Print.Kept}");

    private static string Seen(FilterContrast filter) => string.Create(
        CultureInfo.InvariantCulture,
        $"reckoned from the inks: through a red filter letters {filter.Letters:0.0} to 1 with the pattern, at least {filter.Least:0.0}; ")
        + string.Create(CultureInfo.InvariantCulture, $"without it at most {filter.Bare:0.0} in light and dark. ")
        + "Colour isn't reckoned: who looks closely may make out a word.";

    // Of a book that lies open no copy has cards of its own.
    private static string Told(Report report, HashSet<PaperKind> asked, bool ofSome) =>
        $"Printed for “{TerminalText.Shown(report.Book)}”\n"
        + (asked.Contains(PaperKind.Cards) && !(ofSome && report.Cards.Cards == 0) ? $"  {CardsVerb.Told(report)}\n" : "")
        + string.Concat(report.Papers.Select(paper => $"  paper    {Path.Combine(report.Folder, "print", paper)}\n"))
        + (CardsVerb.OnPapers(report.PaperCodes) is { } codes ? $"  {codes}\n" : "")
        + (report.Filter is { } filter ? $"  filter   {Seen(filter)}\n" : "")
        + $"  checked  {Audited(report)}\n"
        + "Print all of it at 100 %, not “fit to page”.\n";
}
