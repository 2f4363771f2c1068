using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Json;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Sittings;

/// <summary>Which stages the letters of owners are about.</summary>
/// <param name="Count">How many letters were noted.</param>
/// <param name="Stages">The stages that letters are about, those with the most first.</param>
/// <param name="Elsewhere">How many are about no stage of the book.</param>
public sealed record BoxLetters(int Count, ImmutableArray<StageLetters> Stages, int Elsewhere)
{
    /// <summary>What the letters of a book tell.</summary>
    /// <param name="book">The book.</param>
    /// <param name="addresses">Which stage a page is of.</param>
    public static BoxLetters Of(Book book, Addresses addresses)
    {
        var stageOf = addresses.Names.SelectMany(stage => stage.Value.Select(page => (page, stage.Key))).ToDictionary(each => each.page, each => each.Key);
        var about = book.Letters.Select(letter => stageOf.GetValueOrDefault(letter.Page)).OfType<string>().CountBy(id => id).ToDictionary();
        ImmutableArray<StageLetters> stages =
        [
            .. from stage in book.Stages
               where about.ContainsKey(stage.Id.Value)
               let letters = new Proportion(about[stage.Id.Value], book.Letters.Length)
               orderby letters.Did descending
               select new StageLetters(stage, letters, letters.Did >= StageLetters.Enough && letters.Bounds.Low > 1.0 / book.Stages.Length),
        ];
        return new(book.Letters.Length, stages, book.Letters.Length - about.Values.Sum());
    }

    /// <summary>The same for people; nothing where no letter was noted.</summary>
    public string ToText()
    {
        if (Count == 0)
            return "";
        var text = new StringBuilder($"\n{Words.Count(Count, "letter")} of owners noted:\n");
        foreach (var (stage, letters, isMore) in Stages)
        {
            var (low, high) = letters.Bounds;
            text.Append(CultureInfo.InvariantCulture, $"  “{stage.Title}”: {letters.Did} of {letters.Of}; ")
                .Append(CultureInfo.InvariantCulture, $"of all letters between {100 * low:0} % and {100 * high:0} %")
                .Append(isMore ? "; more than its share: its nudge doesn't help\n" : "\n");
        }

        return Elsewhere == 0 ? text.ToString() : text.Append(CultureInfo.InvariantCulture, $"  about no stage of the book: {Elsewhere}\n").ToString();
    }

    /// <summary><c>{"count","stages":[{"id","did","of","low","high","moreThanItsShare"}],"elsewhere"}</c>.</summary>
    internal void WriteTo(Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteNumber("count", Count);
        json.WriteStartArray("stages");
        foreach (var (stage, letters, isMore) in Stages)
        {
            json.WriteStartObject();
            json.WriteString("id", stage.Id.Value);
            json.WriteNumber("did", letters.Did);
            json.WriteNumber("of", letters.Of);
            json.WriteNumber("low", letters.Bounds.Low);
            json.WriteNumber("high", letters.Bounds.High);
            json.WriteBoolean("moreThanItsShare", isMore);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteNumber("elsewhere", Elsewhere);
        json.WriteEndObject();
    }
}

/// <summary>How many letters are about a stage.</summary>
/// <param name="Stage">The stage.</param>
/// <param name="Letters">Of all letters those about it.</param>
/// <param name="IsMoreThanItsShare">
/// Whether it is surely more than if owners asked about all stages alike: there are three at least, and the lower bound lies above that share.
/// </param>
public sealed record StageLetters(Stage Stage, Proportion Letters, bool IsMoreThanItsShare)
{
    internal const int Enough = 3;
}
