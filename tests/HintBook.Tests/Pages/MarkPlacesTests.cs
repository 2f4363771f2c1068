using System.Collections.Immutable;
using CsCheck;
using HintBook.Books;
using HintBook.Pages;
using HintBook.Photos;
using HintBook.Tests.Books;

namespace HintBook.Tests.Pages;

// Numbers on photos stand beside what they mark.
public class MarkPlacesTests
{
    private const double Radius = 50;

    private static readonly PictureFile Picture = new("photos/x.jpg", 1600, 1200);

    [Fact]
    public void A_number_alone_stands_above_to_the_right()
    {
        var place = Assert.Single(MarkPlaces.Of([A.Mark(50, 50, "x")], Picture, Radius));
        Assert.Equal((800, 600), (place.AtX, place.AtY));
        Assert.True(place.X > 800 + Radius && place.Y < 600 - Radius);
    }

    [Fact]
    public void No_number_hides_its_place_or_leaves_the_picture() =>
        Marks(1).Sample(marks =>
        {
            var place = Assert.Single(MarkPlaces.Of(marks, Picture, Radius));
            Assert.InRange(place.X, Radius, Picture.Width - Radius);
            Assert.InRange(place.Y, Radius, Picture.Height - Radius);
            Assert.True(Apart((place.X, place.Y), (place.AtX, place.AtY)) > 2 * Radius);
        });

    [Fact]
    public void Of_a_few_numbers_none_hides_another_or_what_another_marks() =>
        Marks(3).Where(marks => marks.SelectMany(one => marks.Where(other => other != one).Select(other => Apart(At(one), At(other)))).Min() > 3 * Radius)
            .Sample(marks =>
            {
                var places = MarkPlaces.Of(marks, Picture, Radius);
                foreach (var (index, one) in places.Index())
                {
                    Assert.All(places.Take(index), other => Assert.True(Apart((one.X, one.Y), (other.X, other.Y)) > 2 * Radius));
                    Assert.All(places, other => Assert.True(Apart((one.X, one.Y), (other.AtX, other.AtY)) > Radius));
                }
            });

    [Fact]
    public void In_a_picture_too_small_for_it_a_number_stands_on_its_place()
    {
        var place = Assert.Single(MarkPlaces.Of([A.Mark(50, 50, "x")], new("photos/x.jpg", 150, 150), Radius));
        Assert.Equal((75, 75), (place.X, place.Y));
    }

    private static Gen<ImmutableArray<Mark>> Marks(int count) =>
        Gen.Select(Gen.Int[0, 100], Gen.Int[0, 100], (x, y) => A.Mark(x, y, "x")).Array[count].Select(marks => marks.ToImmutableArray());

    private static (double X, double Y) At(Mark mark) => (mark.X / 100 * Picture.Width, mark.Y / 100 * Picture.Height);

    private static double Apart((double X, double Y) one, (double X, double Y) other) => Math.Sqrt(Math.Pow(one.X - other.X, 2) + Math.Pow(one.Y - other.Y, 2));
}
