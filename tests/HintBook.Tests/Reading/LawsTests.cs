using System.Collections.Concurrent;
using System.Text;
using CsCheck;
using HintBook.Mechanism;
using HintBook.Text;

namespace HintBook.Tests.Reading;

/// <summary>What holds for every book, however it is written or spoilt.</summary>
public class LawsTests
{
    [Fact]
    public void The_example_is_read_and_surveyed_without_a_word()
    {
        using var book = ExampleCopy.Make();
        Assert.Empty(FindingsText.Write(book.Findings()));
    }

    [Fact]
    public void The_order_in_which_files_come_to_the_disk_changes_nothing()
    {
        using var first = ExampleCopy.Make();
        var (text, said) = (Plain.Of(first.Read().Book), FindingsText.Write(first.Findings(Little), withNotes: true));
        Gen.Shuffle(ExampleCopy.Texts).Sample(files =>
        {
            using var book = new BookOnDisk().Without("stages/01-the-lid.md");
            foreach (var (path, content) in files)
                book.With(path, content);
            foreach (var photo in Directory.EnumerateFiles(Path.Combine(first.Path, "photos")))
                book.With($"photos/{Path.GetFileName(photo)}", "");
            Assert.Equal(text, Plain.Of(book.Read().Book));
            Assert.Equal(said, FindingsText.Write(book.Findings(Little), withNotes: true));
        }, iter: 10, threads: 1);
    }

    [Fact]
    public void The_order_of_keys_changes_nothing()
    {
        using var book = ExampleCopy.Make();
        var text = Plain.Of(book.Read().Book);
        var said = Said(book);
        var keys = Blocks(ExampleCopy.Texts[0].Text);
        Gen.Shuffle(keys).Sample(shuffled =>
        {
            book.With("book.yaml", string.Concat(shuffled));
            Assert.Equal(text, Plain.Of(book.Read().Book));
            Assert.Equal(said, Said(book));
        }, iter: 25, threads: 1);
    }

    // A soak tries thousands.
    [Fact]
    public void However_a_book_is_spoilt_it_is_read_to_the_end()
    {
        var folders = new ConcurrentBag<BookOnDisk>();
        Spoilings.Sample(spoilings =>
        {
            if (!folders.TryTake(out var book))
                book = ExampleCopy.Make();
            foreach (var file in spoilings.GroupBy(spoiling => spoiling.File % ExampleCopy.Texts.Length))
            {
                var (path, text) = ExampleCopy.Texts[file.Key];
                book.With(path, file.Aggregate(Encoding.UTF8.GetBytes(text), (bytes, spoiling) => spoiling.Of(bytes)));
            }

            var findings = book.Findings(Little);
            Assert.Equal(Findings.Of(findings.All).All, findings.All);
            Assert.All(findings.All.SelectMany(finding => finding.Related.Select(related => related.At).Prepend(finding.At)), IsInItsFile);
            Assert.DoesNotContain('\0', FindingsText.Write(findings, withNotes: true));

            foreach (var (path, text) in spoilings.Select(spoiling => ExampleCopy.Texts[spoiling.File % ExampleCopy.Texts.Length]))
                book.With(path, text);
            folders.Add(book);
        }, iter: 300);
        foreach (var book in folders)
            book.Dispose();
    }

    // Whether the mechanism is proved is not what this is about.
    private static SolveLimits Little { get; } = new(1 << 18, TimeSpan.FromMinutes(1));

    private static readonly Gen<Spoiling> Spoils = Gen.Select(
        Gen.OneOf(Gen.Const(0), Gen.Int[0, 99]),
        Gen.Int[0, 9],
        Gen.Int[0, 1_000_000],
        Gen.Int[0, 1_000_000],
        (file, kind, at, with) => new Spoiling(file, kind, at, with));

    private static readonly Gen<Spoiling[]> Spoilings = Spoils.Array[1, 3];

    private static void IsInItsFile(Span span) =>
        Assert.True(span.Start >= 0 && span.Start <= span.End && span.End <= span.File.Text.Length, $"{span.File.Path}: {span.Start} to {span.End}");

    private static string[] Said(BookOnDisk book) =>
        [.. book.Findings(Little).All.Select(finding => $"{finding.Code.Id} {finding.At.File.Path} {finding.Message}").Order(StringComparer.Ordinal)];

    // The text cut before each line that begins with a key.
    private static string[] Blocks(string yaml)
    {
        var blocks = new List<StringBuilder> { new() };
        foreach (var line in yaml.TrimEnd('\n').Split('\n'))
        {
            if (line.Length > 0 && char.IsAsciiLetter(line[0]))
                blocks.Add(new());
            blocks[^1].Append(line).Append('\n');
        }

        return [.. blocks.Select(block => block.ToString())];
    }

    /// <summary>One way to spoil a file.</summary>
    private sealed record Spoiling(int File, int Kind, int At, int With)
    {
        private static readonly string[] Strange =
        [
            "\0", "\t", "\u0085", "\u2028", "\u200B", "\u202E", "\uFEFF", "\uFFFD", "\U0001F41D", "e\u0301",
            "'", "\"", "[", "]", "{", "}", ":", ": ", " #", "- ", "&a ", "*a", "!!str ", "%", "@", "|", ">",
            "---\n", "...\n", "# Nudge\n", "? ", "~", "\r", "\n", "[[[[", "<<: ",
        ];

        public byte[] Of(byte[] bytes)
        {
            if (bytes.Length == 0)
                return bytes;
            var at = At % bytes.Length;
            if (Kind == 0)
                return [.. bytes[..at], (byte)(bytes[at] ^ (1 << (With % 8))), .. bytes[(at + 1)..]];
            if (Kind == 1)
                return bytes[..at];
            if (Kind is 2 or 3)
                return [.. bytes[..at], .. Encoding.UTF8.GetBytes(Strange[With % Strange.Length]), .. bytes[at..]];
            var lines = Encoding.UTF8.GetString(bytes).Split('\n').ToList();
            var (line, other) = (At % lines.Count, With % lines.Count);
            switch (Kind)
            {
                case 4:
                    lines.RemoveAt(line);
                    break;
                case 5:
                    lines.Insert(other, lines[line]);
                    break;
                case 6:
                    (lines[line], lines[other]) = (lines[other], lines[line]);
                    break;
                case 7:
                    lines[line] = new string(' ', With % 9) + lines[line].TrimStart();
                    break;
                case 8:
                    lines[line] = "\t" + lines[line];
                    break;
                default:
                    var letter = lines[other].Trim() is { Length: > 0 } word ? word[..1] : " ";
                    lines[line] = lines[line].Replace(letter, Strange[At % Strange.Length], StringComparison.Ordinal);
                    break;
            }

            return Encoding.UTF8.GetBytes(string.Join('\n', lines));
        }
    }
}
