using System.Globalization;
using System.Text;

namespace HintBook.Cards.ReadingBack;

/// <summary>One instruction of a PDF page; operands of other kinds are passed over.</summary>
/// <param name="Operator">What is done.</param>
/// <param name="Numbers">Its numbers in order.</param>
/// <param name="Name">The last of its names, without the slash; null where it has none.</param>
internal readonly record struct Instruction(string Operator, double[] Numbers, string? Name = null);

/// <summary>Reads the instructions of a PDF page's content (ISO 32000-1, 7.2 and 7.8.2), as far as drawing without text needs them.</summary>
internal static class ContentStream
{
    /// <summary>The instructions in the order in which a viewer carries them out.</summary>
    /// <param name="content">The page's content, unpacked.</param>
    public static IEnumerable<Instruction> Read(byte[] content)
    {
        var numbers = new List<double>();
        string? name = null;
        for (var at = 0; at < content.Length;)
        {
            switch ((char)content[at])
            {
                case '(':
                    at = PastString(content, at);
                    break;
                case '<' when !(at + 1 < content.Length && content[at + 1] == '<'):
                    at = PastHex(content, at);
                    break;
                case '<':
                    at += 2;
                    break;
                case ')' or '>' or '[' or ']' or '{' or '}':
                    at++;
                    break;
                case '/':
                    var named = at + 1;
                    at = PastWord(content, named);
                    name = Encoding.Latin1.GetString(content, named, at - named);
                    break;
                case '%':
                    at = PastLine(content, at);
                    break;
                case var other when IsSpace(other):
                    at++;
                    break;
                default:
                    var end = PastWord(content, at);
                    var word = content.AsSpan(at, end - at);
                    at = end;
                    if (double.TryParse(word, NumberStyles.Float, CultureInfo.InvariantCulture, out var number))
                    {
                        numbers.Add(number);
                        break;
                    }

                    yield return new(Encoding.Latin1.GetString(word), [.. numbers], name);
                    numbers.Clear();
                    name = null;
                    break;
            }
        }
    }

    private static bool IsSpace(char letter) => letter is ' ' or '\n' or '\r' or '\t' or '\f' or '\0';

    private static bool EndsWord(char letter) => IsSpace(letter) || letter is '(' or ')' or '<' or '>' or '[' or ']' or '{' or '}' or '/' or '%';

    private static int PastWord(byte[] content, int at)
    {
        while (at < content.Length && !EndsWord((char)content[at]))
            at++;
        return at;
    }

    private static int PastHex(byte[] content, int at)
    {
        while (at < content.Length && content[at] != '>')
            at++;
        return at + 1;
    }

    private static int PastLine(byte[] content, int at)
    {
        while (at < content.Length && content[at] is not ((byte)'\n' or (byte)'\r'))
            at++;
        return at;
    }

    // Strings may hold balanced brackets and escaped ones.
    private static int PastString(byte[] content, int at)
    {
        var depth = 0;
        do
        {
            switch ((char)content[at++])
            {
                case '\\':
                    at++;
                    break;
                case '(':
                    depth++;
                    break;
                case ')':
                    depth--;
                    break;
            }
        }
        while (depth > 0 && at < content.Length);

        return at;
    }
}
