using System.Text;

namespace HintBook.Photos.Drawings;

/// <summary>What will become of a maker's mark that is an SVG.</summary>
internal static class MarkPlan
{
    // How long its longer side stands on a page of the site, in pixels: twice the height of its place.
    private const double OnSite = 400;

    /// <summary>Whether a file is to be read as a drawing.</summary>
    public static bool IsDrawing(string file) => file.EndsWith(".svg", StringComparison.OrdinalIgnoreCase);

    /// <summary>The plan of a drawing, or everything that keeps it from being drawn.</summary>
    /// <param name="bytes">The file.</param>
    /// <param name="identity">The book's identity.</param>
    /// <param name="settings">How photos are developed.</param>
    public static PhotoPlan[] Of(byte[] bytes, string identity, PhotoSettings settings)
    {
        var (drawing, problems) = SvgReader.Read(Encoding.UTF8.GetString(bytes).TrimStart('\uFEFF'));
        if (drawing is null)
            return [.. problems.Select(problem => new UnfitPhoto(new NotDrawn(problem)))];
        var key = PhotoKey.Compute(bytes, identity, settings);
        var (width, height) = (OnSite * drawing.Width / Drawing.LongSide, OnSite * drawing.Height / Drawing.LongSide);
        var file = new PictureFile(key.PathOfDrawing(), Math.Max(1, (int)Math.Round(width)), Math.Max(1, (int)Math.Round(height)));
        return [new PlannedPhoto(key, 1, new Picture([file]) { Drawing = drawing })];
    }
}
