using System.Text;
using HintBook.Books;
using HintBook.Pages;
using HintBook.Tests.Books;
using HintBook.Tests.House;
using Scriban.Runtime;

namespace HintBook.Tests.Pages;

// What a maker who changes a theme may rely on stands in the theme's README. It is written from what the pages really get.
public class TemplateContractTests
{
    [Fact]
    public void The_readme_of_the_themes_tells_every_value_that_a_template_gets() =>
        WrittenFromTheCode.EndsWith(Contract(), "themes", "shared", "README.md");

    // The same names with and without all that a book may leave out: whatever is absent in one of them may be absent.
    private static string Contract()
    {
        var values = new SortedDictionary<string, SortedDictionary<string, Kinds>>(StringComparer.Ordinal);
        var anywhere = new SortedDictionary<string, Kinds>(StringComparer.Ordinal);
        foreach (var plan in new[] { Sites.Everything(), Sites.Plan(A.Book(A.Stage("lid"))), WithAllThereIs() })
        {
            var (theme, where) = (Theme.BuiltIn(Theme.Default).Theme, Whereabouts.Of(plan));
            foreach (var page in Site.InEachLanguage(plan).SelectMany(each => Site.PagesOf(LanguageSite.Build(each, theme, where).Made)))
            {
                if (!values.TryGetValue(page.Template, out var of))
                    values[page.Template] = of = new(StringComparer.Ordinal);
                Note(page.Names(), "", of);
                Note(page.Names(), "", anywhere);
            }
        }

        var shared = values.Values.Select(of => of.Keys).Aggregate<IEnumerable<string>>((one, other) => one.Intersect(other)).ToArray();
        var text = new StringBuilder();
        Write("Every page", anywhere.Where(value => shared.Contains(value.Key)));
        foreach (var (template, of) in values.Where(of => of.Value.Keys.Except(shared).Any()))
            Write($"`{template}`", of.Where(value => !shared.Contains(value.Key)));
        return text.ToString();

        void Write(string title, IEnumerable<KeyValuePair<string, Kinds>> rows)
        {
            text.Append('\n').Append("### ").Append(title).Append("\n\n| value | what it is |\n|---|---|\n");
            foreach (var (name, kinds) in rows)
                text.Append("| `").Append(name).Append("` | ").Append(kinds).Append(" |\n");
        }
    }

    private static void Note(ScriptObject view, string prefix, SortedDictionary<string, Kinds> values)
    {
        foreach (var (name, value) in view.Where(each => prefix.Length > 0 || each.Key is not ("words" or "assets")))
        {
            var path = prefix + name;
            if (!values.TryGetValue(path, out var kinds))
                values[path] = kinds = new Kinds();
            kinds.Add(value);
            foreach (var inner in value is ScriptArray list ? Flat(list) : value is ScriptObject one ? [one] : [])
                Note(inner, value is ScriptArray ? $"{path}[]." : $"{path}.", values);
        }
    }

    private static IEnumerable<ScriptObject> Flat(ScriptArray list) => list.SelectMany(item => item switch
    {
        ScriptArray inner => Flat(inner),
        ScriptObject one => [one],
        _ => [],
    });

    // Everything, and two languages, marks on every photo, a part that shows on the closed box, a task to put back, an older address, a film that
    // lives elsewhere.
    private static SitePlan WithAllThereIs()
    {
        var plan = Sites.Everything();
        var lid = plan.Book.Stages[0];
        var book = plan.Book with
        {
            FilmAddress = A.Value("https://films.example/box?t={seconds}"),
            Box = plan.Book.Box with { Parts = [A.Part("roof", "on", "off") with { Seen = true }] },
            Photos = [.. plan.Book.Photos.Select(Marked)],
            Stages = plan.Book.Stages.SetItem(0, lid with
            {
                Photos = [.. lid.Photos.Select(Marked)],
                Moves = [lid.Moves[0] with { Changes = [A.Change("roof", "off")], Undo = new Undo([], [A.Change("roof", "on")], null, A.Somewhere) }],
            }).SetItem(1, plan.Book.Stages[1] with { Clip = A.Clip(null, 183, null) }),
        };
        var jar = plan.Survey.Stages["jar"] with { CertainBefore = ["lid"] };
        return plan with
        {
            Book = book with { Translations = [book with { Language = A.Value("ar") }] },
            Survey = plan.Survey with { Stages = plan.Survey.Stages.SetItem("jar", jar) },
            Addresses = plan.Addresses with { Names = plan.Addresses.Names.SetItem("lid", [.. plan.Addresses.Names["lid"], "older"]) },
        };

        static Photo Marked(Photo photo) => photo with { Marks = [A.Mark(10, 20, "here")] };
    }

    private sealed class Kinds
    {
        private readonly SortedSet<string> all = new(StringComparer.Ordinal);
        private bool absent;

        public void Add(object? value)
        {
            if (value is null)
                absent = true;
            else if (value is not ScriptArray { Count: 0 })
                all.Add(Named(value));
        }

        public override string ToString() => $"{(all.Count == 0 ? "an empty list" : string.Join(" or ", all))}{(absent ? ", or nothing" : "")}";

        private static string Named(object value) => value switch
        {
            Html => "HTML",
            string => "text",
            bool => "yes or no",
            int => "number",
            ScriptArray list => $"list: {Named(list[0]!)}",
            _ => "values",
        };
    }
}
