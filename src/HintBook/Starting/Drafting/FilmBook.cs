using System.Collections.Immutable;
using System.Text;
using HintBook.Reading;
using HintBook.Reading.Yaml;

namespace HintBook.Starting.Drafting;

/// <summary>A new book that begins with its film.</summary>
public static class FilmBook
{
    private const string Goal = "goal";

    /// <summary>Its files by path inside the book, but for the film: <c>book.yaml</c>, the stages, the captions as WebVTT, and the schemas.</summary>
    /// <param name="film">The film's file name.</param>
    /// <param name="language">The language of what is said, as a BCP 47 tag.</param>
    /// <param name="said">What is said, in the order of time.</param>
    /// <param name="steps">The steps of the film.</param>
    public static (ImmutableArray<(string Path, string Text)> Files, ImmutableArray<DraftedStage> Stages, ImmutableArray<NamedThing> Things) Of(
        string film, string language, ImmutableArray<Said> said, ImmutableArray<FilmStep> steps)
    {
        var name = Path.GetFileNameWithoutExtension(film);
        var keys = Keys(film, name, language);
        var (stages, things) = FilmDraft.Of([], language, [], steps, film, filmIsElsewhere: false);
        stages = stages.SetItem(stages.Length - 1, stages[^1] with { Keys = [$"gives: [ {Goal} ]", $"undo: {{ put-back: [ {Goal} ] }}"] });
        return (
            [
                ("book.yaml", keys),
                .. stages.Select(stage => (stage.Path, stage.Text())),
                ($"clips/{name}.{language}.vtt", WebVttOf(said)),
                .. Schemas.All.Select(schema => ($"schemas/{schema.Name}", schema.Text)),
            ],
            stages,
            things);
    }

    private static string Keys(string film, string name, string language) =>
        $"""
        # yaml-language-server: $schema=./schemas/book.schema.json
        #
        # Drafted from clips/{film}. The files in “stages” hold what is said in it, step by step; “hintbook guide” shows how to write
        # what a box is made of, and “hintbook check” says what is still to write.
        format: 2
        title: {Quoting.Escaped(name.Replace('-', ' ').Replace('_', ' '))}
        language: {language}
        maker: {"{ name: My Workshop }"}

        # Where the pages will live once they are on the web. The QR cards carry it, so choose it before you print.
        # address: https://my-workshop.example/my-box/

        # What the solver has in the end.
        goal: [ {Goal} ]
        things:
          {Goal}: {"{ name: the last find }"}

        """;

    // W3C WebVTT, section 4.1.
    private static string WebVttOf(ImmutableArray<Said> said)
    {
        var text = new StringBuilder("WEBVTT\n");
        foreach (var each in said)
        {
            var words = each.Text.Replace("&", "&amp;", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal)
                .Replace(">", "&gt;", StringComparison.Ordinal);
            text.Append($"\n{each.From:hh\\:mm\\:ss\\.fff} --> {each.To:hh\\:mm\\:ss\\.fff}\n{words}\n");
        }

        return text.ToString();
    }
}
