using System.Collections.Immutable;
using System.Reflection;

namespace HintBook.Text;

/// <summary>Every kind of finding there is.</summary>
public static class FindingCodes
{
    private static readonly Lazy<ImmutableArray<FindingCode>> Found = new(Find);

    /// <summary>
    /// All codes in the order of their numbers. Each is declared beside its check, as a static field; they are looked for by
    /// reflection when first asked for, so that no list can lack one. Nothing that checks or publishes a book asks.
    /// </summary>
    public static ImmutableArray<FindingCode> All => Found.Value;

    /// <summary>The code of a number in any case, such as <c>hb2101</c>; null if there is none.</summary>
    public static FindingCode? Of(string id) => All.FirstOrDefault(code => code.Id.Equals(id, StringComparison.OrdinalIgnoreCase));

    private static ImmutableArray<FindingCode> Find() =>
    [
        .. typeof(FindingCodes).Assembly.GetTypes()
            .Where(type => !type.ContainsGenericParameters)
            .SelectMany(type => type.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly))
            .Where(field => field.FieldType == typeof(FindingCode))
            .Select(field => field.GetValue(null))
            .OfType<FindingCode>()
            .OrderBy(code => code.Id, StringComparer.Ordinal),
    ];
}
