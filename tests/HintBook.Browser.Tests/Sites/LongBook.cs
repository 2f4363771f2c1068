namespace HintBook.Browser.Tests.Sites;

/// <summary>A book of many steps, one after the other, each with a panel of its own; every sixth panel shows on the closed box.</summary>
internal static class LongBook
{
    public const int Stages = 60;

    /// <summary>Writes it into a folder.</summary>
    public static void WriteTo(string folder)
    {
        Directory.CreateDirectory(Path.Combine(folder, "stages"));
        var panels = Enumerable.Range(1, Stages).Select(i =>
            $"  panel-{i}: {{ positions: [ shut, open ], name: panel number {i}{(i % 6 == 3 ? ", seen: true" : "")} }}");
        File.WriteAllText(
            Path.Combine(folder, "book.yaml"),
            $$"""
            title: A Wall of Panels
            id: long-box
            maker: { name: Alder Row Workshop, help: mailto:help@alder-row.example }
            address: https://alder-row.example/long-box/
            shelf: { line: Sixty panels of oak. }
            goal: [ { panel-{{Stages}}: open } ]
            parts:
            {{string.Join('\n', panels)}}
            """);
        for (var i = 1; i <= Stages; i++)
        {
            var needs = i == 1 ? "" : $"{{ panel-{i - 1}: open }}";
            File.WriteAllText(
                Path.Combine(folder, "stages", $"{i:00}-step-{i}.md"),
                $$"""
                ---
                title: Step {{i}}
                sign: {{i - 1}} panels are open.
                needs: [ {{needs}} ]
                does: { panel-{{i}}: open }
                undo: { does: { panel-{{i}}: shut }, says: Shut it. }
                ---
                # Nudge

                Look closely.

                # Clue

                Think of the grain of the wood.

                # Answer

                Slide it to the left until it stops.
                """);
        }
    }
}
