using System.Collections.Immutable;
using System.Text.Json;
using HintBook.Books;
using HintBook.Text;

namespace HintBook.Mechanism.Tours;

/// <summary>What <c>testwalk --format json</c> prints for programs.</summary>
public static class TestWalkJson
{
    /// <summary>The walk.</summary>
    /// <param name="book">The book, for one copy or for all.</param>
    /// <param name="walk">The walk.</param>
    /// <param name="serial">The copy that it is for; null for all.</param>
    public static string Write(Book book, TestWalk walk, string? serial) => JsonText.Write(json =>
    {
        json.WriteStartObject();
        var known = new WalkStepBook(book);
        var (word, says) = TestWalkText.Told(walk.Length);
        json.WriteString("copy", serial);
        json.WriteStartObject("length");
        json.WriteNumber("handlings", walk.Steps.Length);
        json.WriteString("status", word);
        json.WriteString("reason", says);
        if (walk.Length is WalkLength.AtMostLonger open)
            json.WriteNumber("bound", open.Least);
        json.WriteEndObject();
        json.WriteBoolean("ends-as-shipped", walk.EndsOpen is null && !walk.Steps.IsEmpty);
        json.WriteStartObject("tests");
        json.WriteNumber("moves", walk.Moves);
        json.WriteNumber("positions", walk.Positions);
        json.WriteNumber("reactions", walk.Reactions);
        json.WriteNumber("refusals", walk.Refusals);
        json.WriteEndObject();
        json.WriteStartArray("steps");
        foreach (var step in walk.Steps)
            Write(json, known, step);
        json.WriteEndArray();
        Names(json, "fresh", walk.Fresh);
        json.WriteStartArray("left-out");
        foreach (var left in walk.LeftOut)
        {
            json.WriteStartObject();
            json.WriteString("what", left.What);
            Names(json, "not-so", Asked(left.Lacks));
            json.WriteString("why", left.Why);
            json.WriteBoolean("proved", left.IsProved);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    });

    private static void Write(Utf8JsonWriter json, WalkStepBook book, WalkStep step)
    {
        json.WriteStartObject();
        json.WriteString("says", step.Step.Says);
        json.WriteString("stage", step.Step.Stage);
        json.WriteBoolean("must-hold", step.MustHold);
        json.WriteBoolean("tests", step.Tests);
        Names(json, "not-so", Asked(step.Lacks));
        json.WriteStartObject("codes");
        foreach (var code in book.CodesOf(step.Step))
            json.WriteString(code.Id.Value, code.Answer.Value);
        json.WriteEndObject();
        Places(json, "by-hand", step.ByHand);
        Places(json, "by-itself", step.ByItself);
        json.WriteEndObject();
    }

    private static IEnumerable<string> Asked(ImmutableArray<Condition> conditions) => WalkStepBook.Flat(conditions)
        .Select(one => one.Positions.IsEmpty ? one.Name.Value : $"{one.Name.Value}: {string.Join('/', one.Positions.Select(position => position.Value))}");

    private static void Places(Utf8JsonWriter json, string name, ImmutableArray<Placed> places)
    {
        json.WriteStartObject(name);
        foreach (var placed in places)
            json.WriteString(placed.Name, placed.Position);
        json.WriteEndObject();
    }

    private static void Names(Utf8JsonWriter json, string name, IEnumerable<string> names)
    {
        json.WriteStartArray(name);
        foreach (var one in names)
            json.WriteStringValue(one);
        json.WriteEndArray();
    }
}
