using HintBook.Text;

namespace HintBook.Publishing.Visits;

/// <summary>What a visit found, for programs.</summary>
public static class VisitJson
{
    /// <summary>The report as JSON.</summary>
    public static string Write(VisitReport report) => JsonText.Write(json =>
    {
        json.WriteStartObject();
        json.WriteString("base", report.Base.AbsoluteUri);
        json.WriteNumber("asked", report.Asked);
        json.WriteNumber("of", report.Of);
        json.WriteNumber("bytes", report.Bytes);
        json.WriteString("ended", report.Ended);
        json.WriteStartArray("faults");
        foreach (var fault in report.Faults)
        {
            json.WriteStartObject();
            json.WriteString("address", fault.Address.AbsoluteUri);
            json.WriteString("card", fault.Card is { } card ? JsonText.Whole(card) : null);
            json.WriteString("message", JsonText.Whole(fault.Message));
            json.WriteString("help", JsonText.Whole(fault.Help));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    });
}
