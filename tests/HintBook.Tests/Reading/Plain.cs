using System.Collections;
using System.Reflection;
using System.Text;
using HintBook.Text;

namespace HintBook.Tests.Reading;

/// <summary>Any value as text, all of it but the places where it was written: two books of one text are the same book.</summary>
internal static class Plain
{
    public static string Of(object? value)
    {
        var text = new StringBuilder();
        Write(text, value);
        return text.ToString();
    }

    private static void Write(StringBuilder text, object? value)
    {
        switch (value)
        {
            case null or Span or SourceFile:
                return;
            case string or bool or int or double or Enum or TimeSpan:
                text.Append(value).Append('\n');
                return;
            case IEnumerable all:
                foreach (var one in all)
                    Write(text, one);
                return;
        }

        var properties = value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(property => property.GetIndexParameters().Length == 0)
            .OrderBy(property => property.Name, StringComparer.Ordinal);
        foreach (var property in properties)
        {
            text.Append(property.Name).Append(": ");
            Write(text, property.GetValue(value));
        }
    }
}
