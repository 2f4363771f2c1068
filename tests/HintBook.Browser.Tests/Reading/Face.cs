namespace HintBook.Browser.Tests.Reading;

/// <summary>
/// Simulates a face with wider or narrower letters than the one that the browser has found: every letter takes more or less room by the same
/// share of the mean width of a letter in ordinary text. Nothing has to be installed for it. Only widths are simulated: no other shapes, heights or kerning,
/// and the letters of one word keep their proportions among each other.
/// </summary>
/// <param name="Name">What a test says of it.</param>
/// <param name="Share">How much wider, as a share: 0.2 for a face that is 20 % wider, negative for a narrower one.</param>
internal sealed record Face(string Name, double Share)
{
    /// <summary>The browser's own face, one 20 % wider and one 15 % narrower.</summary>
    public static IReadOnlyList<Face> All { get; } = [new("its own face", 0), new("a wide face", 0.2), new("a narrow face", -0.15)];

    /// <summary>Sets a page in this face instead of the one it was set in last.</summary>
    // A sheet of the script's own: the site's policy lets no other style in. A theme may space some letters; that is overruled.
    public Task On(Reader reader) => reader.Page.EvaluateAsync(
        """
        share => {
          const ordinary = 'What the box shows when this step is done and its lid is shut again';
          const pen = document.createElement('canvas').getContext('2d');
          const width = family => {
            pen.font = `100px ${family}`;
            return pen.measureText(ordinary).width / ordinary.length / 100;
          };
          const sheet = new CSSStyleSheet();
          const space = share * width(getComputedStyle(document.body).fontFamily);
          if (share) sheet.replaceSync(`* { letter-spacing: ${space}em !important; }`);
          document.adoptedStyleSheets = [sheet];
        }
        """,
        Share);
}
