using HintBook.Reading.Editing;
using HintBook.Tests.Reading;
using HintBook.Workbench.Showing;

namespace HintBook.Tests.Workbench;

/// <summary>Photos, marks and clips that are written into a stage's text, whatever it looks like already.</summary>
public sealed class StageShowTests
{
    private const string Body = "# Nudge\nLook up.\n";

    public static TheoryData<string, string> Added => new()
    {
        { "title: x\n", "title: x\nphotos: { clue: new.jpg }\n" },
        { "title: x # mine\nphotos:\n# below\n", "title: x # mine\nphotos: { clue: new.jpg }\n# below\n" },
        { "photos: { answer: a.jpg } # both\ntitle: x\n", "photos: { answer: a.jpg, clue: new.jpg } # both\ntitle: x\n" },
        { "photos: {}\n", "photos: { clue: new.jpg }\n" },
        { "photos: { clue: a.jpg }\n", "photos: { clue: [ a.jpg, new.jpg ] }\n" },
        { "photos: { clue: { file: a.jpg, alt: a lid } }\n", "photos: { clue: [ { file: a.jpg, alt: a lid }, new.jpg ] }\n" },
        { "photos: { clue: [ a.jpg ] }\n", "photos: { clue: [ a.jpg, new.jpg ] }\n" },
        { "photos:\n  answer: a.jpg # late\ntitle: x\n", "photos:\n  answer: a.jpg # late\n  clue: new.jpg\ntitle: x\n" },
        { "photos:\n    clue: a.jpg # early\n", "photos:\n    clue: [ a.jpg, new.jpg ] # early\n" },
        { "photos:\n  clue:\n    - a.jpg # one\n    - b.jpg\n", "photos:\n  clue:\n    - a.jpg # one\n    - b.jpg\n    - new.jpg\n" },
        {
            "photos:\n  clue:\n    file: a.jpg\n    marks:\n      - { at: [ 1, 2 ], says: here }\n  answer: b.jpg\n",
            "photos:\n  clue: [ { file: a.jpg, marks: [ { at: [ 1, 2 ], says: here } ] }, new.jpg ]\n  answer: b.jpg\n"
        },
    };

    public static TheoryData<string, string> Marked => new()
    {
        { "photos: { clue: a.jpg }\n", "photos: { clue: { file: a.jpg, alt: The lid., marks: [ { at: [ 41, 63.5 ], says: the catch } ] } }\n" },
        {
            "photos:\n  clue: { file: a.jpg, shows: [ lid ] } # kept\n",
            "photos:\n  clue: { file: a.jpg, shows: [ lid ], alt: The lid., marks: [ { at: [ 41, 63.5 ], says: the catch } ] } # kept\n"
        },
        {
            "photos:\n  clue:\n    file: a.jpg\n    # a remark\n    alt: Something else.\n",
            "photos:\n  clue:\n    file: a.jpg\n    # a remark\n    alt: The lid.\n    marks: [ { at: [ 41, 63.5 ], says: the catch } ]\n"
        },
        {
            "photos:\n  clue:\n    - file: a.jpg\n      marks:\n        - at: [ 1, 2 ]\n          says: here\n      alt: The lid.\n",
            "photos:\n  clue:\n    - file: a.jpg\n      marks:\n        - at: [ 41, 63.5 ]\n          says: the catch\n      alt: The lid.\n"
        },
    };

    public static TheoryData<string, string> Filmed => new()
    {
        { "title: x\n", "title: x\nclip: { file: solution.mp4, from: 2:16, to: 3:03.5 }\n" },
        { "clip: { from: 1:00 } # the drawer\n", "clip: { from: 2:16, file: solution.mp4, to: 3:03.5 } # the drawer\n" },
        { "clip:\n  file: solution.mp4\n  from: 0:01 # early\n", "clip:\n  file: solution.mp4\n  from: 2:16 # early\n  to: 3:03.5\n" },
    };

    [Theory]
    [MemberData(nameof(Added))]
    public void A_photo_is_added_and_all_else_stays_as_it_is_written(string keys, string expected)
    {
        var edited = Read(keys).Add(new("clue", 0, "new.jpg", null, []));

        Assert.Equal(With(expected), Text(edited));
    }

    [Fact]
    public void Words_for_a_photo_are_quoted_where_yaml_would_read_more_into_them()
    {
        var edited = Read("title: x\n").Add(new("clue", 0, "new.jpg", "A card: “4 # 2”, \"open\"", []));

        Assert.Equal(With("title: x\nphotos: { clue: { file: new.jpg, alt: \"A card: “4 # 2”, \\\"open\\\"\" } }\n"), Text(edited));
    }

    [Theory]
    [MemberData(nameof(Marked))]
    public void Words_and_marks_are_written_into_the_photos_entry(string keys, string expected)
    {
        var stage = Read(keys);
        var was = Assert.Single(stage.Photos);

        var edited = stage.Change(was, was with { Alt = "The lid.", Marks = [new(41, 63.5, "the catch")] });

        Assert.Equal(With(expected), Text(edited));
    }

    [Theory]
    [InlineData("photos: { clue: { file: a.jpg, marks: [ { at: [ 1, 2 ], says: here } ] } }\n", "photos: { clue: { file: a.jpg } }\n")]
    [InlineData("photos: { clue: { marks: [ { at: [ 1, 2 ], says: here } ], file: a.jpg } }\n", "photos: { clue: { file: a.jpg } }\n")]
    [InlineData("photos:\n  clue:\n    file: a.jpg\n    marks:\n      - { at: [ 1, 2 ], says: here }\n", "photos:\n  clue:\n    file: a.jpg\n")]
    public void The_last_mark_takes_its_key_with_it(string keys, string expected)
    {
        var stage = Read(keys);
        var was = Assert.Single(stage.Photos);

        Assert.Equal(With(expected), Text(stage.Change(was, was with { Marks = [] })));
    }

    [Fact]
    public void A_remark_inside_a_value_is_never_lost()
    {
        var stage = Read(
            "photos:\n  clue:\n    file: a.jpg\n    marks:\n      # from the left\n      - { at: [ 1, 2 ], says: here }\n"
            + "      # and one more\n      - { at: [ 3, 4 ], says: there }\n");
        var was = Assert.Single(stage.Photos);

        var edited = stage.Change(was, was with { Marks = [] });


        Assert.Contains("remark", Assert.IsType<EditedEntry.Refused>(edited).Why, StringComparison.Ordinal);
        Assert.Contains("# one", Text(Read("photos:\n  clue:\n    file: a.jpg # one\n").Add(new("clue", 0, "new.jpg", null, []))), StringComparison.Ordinal);
    }

    [Fact]
    public void A_photo_that_was_changed_meanwhile_is_left_alone()
    {
        var was = Assert.Single(Read("photos: { clue: a.jpg }\n").Photos);

        var edited = Read("photos: { clue: b.jpg }\n").Change(was, was with { Alt = "The lid." });


        Assert.Contains("meanwhile", Assert.IsType<EditedEntry.Refused>(edited).Why, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Filmed))]
    public void The_part_of_a_film_is_written(string keys, string expected)
    {
        var stage = Read(keys);

        Assert.Equal(With(expected), Text(stage.Show(stage.Clip, new("solution.mp4", "2:16", "3:03.5"))));
    }

    [Fact]
    public void A_clip_is_taken_away() =>
        Assert.Equal(With("title: x\nsign: y\n"), Text(Read("title: x\nclip: { from: 1:00 }\nsign: y\n").Show(new(null, "1:00", null), null)));

    [Theory]
    [InlineData("title: x\n")]
    [InlineData("---\ntitle: x\n")]
    [InlineData("---\n- title\n---\n")]
    public void Keys_that_cannot_be_read_must_be_mended_first(string text) => Assert.Null(StageShow.Read("stages/01-a.md", text));

    [Theory]
    [InlineData("photos: a.jpg\n")]
    [InlineData("photos: [ a.jpg ]\n")]
    public void An_entry_of_another_form_is_left_alone(string keys) => Assert.IsType<EditedEntry.Refused>(Read(keys).Add(new("clue", 0, "new.jpg", null, [])));

    [Fact]
    public void A_stage_of_yaml_alone_gets_its_entry_in_the_usual_place()
    {
        const string text = "title: x\nanswer: |\n  Lift it.\n";

        Assert.Equal(
            "title: x\nphotos: { clue: new.jpg }\nanswer: |\n  Lift it.\n",
            Text(StageShow.Read("stages/01-a.yaml", text)!.Add(new("clue", 0, "new.jpg", null, []))));
    }

    // The book's own reader says what the page says.
    [Fact]
    public void What_is_written_is_what_the_book_then_has()
    {
        using var book = new BookOnDisk();
        var stage = StageShow.Read("stages/01-the-lid.md", BookOnDisk.Stage("gives: [ honey ]"))!;
        var added = StageShow.Read("stages/01-the-lid.md", Text(stage.Add(new("answer", 0, "lid.jpg", "The lid: open", []))))!;
        var photo = Assert.Single(added.Photos);
        var marked = Text(added.Change(photo, photo with { Marks = [new(41, 63.5, "the catch, #1")] }));
        book.With("stages/01-the-lid.md", marked).With("photos/lid.jpg", [1]);

        var read = Assert.Single(Assert.Single(book.Read().Book!.Stages).Photos);

        Assert.Equal(("photos/lid.jpg", "The lid: open"), (read.File.Value, read.Alt?.Value));
        Assert.Equal((41, 63.5, "the catch, #1"), (read.Marks[0].X, read.Marks[0].Y, read.Marks[0].Says.Value));
    }

    private static string Text(EditedEntry edited) => Assert.IsType<EditedEntry.Done>(edited).Text;

    private static string With(string keys) => $"---\n{keys}---\n{Body}";

    private static StageShow Read(string keys) => StageShow.Read("stages/01-a.md", With(keys)) ?? throw new InvalidOperationException(keys);
}
