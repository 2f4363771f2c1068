using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace HintBook.Publishing.Unchanged;

/// <summary>What a publish told, so that it can be told again.</summary>
/// <param name="Report">The report of the book or of the shelf.</param>
/// <param name="Books">The reports of the books on a shelf by their folders, in the order in which they were told; none for a book by itself.</param>
internal sealed record KeptOutcome(Report Report, ImmutableArray<BookOnShelf> Books)
{
    /// <summary>Reads what <see cref="Write"/> wrote; null for anything else.</summary>
    public static KeptOutcome? Read(byte[] written)
    {
        try
        {
            return JsonSerializer.Deserialize(written, KeptOutcomeJson.Default.KeptOutcome) is { Report: not null, Books.IsDefault: false } read ? read : null;
        }
        catch (Exception failure) when (failure is JsonException or ArgumentException or InvalidOperationException)
        {
            return null;
        }
    }

    /// <summary>The outcome as it is kept.</summary>
    public byte[] Write() => JsonSerializer.SerializeToUtf8Bytes(this, KeptOutcomeJson.Default.KeptOutcome);

    /// <summary>The same, told again: nothing of it was made, developed, cut or read now.</summary>
    /// <param name="compared">What was compared instead.</param>
    public KeptOutcome Again(Compared compared) => new(Again(Report, compared), [.. Books.Select(book => book with { Report = Again(book.Report, compared) })]);

    private static Report Again(Report report, Compared compared) => report with
    {
        Unchanged = compared,
        Developed = 0,
        Clips = report.Clips with { Now = 0 },
        Cards = report.Cards with { KeptFromPictures = report.Cards.FromPictures, KeptFromPdf = report.Cards.FromPdf },
        Print = report.Print with { Kept = report.Print.Files },
        Moved = report.Moved.WithComparers(StringComparer.Ordinal),
    };
}

/// <summary>What was told of a book on a shelf.</summary>
/// <param name="Name">The name of its folder.</param>
/// <param name="Report">Its report.</param>
internal sealed record BookOnShelf(string Name, Report Report);

/// <summary>Reads and writes kept outcomes by code that is made while the program is built, so that nothing is looked up when it starts.</summary>
[JsonSourceGenerationOptions(
    IgnoreReadOnlyProperties = true, NumberHandling = JsonNumberHandling.AllowNamedFloatingPointLiterals, Converters = [typeof(KeptFindings)])]
[JsonSerializable(typeof(KeptOutcome))]
internal sealed partial class KeptOutcomeJson : JsonSerializerContext;
