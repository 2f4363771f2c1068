using System.Text.Json;
using HintBook.Text;

namespace HintBook.Sittings;

/// <summary>What sittings tell, for other programs.</summary>
public static class SittingsJson
{
    /// <summary>
    /// <c>{"people", "stages":[{"id","title","people","minutes":{"count","median","quarter","threeQuarters","low","high"},"nudge","clue","answer","gaveUp":
    /// {"did","of","low","high"},"remarks"}], "whole":{"seed","runs","alone","together":{"tenth","half","nineTenths"},"mean","deviation","chain",
    /// "critical":[{"id","share"}]}, "letters"}</c>, the last as <see cref="BoxLetters"/> writes it.
    /// Minutes are minutes, shares lie between 0 and 1; what isn't known is null.
    /// </summary>
    /// <param name="sittings">What the sittings of a book tell.</param>
    /// <param name="letters">What its letters tell.</param>
    public static string Write(BoxSittings sittings, BoxLetters letters) => JsonText.Write(json =>
    {
        json.WriteStartObject();
        json.WriteNumber("people", sittings.People);
        json.WriteStartArray("stages");
        foreach (var each in sittings.Stages)
            Stage(json, each);
        json.WriteEndArray();
        json.WritePropertyName("whole");
        Whole(json, sittings);
        json.WritePropertyName("letters");
        letters.WriteTo(json);
        json.WriteEndObject();
    });

    private static void Stage(Utf8JsonWriter json, StageSittings each)
    {
        json.WriteStartObject();
        json.WriteString("id", each.Stage.Id.Value);
        json.WriteString("title", JsonText.Whole(each.Stage.Title.Value));
        json.WriteNumber("people", each.People);
        json.WritePropertyName("minutes");
        if (each.Minutes is { } minutes)
        {
            json.WriteStartObject();
            json.WriteNumber("count", minutes.Count);
            json.WriteNumber("median", minutes.Median);
            json.WriteNumber("quarter", minutes.Quarter);
            json.WriteNumber("threeQuarters", minutes.ThreeQuarters);
            Number(json, "low", minutes.Bounds?.Low);
            Number(json, "high", minutes.Bounds?.High);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNullValue();
        }

        Share(json, "nudge", each.TookNudge);
        Share(json, "clue", each.WentOnToClue);
        Share(json, "answer", each.WentOnToAnswer);
        Share(json, "gaveUp", each.GaveUp);
        json.WriteStartArray("remarks");
        foreach (var remark in each.Remarks)
            json.WriteStringValue(JsonText.Whole(remark));
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Whole(Utf8JsonWriter json, BoxSittings sittings)
    {
        if (sittings.Whole is not { } whole)
        {
            json.WriteNullValue();
            return;
        }

        json.WriteStartObject();
        json.WriteNumber("seed", WholeBox.Seed);
        json.WriteNumber("runs", whole.Runs);
        Percentiles(json, "alone", whole.Alone);
        Percentiles(json, "together", whole.Together);
        json.WriteNumber("mean", whole.Expected.Mean);
        json.WriteNumber("deviation", whole.Expected.Deviation);
        json.WriteStartArray("chain");
        foreach (var number in whole.Chain)
            json.WriteStringValue(sittings.Way[number].Stage.Id.Value);
        json.WriteEndArray();
        json.WriteStartArray("critical");
        foreach (var (stage, share) in sittings.Way.Zip(whole.Critical))
        {
            json.WriteStartObject();
            json.WriteString("id", stage.Stage.Id.Value);
            json.WriteNumber("share", share);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Percentiles(Utf8JsonWriter json, string name, (double Tenth, double Half, double NineTenths) minutes)
    {
        json.WriteStartObject(name);
        json.WriteNumber("tenth", minutes.Tenth);
        json.WriteNumber("half", minutes.Half);
        json.WriteNumber("nineTenths", minutes.NineTenths);
        json.WriteEndObject();
    }

    private static void Share(Utf8JsonWriter json, string name, Proportion proportion)
    {
        var (low, high) = proportion.Bounds;
        json.WriteStartObject(name);
        json.WriteNumber("did", proportion.Did);
        json.WriteNumber("of", proportion.Of);
        json.WriteNumber("low", low);
        json.WriteNumber("high", high);
        json.WriteEndObject();
    }

    private static void Number(Utf8JsonWriter json, string name, double? number)
    {
        if (number is { } known)
            json.WriteNumber(name, known);
        else
            json.WriteNull(name);
    }
}
