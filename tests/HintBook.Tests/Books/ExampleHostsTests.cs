using HintBook.Books;

namespace HintBook.Tests.Books;

public class ExampleHostsTests
{
    // RFC 2606, section 2 (.test, .example, .invalid, .localhost) and section 3 (example.com, .net, .org); names are compared without regard to
    // case, and a dot at the end names the root (RFC 1034, section 3.1).
    [Theory]
    [InlineData("https://my-workshop.example/my-first-box/", true)]
    [InlineData("https://MY-WORKSHOP.EXAMPLE/", true)]
    [InlineData("https://a.b.test/", true)]
    [InlineData("https://x.invalid:8443/", true)]
    [InlineData("https://localhost:8000/", true)]
    [InlineData("https://site.localhost/", true)]
    [InlineData("https://example.com/box/", true)]
    [InlineData("https://www.example.org/", true)]
    [InlineData("https://example.net./", true)]
    [InlineData("https://boxes.home.arpa/", false)]
    [InlineData("https://myexample.com/", false)]
    [InlineData("https://example.com.home.arpa/", false)]
    [InlineData("https://home.arpa/example/", false)]
    [InlineData("no address", false)]
    [InlineData(null, false)]
    public void A_host_that_is_reserved_for_examples_is_known(string? address, bool reserved) =>
        Assert.Equal(reserved, ExampleHosts.IsExample(address));
}
