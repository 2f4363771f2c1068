using HintBook.Books;
using HintBook.Browser.Tests.Sites;
using HintBook.Tests.Mechanism;
using HintBook.Tests.Pages.Walking;

namespace HintBook.Browser.Tests.Reading;

/// <summary>
/// The owners of one box: one for each kind of state, who know only what they see. Two states are of a kind if the same steps are next in both. What is next
/// and what is true is worked out from the book's records alone, and shares nothing with what made the pages.
/// </summary>
internal sealed class Owners
{
    private readonly PublishedSite site;
    private readonly Standings standings;
    private readonly Sentences sentences;

    private Owners(PublishedSite site)
    {
        this.site = site;
        string[] everyday = [.. site.Findings.All.Where(finding => finding.Code.Id == "HB3301").Select(finding => finding.Message.Split('“', '”')[1])];
        standings = new(site.Book, new NaiveExplorer(site.Book, toTheGoal: true).Rests(), site.Survey.Stages, everyday);
        sentences = new(site.Book);
        Kinds =
        [
            .. standings.Live.GroupBy(state => string.Join(' ', standings.NextAt(state)))
                .OrderBy(kind => kind.Key, StringComparer.Ordinal)
                .Select(kind => kind.ElementAt(kind.Count() / 2)),
        ];
    }

    /// <summary>One state of each kind: neither the first that is come to nor the last.</summary>
    public IReadOnlyList<int> Kinds { get; }

    /// <summary>Works out the owners of a box. Takes seconds for the example.</summary>
    public static Owners Of(PublishedSite site) => new(site);

    /// <summary>The steps that are next for an owner.</summary>
    public IReadOnlySet<string> NextFor(int owner) => standings.NextAt(owner);

    /// <summary>The titles of the steps to which an owner may be led.</summary>
    public IEnumerable<string> TitlesFor(int owner) =>
        site.Book.Stages.Where(stage => standings.SoughtAt(owner).Contains(stage.Id.Value)).Select(stage => stage.Title.Value);

    /// <summary>An owner as a person reads it.</summary>
    public string Say(int owner) => standings.Say(owner);

    /// <summary>
    /// What an owner answers who takes a page at its word: the sign of a step that is next for them, else the first line that is true, else “None of these”;
    /// null where not even that is offered.
    /// </summary>
    public Choice? TrueAnswer(Asked page, int owner) =>
        page.Signs.FirstOrDefault(sign => IsSought(sign, owner))
        ?? page.Lines.FirstOrDefault(line => IsTrue(line, owner))
        ?? page.None;

    /// <summary>What an owner answers who doesn't look: the first answer that is not true of their box, else null.</summary>
    public Choice? WrongAnswer(Asked page, int owner) =>
        page.Lines.FirstOrDefault(line => !IsTrue(line, owner)) ?? page.Signs.FirstOrDefault(sign => !IsSought(sign, owner));

    private bool IsSought(Choice sign, int owner) => standings.SoughtAt(owner).Any(stage => site.PageOf(stage) == sign.Page);

    private bool IsTrue(Choice line, int owner) => sentences.Meant(line.Says).Any(asked => asked.IsTrue(standings.Rests[owner].At));
}

/// <summary>A page of “Where am I?” as it is drawn.</summary>
/// <param name="Signs">The signs of steps.</param>
/// <param name="Lines">The lines of which the first true one counts.</param>
/// <param name="None">The way on for whom nothing fits, or null.</param>
internal sealed record Asked(IReadOnlyList<Choice> Signs, IReadOnlyList<Choice> Lines, Choice? None);

/// <summary>One answer that can be seen.</summary>
/// <param name="Says">Its words.</param>
/// <param name="Page">The page that it leads to.</param>
internal sealed record Choice(string Says, string Page);
