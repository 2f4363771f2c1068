using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;
using SixLabors.ImageSharp.Processing;

namespace HintBook.Browser.Tests.Sites;

/// <summary>
/// A small book in which every text can be told from every other. Two ways lead in and meet:
/// <code>
/// plover ─┬─ heron ── wren ─┬─ crane ── owl ── swift
///         └─ magpie (herring)│
/// rook ─────────────────────┘
/// </code>
/// </summary>
internal static class SmallBook
{
    public const string Title = "The Bird Table";

    public const string Code = "5173";

    /// <summary>The stages in the author's order.</summary>
    public static readonly string[] Stages = ["plover", "heron", "magpie", "wren", "rook", "crane", "owl", "swift"];

    /// <summary>What the closed box lets one begin with.</summary>
    public static readonly string[] First = ["plover", "rook"];

    public static string TitleOf(string stage) => $"The {stage} step";

    public static string SignOf(string stage) => $"You see the {stage} sign.";

    public static string Nudge(string stage) => $"This is the {stage} nudge.";

    public static string Clue(string stage) => $"This is the {stage} clue.";

    public static string Answer(string stage) => $"This is the {stage} answer.";

    public static void WriteTo(string folder)
    {
        Directory.CreateDirectory(Path.Combine(folder, "stages"));
        Directory.CreateDirectory(Path.Combine(folder, "photos"));
        File.WriteAllText(Path.Combine(folder, "book.yaml"), Book);
        for (var i = 0; i < Stages.Length; i++)
            File.WriteAllText(Path.Combine(folder, "stages", $"{i + 1:00}-{Stages[i]}.md"), Stage(Stages[i]));
        foreach (var (name, index) in Photos.Select((name, index) => (name, index)))
            Draw(Path.Combine(folder, "photos", name), index);
    }

    private static readonly string[] Photos = ["front.jpg", "sign.jpg", "nudge.jpg", "clue.jpg", "answer.jpg", "back.jpg"];

    private static string Book =>
        $$"""
        title: {{Title}}
        id: bird-table
        maker: { name: Alder Row Workshop, help: mailto:help@alder-row.example }
        address: https://alder-row.example/bird-table/
        goal: [ jar ]
        cautions:
          - { kind: heavy, note: It weighs 3 kg. }
        photo: { file: front.jpg, alt: The closed table. }
        welcome: Welcome to the **table**.
        parts:
          latch-a: { positions: [ shut, ajar ] }
          latch-b: { positions: [ shut, ajar ] }
          latch-c: { positions: [ shut, ajar ] }
          latch-d: { positions: [ shut, ajar ] }
          latch-e: { positions: [ shut, ajar ] }
          latch-x: { positions: [ shut, ajar ] }
        things:
          jar: { name: tin of seeds }
        codes:
          perch-lock: { answer: "{{Code}}", lock: { wheels: 4, symbols: 0-9, seconds-a-try: 5 } }
        """;

    private static string Stage(string stage) =>
        $"""
        ---
        title: {TitleOf(stage)}
        sign: {SignOf(stage)}
        {Keys(stage)}
        ---
        # Nudge

        {Nudge(stage)}

        # Clue

        {Clue(stage)}

        # Answer

        {Answer(stage)}{(stage == "owl" ? $" The number is {Code}." : "")}

        # Reset

        This is the {stage} way back.
        """;

    private static string Keys(string stage) => stage switch
    {
        "plover" => """
            does: { latch-a: ajar }
            cautions: [ sharp-edge ]
            minutes: 5
            photos:
              sign: { file: sign.jpg, alt: Picture of the plover sign. }
              nudge: { file: nudge.jpg, alt: Picture of the plover nudge. }
              clue: { file: clue.jpg, alt: Picture of the plover clue., shows: [ latch-a ] }
              answer:
                file: answer.jpg
                alt: Picture of the plover answer.
                marks:
                - { at: [ 25, 40 ], says: Mark of the plover answer. }
                - { at: [ 98, 2 ], says: Second mark of the plover answer. }
              reset: { file: back.jpg, alt: Picture of the plover way back. }
            """,
        "heron" => "needs: [ { latch-a: ajar } ]\ndoes: { latch-b: ajar }\nundo: { does: { latch-b: shut } }",
        "magpie" => "needs: [ { latch-a: ajar } ]\ndoes: { latch-x: ajar }\nred-herring: true",
        "wren" => "needs: [ { latch-b: ajar } ]\ndoes: { latch-c: ajar }",
        "rook" => "does: { latch-d: ajar }\nundo: { does: { latch-d: shut }, note: Slide it home. }",
        "crane" => "needs: [ { latch-c: ajar }, { latch-d: ajar } ]\ndoes: { latch-e: ajar }",
        "owl" => "needs: [ { latch-e: ajar } ]\ngives: [ perch-lock ]",
        _ => "needs: [ perch-lock ]\ngives: [ jar ]",
    };

    // Coarse stripes in two colours of the picture's own: small files that can be told apart on a screenshot.
    private static void Draw(string file, int index)
    {
        using var picture = new Image<Rgb24>(1200, 800);
        var light = new Rgb24((byte)(200 - (20 * index)), 190, (byte)(120 + (20 * index)));
        var dark = new Rgb24(90, (byte)(60 + (15 * index)), 70);
        picture.ProcessPixelRows(rows =>
        {
            for (var y = 0; y < rows.Height; y++)
            {
                var row = rows.GetRowSpan(y);
                for (var x = 0; x < row.Length; x++)
                    row[x] = (x + y) / 100 % 2 == 0 ? light : dark;
            }
        });
        picture.Mutate(image => image.GaussianBlur(2));
        picture.SaveAsJpeg(file);
    }
}
