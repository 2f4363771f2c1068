namespace HintBook.Example.Pictures;

/// <summary>Capitals and figures drawn as strokes on a grid of 4 by 6, as if burnt in with a hot needle.</summary>
internal static class Letters
{
    // A sign, then its strokes parted by spaces; a stroke is a row of points, two figures a point: across 0 to 4, down 0 to 6 or 7.
    private const string Table = """
        A 062046 1333
        B 0006 003041423303 3344453606
        C 4130100105163645
        D 0006 003041453606
        E 40000646 0333
        F 400006 0333
        G 41301001051636454323
        H 0006 4046 0343
        I 2026
        J 4045361605
        K 0006 4003 0346
        L 000646
        M 0600234046
        N 06004640
        O 100105163645413010
        P 06003041423303
        Q 100105163645413010 2446
        R 06003041423303 2346
        S 413010010213334445361605
        T 0040 2026
        U 000516364540
        V 002640
        W 0016233640
        X 0046 4006
        Y 0023 4023 2326
        Z 00400646
        0 100105163645413010
        1 112026
        2 01103041420646
        3 011030414233133344453616 05
        4 36300444
        5 400002324345361605
        6 413010010516364544331304
        7 004016
        8 100102133344453616050413 3342413010
        9 051636454130100102133342
        , 2517
        . 2526
        ' 2021
        ; 2323 2517
        - 1333
        : 2323 2525
        """;

    private static readonly Dictionary<char, string[]> Strokes =
        Table.Split('\n').ToDictionary(row => row[0], row => row[1..].Split(' ', StringSplitOptions.RemoveEmptyEntries));

    /// <summary>Writes one line; <paramref name="size"/> is the height of a capital in points.</summary>
    public static Canvas Write(this Canvas canvas, string text, float x, float y, float size, Paint paint, float weight = 0.11f)
    {
        foreach (var letter in text.ToUpperInvariant())
        {
            foreach (var stroke in StrokesOf(letter, x, y, size / 6, size * weight))
                canvas.Fill(stroke, paint);
            x += Advance(letter) * size / 6;
        }

        return canvas;
    }

    public static Canvas WriteCentred(this Canvas canvas, string text, float x, float y, float size, Paint paint, float weight = 0.11f) =>
        canvas.Write(text, x - ((text.ToUpperInvariant().Sum(Advance) - 1.6f) * size / 12), y - (size / 2), size, paint, weight);

    private static float Advance(char letter) => letter is 'I' or '1' or ',' or '.' or '\'' or ';' or ':' ? 3.4f : letter == ' ' ? 3.6f : 5.6f;

    private static IEnumerable<Shape> StrokesOf(char letter, float x, float y, float step, float width)
    {
        var shift = Advance(letter) < 4 ? 1.2f : 0;
        foreach (var stroke in Strokes.GetValueOrDefault(letter, []))
        {
            for (var i = 0; i + 3 < stroke.Length; i += 2)
                yield return Shape.Line(X(stroke[i]), Y(stroke[i + 1]), X(stroke[i + 2]), Y(stroke[i + 3]), width);
        }

        float X(char c) => x + ((c - '0' - shift) * step);
        float Y(char c) => y + ((c - '0') * step);
    }
}
