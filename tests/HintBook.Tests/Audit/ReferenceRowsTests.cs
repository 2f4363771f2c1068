namespace HintBook.Tests.Audit;

/// <summary>Codes that a drawing shows by what it refers to, symbol by symbol. More of them stand in <c>Elsewhere/ours/fragments-3</c>.</summary>
public class ReferenceRowsTests
{
    [Theory]
    [InlineData("<use href='signal.svg#flag-q'/><use href='signal.svg#flag-m'/><use href='signal.svg#flag-z'/><use href='signal.svg#flag-k'/>")]
    [InlineData("<use href='#glyphQ'/><use href='#glyphM'/><use href='#glyphZ'/><use href='#glyphK'/>")]
    [InlineData("<image href='flags/q.png'/><image href='flags/m.png'/><image href='flags/z.png'/><image href='flags/k.png'/>")]
    [InlineData("<text x='27'>K</text><text x='0'>Q</text><text x='18'>Z</text><text x='9'>M</text>")]
    [InlineData("<use href='#Q'/><text>M</text><use href='#Z'/><text>K</text>")]
    [InlineData("<symbol id='s-Q'/><symbol id='s-M'/><symbol id='s-Z'/><symbol id='s-K'/>")]
    public void What_a_drawing_refers_to_in_the_order_of_a_code_is_a_doubt(string drawing) => Assert.Equal([("QMZK", false)], Told(drawing, "QMZK"));

    [Theory]
    [InlineData("<use href='#flag-k'/><use href='#flag-z'/><use href='#flag-m'/><use href='#flag-q'/>", "QMZK")]
    [InlineData("<use href='#corner-a'/><use href='#corner-b'/><use href='#corner-c'/>", "ABC")]
    [InlineData("<image href='step-5.png'/><image href='step-6.png'/><image href='step-7.png'/>", "567")]
    [InlineData("<image href='lid-5.png'/><image href='hinge-7.png'/><image href='base-3.png'/>", "573")]
    public void Other_orders_and_numbers_of_pictures_tell_nothing(string drawing, string code) => Assert.Empty(Told(drawing, code));

    private static (string? Secret, bool IsSure)[] Told(string drawing, string code)
    {
        using var site = Site.Good().Write("b.html", Site.Page(""))
            .Write("look/grain.svg", $"<svg xmlns='http://www.w3.org/2000/svg'><path id='dot' d='M0 0'/>{drawing}</svg>");
        var faults = site.Audit(Table.Of(Table.Code(code))).Faults;
        return [.. faults.Where(fault => fault.Secret is not null).Select(fault => (fault.Secret, fault.IsSure)).Distinct()];
    }
}
