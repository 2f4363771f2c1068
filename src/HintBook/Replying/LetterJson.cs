using HintBook.Text;

namespace HintBook.Replying;

/// <summary>A letter for other programs.</summary>
public static class LetterJson
{
    /// <summary>
    /// <c>{"language","subject","page","stage","step","copy","text","parts":[{"kind","text"}]}</c>; what isn't known is null.
    /// </summary>
    /// <param name="letter">The letter.</param>
    public static string Write(Letter letter) => JsonText.Write(json =>
    {
        json.WriteStartObject();
        json.WriteString("language", letter.Language);
        json.WriteString("subject", JsonText.Whole(letter.Subject));
        json.WriteString("page", letter.Page);
        json.WriteString("stage", letter.Stage);
        json.WriteString("step", letter.Step is { } step ? LetterSteps.NameOf(step) : null);
        json.WriteString("copy", letter.Serial is { } serial ? JsonText.Whole(serial) : null);
        json.WriteString("text", JsonText.Whole(letter.Text));
        json.WriteStartArray("parts");
        foreach (var part in letter.Parts)
        {
            json.WriteStartObject();
            json.WriteString("kind", part.Kind.ToString().ToLowerInvariant());
            json.WriteString("text", JsonText.Whole(part.Text));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    });
}
