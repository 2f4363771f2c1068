using HintBook.Example.Pictures;
using SixLabors.ImageSharp.Metadata.Profiles.Exif;

// Draws the photos of the example. Two carry what a camera leaves behind, made up: a place, a maker, and one of them an orientation.
if (args is not [var folder])
{
    Console.Error.WriteLine("Say where the pictures go: dotnet run --project tests/HintBook.Example.Pictures -- content-example/photos");
    return 2;
}

Directory.CreateDirectory(folder);
var pictures = new (string Name, Func<Canvas> Draw)[]
{
    ("cabinet", Outside.Cabinet), ("back-door", Outside.BackDoor), ("drawer", Outside.Drawer),
    ("dial", () => Outside.Dial(clip: false)), ("dial-with-clip", () => Outside.Dial(clip: true)), ("ball-track", Outside.BallTrack),
    ("pollen-tray", Outside.PollenTray), ("well", Outside.Well), ("landing-board", Outside.LandingBoard), ("five-wheels", Outside.Wheels),
    ("ridge", Outside.Ridge), ("crown-board", Inside.CrownBoard), ("frames-mixed", Inside.FramesMixed), ("frames-in-order", Inside.FramesInOrder),
    ("honey", Inside.Honey), ("iron-key", Finds.IronKey), ("smoker", Finds.Smoker), ("folded-card", Finds.FoldedCard), ("brass-bee", Finds.BrassBee),
};
foreach (var (name, draw) in pictures)
{
    var onItsSide = name == "smoker";
    var exif = onItsSide || name == "cabinet" ? CameraOf(onItsSide) : null;
    draw().Save(Path.Combine(folder, name + ".jpg"), exif, onItsSide);
}

Console.WriteLine($"{pictures.Length} pictures in {folder}");
return 0;

static ExifProfile CameraOf(bool onItsSide)
{
    var exif = new ExifProfile();
    exif.SetValue(ExifTag.Make, "Alder Row Workshop");
    exif.SetValue(ExifTag.Model, "Pinhole No. 2");
    exif.SetValue(ExifTag.Orientation, (ushort)(onItsSide ? 6 : 1));
    exif.SetValue(ExifTag.GPSLatitudeRef, "N");
    exif.SetValue(ExifTag.GPSLatitude, [new(10, 1), new(20, 1), new(30, 1)]);
    exif.SetValue(ExifTag.GPSLongitudeRef, "W");
    exif.SetValue(ExifTag.GPSLongitude, [new(40, 1), new(50, 1), new(0, 1)]);
    return exif;
}
