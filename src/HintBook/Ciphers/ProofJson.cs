using System.Text.Json;
using HintBook.Text;

namespace HintBook.Ciphers;

/// <summary>Writes what <c>prove</c> prints with <c>--format json</c>.</summary>
public static class ProofJson
{
    /// <summary>
    /// <c>{"codes":[{"id","answer","verdict","why","steps":[{"way","from","pieces":[{"read","gives"}],"story":[…],"to"}],
    /// "others":[{"setting","how","likely","ruledOut"}],"copies":[…]}]}</c>,
    /// indented, ended by <c>\n</c>. <c>verdict</c> is <c>proved</c>, <c>refuted</c> or <c>not proved</c>; <c>why</c> is null where it is proved,
    /// <c>ruledOut</c> where the author hasn't answered. Where a code differs by copy, <c>answer</c> is null and <c>copies</c> has the same for each,
    /// with its <c>serial</c>; otherwise <c>copies</c> is empty.
    /// </summary>
    public static string Write(Proofs proofs) => JsonText.Write(json =>
    {
        json.WriteStartObject();
        json.WriteStartArray("codes");
        foreach (var proof in proofs.Codes)
            One(json, proof, null);
        json.WriteEndArray();
        json.WriteEndObject();
    });

    private static void One(Utf8JsonWriter json, Proof proof, string? serial)
    {
        json.WriteStartObject();
        if (serial is not null)
            Text(json, "serial", serial);
        Text(json, "id", proof.Code.Id.Value);
        Text(json, "answer", proof.Says is Verdict.ByCopy ? null : proof.Code.Answer.Value);
        Text(json, "verdict", proof.Says.Word);
        Text(json, "why", proof.Says switch
        {
            Verdict.Refuted refuted => refuted.Finding.Message,
            Verdict.NotProved open => open.Why,
            _ => null,
        });
        json.WriteStartArray("steps");
        foreach (var step in proof.Steps)
        {
            json.WriteStartObject();
            Text(json, "way", step.Way);
            Text(json, "from", step.From);
            json.WriteStartArray("pieces");
            foreach (var row in step.Rows)
            {
                json.WriteStartObject();
                Text(json, "read", row.Read);
                Text(json, "gives", row.Gives);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            Text(json, "to", step.To);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("others");
        foreach (var other in proof.Others)
        {
            json.WriteStartObject();
            Text(json, "setting", other.Setting);
            Text(json, "how", other.How);
            json.WriteBoolean("likely", other.Likely);
            Text(json, "ruledOut", other.RuledOut);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("copies");
        foreach (var copy in proof.Says is Verdict.ByCopy(var copies) ? copies : [])
            One(json, copy.Proof, copy.Copy.Serial.Value);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Text(Utf8JsonWriter json, string name, string? text) => json.WriteString(name, text is null ? null : JsonText.Whole(text));
}
