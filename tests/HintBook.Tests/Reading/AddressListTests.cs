using CsCheck;
using HintBook.Reading;
using HintBook.Text;

namespace HintBook.Tests.Reading;

public class AddressListTests
{
    [Fact]
    public void What_is_written_is_read_again()
    {
        const string Text = "site https://a.example/ https://b.example/\nstage the-lid k3f7w2pq 00001111\nstage the-tray zzzzzzzz\n";
        var (read, findings) = Parse(Text);
        Assert.Empty(findings);
        Assert.EndsWith(Text, read.ToText(), StringComparison.Ordinal);
        Assert.Equal(read.ToText(), Parse(read.ToText()).List.ToText());
    }

    [Fact]
    public void Windows_line_ends_and_empty_lines_make_no_difference() =>
        Assert.Equal(Parse("stage a k3f7w2pq\n").List.ToText(), Parse("\r\n# x\r\n\r\nstage a k3f7w2pq\r\n").List.ToText());

    [Theory]
    [InlineData("<<<<<<< theirs")]
    [InlineData("stage")]
    [InlineData("stage a")]
    [InlineData("stage a K3F7W2PQ")]
    [InlineData("stage a ../index")]
    [InlineData("site")]
    [InlineData("site https://a.example/ nowhere")]
    [InlineData("site https:///")]
    [InlineData("page a k3f7w2pq")]
    public void A_line_that_can_t_be_read_is_pointed_at(string line)
    {
        var finding = Assert.Single(Parse($"stage b aaaabbbb\n{line}\n").Findings);
        Assert.Equal(("HB1501", line), (finding.Code.Id, finding.At.Text));
    }

    [Theory]
    [InlineData("stage a aaaabbbb\nstage a ccccdddd\n")]
    [InlineData("stage a aaaabbbb\nstage b aaaabbbb\n")]
    [InlineData("stage a aaaabbbb aaaabbbb\n")]
    [InlineData("site https://a.example/\nsite https://b.example/\n")]
    public void Nothing_may_stand_there_twice(string text) => Assert.Equal("HB1501", Assert.Single(Parse(text).Findings).Code.Id);

    [Fact]
    public void Rubbish_is_findings_and_never_a_crash() =>
        Gen.String[Gen.Char["stage i\n\r#k3\0é"], 0, 60].Sample(text => Parse(text).List.ToText().Length > 0);

    private static (AddressList List, List<Finding> Findings) Parse(string text)
    {
        var findings = new List<Finding>();
        return (AddressList.Parse(new SourceFile(AddressList.FileName, text), findings), findings);
    }
}
