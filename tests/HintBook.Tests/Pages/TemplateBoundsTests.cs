using HintBook.Pages;
using Scriban.Runtime;

namespace HintBook.Tests.Pages;

/// <summary>What a template may take is bounded before the memory is taken: a mistake in a theme must not stop the computer.</summary>
public class TemplateBoundsTests
{
    private const int Most = 300_000_000;
    private const string Line = "a line of some forty letters, again and again";

    [Theory]
    [InlineData("{{ 'abc' * 2000000000 }}")]
    [InlineData("{{ 2000000000 * 'abc' }}")]
    [InlineData("{{ 'a' | string.pad_left 500000000 }}")]
    [InlineData("{{ x = 'ab'; for i in 1..26; x = x | string.replace 'a' 'aa'; end }}")]
    [InlineData("{{ x = 'abcdefgh'; for i in 1..28; x = x + x; end }}")]
    [InlineData("{{ x = 'abcdefgh'; for i in 1..28; x = x | string.append x; end }}")]
    [InlineData("{{ 1..100000000 | array.join ',' }}")]
    [InlineData("{{ for i in 1..900000 }}" + Line + "{{ end }}")]
    [InlineData("{{ capture x; for i in 1..900000 }}" + Line + "{{ end; end }}")]
    [InlineData("{{ for i in 1..900000; for j in 1..900000; end; end }}")]
    [InlineData("{{ depth = 0; include 'parts/doubled.html' }}")]
    public void A_template_that_asks_for_more_than_a_page_can_hold_is_refused_in_time(string template)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();

        var failure = Assert.Throws<TemplateFailure>(() => Print(template));

        Assert.Equal(PageFindings.BrokenTemplate, failure.Finding.Code);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, Most);
    }

    [Theory]
    [InlineData("{{ for i in 1..60000 }}" + Line + "{{ end }}")]
    [InlineData("{{ capture x; for i in 1..60000 }}" + Line + "{{ end; end; x }}")]
    public void A_page_of_some_megabytes_is_printed_whole(string template) => Assert.Equal(60_000 * Line.Length, Print(template).Length);

    // Twenty parts that each ask twice for the next would be a million.
    private static ReadOnlyMemory<byte> Print(string template)
    {
        var doubled = "{{ if depth < 20; depth = depth + 1; include 'parts/doubled.html'; include 'parts/doubled.html'; depth = depth - 1; end }}";
        var texts = Theme.TextsOf(Theme.Default)
            .SetItem("reset.html", template)
            .SetItem("parts/doubled.html", doubled);
        return new TemplateRenderer(Theme.Load("mine", texts).Theme).Print("reset.html", new ScriptObject());
    }
}
