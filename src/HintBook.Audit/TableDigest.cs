using System.Collections;
using System.Collections.Immutable;
using System.Reflection;
using System.Runtime.CompilerServices;
using System.Security.Cryptography;

namespace HintBook.Audit;

/// <summary>
/// A digest of everything that a table says, so that what was found with it can be kept. It goes through the records property by property: what a
/// record gets later counts by itself, and a value of an unknown kind is refused.
/// </summary>
internal static class TableDigest
{
    private static readonly Type[] Unordered = [typeof(ImmutableDictionary<,>), typeof(ImmutableHashSet<>)];

    /// <summary>The digest, the same for equal tables however they were put together.</summary>
    /// <exception cref="ArgumentException">The table has a value that has no digest.</exception>
    public static byte[] Of(AuditTable table) => Of(table, []);

    private static byte[] Of(object value, Dictionary<Type, PropertyInfo[]> known)
    {
        using var all = new MemoryStream();
        using var input = new BinaryWriter(all);
        Write(input, value, known);
        return SHA256.HashData(all.GetBuffer().AsSpan(0, (int)all.Length));
    }

    private static void Write(BinaryWriter input, object? value, Dictionary<Type, PropertyInfo[]> known)
    {
        input.Write(value is not null);
        switch (value)
        {
            case null:
                break;
            case string text:
                input.Write(text);
                break;
            case bool or int or double or TimeSpan or Enum:
                input.Write(NumberOf(value));
                break;
            case BitArray bits:
                var bytes = new byte[(bits.Length + 7) / 8];
                bits.CopyTo(bytes, 0);
                input.Write(bits.Length);
                input.Write(bytes);
                break;
            case ITuple tuple:
                for (var i = 0; i < tuple.Length; i++)
                    Write(input, tuple[i], known);
                break;
            case IEnumerable many when value.GetType() is { IsGenericType: true } type && Unordered.Contains(type.GetGenericTypeDefinition()):
                var digests = many.Cast<object>().Select(each => Convert.ToHexStringLower(Of(each, known))).Order(StringComparer.Ordinal).ToArray();
                input.Write(digests.Length);
                input.Write(string.Concat(digests));
                break;
            case IEnumerable many:
                object?[] items = [.. many.Cast<object?>()];
                input.Write(items.Length);
                foreach (var item in items)
                    Write(input, item, known);
                break;
            default:
                foreach (var property in PropertiesOf(value.GetType(), known))
                    Write(input, property.GetValue(value), known);
                break;
        }
    }

    private static long NumberOf(object value) => value switch
    {
        double number => BitConverter.DoubleToInt64Bits(number),
        TimeSpan time => time.Ticks,
        _ => Convert.ToInt64(value, System.Globalization.CultureInfo.InvariantCulture),
    };

    // What follows from the others can't be set.
    private static PropertyInfo[] PropertiesOf(Type type, Dictionary<Type, PropertyInfo[]> known)
    {
        if (known.TryGetValue(type, out var properties))
            return properties;
        var isPair = type.IsGenericType && type.GetGenericTypeDefinition() == typeof(KeyValuePair<,>);
        if (!isPair && type.Assembly != typeof(TableDigest).Assembly)
            throw new ArgumentException($"A {type.Name} in a table has no digest.", nameof(type));
        return known[type] =
            [.. type.GetProperties().Where(property => isPair || property.CanWrite).OrderBy(property => property.Name, StringComparer.Ordinal)];
    }
}
