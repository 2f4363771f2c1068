using System.Globalization;
using System.Numerics;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace HintBook.Mechanism;

/// <summary>Writes what <c>solve</c> and <c>reset</c> print with <c>--format json</c>.</summary>
public static class SolutionJson
{
    private static readonly JsonWriterOptions Options = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>A solution.</summary>
    public static string Write(Solution solution) => Written(json =>
    {
        json.WriteString("opens", solution.Opens.Word);
        Moves(json, "shortest", solution.Opens is Claim.Proved proved ? proved.Way : []);
        json.WriteStartArray("stages");
        foreach (var stage in solution.Stages)
        {
            json.WriteStartObject();
            json.WriteString("id", stage.Id);
            json.WriteString("reachable", stage.Reachable.Word);
            Names(json, "certainBefore", stage.CertainBefore);
            Names(json, "facts", stage.Facts);
            json.WriteBoolean("exact", stage.Exact);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("deadEnds");
        foreach (var path in solution.DeadEnds)
        {
            json.WriteStartObject();
            Moves(json, "path", path);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("shortcuts");
        foreach (var shortcut in solution.Shortcuts)
        {
            json.WriteStartObject();
            json.WriteString("without", shortcut.Without);
            Moves(json, "path", shortcut.Path);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("byTrying");
        foreach (var trying in solution.ByTrying)
        {
            json.WriteStartObject();
            json.WriteString("lock", trying.Lock);
            json.WritePropertyName("settings");
            json.WriteRawValue(trying.Settings.ToString());
            json.WriteNumber("seconds", trying.Seconds);
            Names(json, "skips", trying.Skips);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Names(json, "bottlenecks", solution.Bottlenecks);
        json.WriteStartObject("widest");
        json.WriteNumber("count", solution.Widest.Count);
        Names(json, "stages", solution.Widest.Stages);
        json.WriteEndObject();
        json.WriteString("orders", solution.Orders.ToString());
        if (solution.BoxStates is { } states)
            json.WriteNumber("states", states);
        else
            json.WriteNull("states");
        json.WriteNumber("looked", solution.States);
        json.WriteString("explored", solution.Explored);
        json.WriteStartObject("claims");
        Claimed(json, "opens", solution.Opens);
        Claimed(json, "shortest", solution.Shortest, solution.AtLeast);
        Claimed(json, "noDeadEnds", solution.NoDeadEnds);
        Claimed(json, "noOtherShortcuts", solution.NoOtherShortcuts);
        Claimed(json, "widest", Counted(solution.Widest.Exact, "not all states were told apart; at least so many are open at once"), solution.Widest.Count);
        Claimed(json, "orders", Counted(solution.Orders.Exact, "they were too many to count; there are at least so many"), solution.Orders.Count);
        json.WriteEndObject();
        json.WriteNumber("seconds", Math.Round(solution.Seconds, 3));
    });

    /// <summary>A reset plan.</summary>
    public static string Write(ResetPlan plan) => Written(json =>
    {
        json.WriteString("possible", plan.Possible.Word);
        Moves(json, "plan", plan.Plan);
        Names(json, "replaces", plan.Replaces);
        json.WriteNumber("bound", plan.Bound);
        json.WriteStartObject("claims");
        Claimed(json, "reset", plan.Possible, plan.Bound);
        json.WriteEndObject();
    });

    private static Claim Counted(bool exact, string why) => exact ? new Claim.Proved([]) : new Claim.NotProved(why);

    private static void Claimed(Utf8JsonWriter json, string name, Claim claim, BigInteger? bound = null)
    {
        json.WriteStartObject(name);
        json.WriteString("status", claim.Word);
        json.WriteString("reason", claim switch { Claim.Refuted refuted => refuted.Why, Claim.NotProved open => open.Why, _ => null });
        if (bound is { } number)
        {
            json.WritePropertyName("bound");
            json.WriteRawValue(number.ToString(CultureInfo.InvariantCulture));
        }

        json.WriteEndObject();
    }

    private static string Written(Action<Utf8JsonWriter> fill)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, Options))
        {
            json.WriteStartObject();
            fill(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.ToArray()) + "\n";
    }

    private static void Moves(Utf8JsonWriter json, string name, IEnumerable<Step> way) => Names(json, name, way.Select(step => step.Says));

    private static void Names(Utf8JsonWriter json, string name, IEnumerable<string> names)
    {
        json.WriteStartArray(name);
        foreach (var one in names)
            json.WriteStringValue(one);
        json.WriteEndArray();
    }
}
