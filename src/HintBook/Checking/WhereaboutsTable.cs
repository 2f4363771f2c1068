using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Json;
using HintBook.Books;
using HintBook.Pages;
using HintBook.Text;

namespace HintBook.Checking;

/// <summary>How soon “Where am I?” finds a next step, and what makes it slow.</summary>
/// <param name="Pages">How many pages it has.</param>
/// <param name="From">What they come from: <c>states</c>, <c>stages</c> or <c>order</c>.</param>
/// <param name="Taps">Taps to a next step on average, weighted by how long a solver stands at each place; null where it isn't known.</param>
/// <param name="Most">The most taps, or null.</param>
/// <param name="Found">The share of a solver's time at which a next step is found, 0 to 1, or null.</param>
/// <param name="Wanted">The same for who wants one step of several that are open; null where there are never several, or that isn't looked for.</param>
/// <param name="OneByOne">The longest row of stages that can be told apart only one by one, since nothing that shows changes in between.</param>
public sealed record WhereaboutsTable(int Pages, string From, double? Taps, int? Most, double? Found, WantedTaps? Wanted, ImmutableArray<Stage> OneByOne)
{
    /// <summary>Reads it off the pages of a book.</summary>
    public static WhereaboutsTable Of(Examined book)
    {
        var where = book.Site.Where;
        var stages = book.Book.Stages.DistinctBy(stage => stage.Id.Value).ToDictionary(stage => stage.Id.Value);
        return new(
            where.Pages.Length,
            where.From switch { WhereaboutsSource.States => "states", WhereaboutsSource.Stages => "stages", _ => "order" },
            where.Rates?.Taps,
            where.Rates?.Most,
            where.Rates?.Found,
            where.RatesForWanted is { } wanted ? new(wanted.Taps, wanted.Most, wanted.Found) : null,
            [.. Longest(where).Select(id => stages[id])]);
    }

    /// <summary>For people: a few lines.</summary>
    public static string Write(WhereaboutsTable? table)
    {
        if (table is null)
            return "“Where am I?” isn’t known while the book has errors.\n";
        var text = new StringBuilder();
        text.Append(table.Taps is null
            ? "“Where am I?” shows the signs in the order of the steps: the box can be opened in too many orders to ask what shows.\n"
            : string.Create(
                CultureInfo.InvariantCulture,
                $"“Where am I?” finds a next step in {table.Taps:0.0} taps on average and {table.Most} at most, ")
                + string.Create(CultureInfo.InvariantCulture, $"in {table.Found * 100:0.#} % of the time.\n"));
        if (table.Wanted is { } wanted)
        {
            text.Append(CultureInfo.InvariantCulture, $"Where several are open it finds the one that is wanted in {wanted.Taps:0.0} taps on average ")
                .Append(CultureInfo.InvariantCulture, $"and {wanted.Most} at most, in {wanted.Found * 100:0.#} % of the time.\n");
        }

        if (table.From == "stages")
            text.Append("It goes by what is proved of the steps, since the box has too many states: it may ask more than it needs.\n");
        if (table.OneByOne is [var first, .., var last])
        {
            text.Append($"“{TerminalText.Shown(first.Title.Value)}” to “{TerminalText.Shown(last.Title.Value)}”: ")
                .Append($"these {table.OneByOne.Length} steps can be told apart only one by one. A part that shows and moves in between would help.\n");
        }

        return text.ToString();
    }

    /// <summary>For programs: <c>"where":{"pages","from","taps","most","found","wanted","one_by_one"}</c>, or null.</summary>
    public static void WriteJson(Utf8JsonWriter json, WhereaboutsTable? table)
    {
        json.WritePropertyName("where");
        if (table is null)
        {
            json.WriteNullValue();
            return;
        }

        json.WriteStartObject();
        json.WriteNumber("pages", table.Pages);
        json.WriteString("from", table.From);
        if (table is { Taps: { } taps, Most: { } most, Found: { } found })
        {
            json.WriteNumber("taps", Math.Round(taps, 2));
            json.WriteNumber("most", most);
            json.WriteNumber("found", Math.Round(found, 4));
        }

        if (table.Wanted is { } wanted)
        {
            json.WriteStartObject("wanted");
            json.WriteNumber("taps", Math.Round(wanted.Taps, 2));
            json.WriteNumber("most", wanted.Most);
            json.WriteNumber("found", Math.Round(wanted.Found, 4));
            json.WriteEndObject();
        }

        json.WriteStartArray("one_by_one");
        foreach (var stage in table.OneByOne)
            json.WriteStringValue(JsonText.Whole(stage.Id.Value));
        json.WriteEndArray();
        json.WriteEndObject();
    }

    // Pages with one sign and nothing else to go by, each behind “none of these” of the one before.
    private static ImmutableArray<string> Longest(Whereabouts where)
    {
        var pages = where.Pages.ToDictionary(page => page.File, StringComparer.Ordinal);
        ImmutableArray<string> longest = [];
        foreach (var page in where.Pages)
        {
            var row = ImmutableArray.CreateBuilder<string>();
            for (var next = page; next is { Signs: [var sign], Lines.IsEmpty: true };)
            {
                row.Add(sign);
                if (next.None is WhereaboutsEnd.Stage(var last))
                    row.Add(last);
                next = next.None is WhereaboutsEnd.Page(var file) ? pages[file] : null;
            }

            if (row.Count > longest.Length && row.Count > 2)
                longest = row.ToImmutable();
        }

        return longest;
    }
}

/// <summary>How soon “Where am I?” finds the one step that is wanted of several that are open.</summary>
/// <param name="Taps">Taps on average, where it is found.</param>
/// <param name="Most">The most taps.</param>
/// <param name="Found">The share of a solver's time at which it is found, 0 to 1.</param>
public sealed record WantedTaps(double Taps, int Most, double Found);
