using HintBook.Books;
using HintBook.Checking;
using HintBook.Reading;
using HintBook.Tests.Books;

namespace HintBook.Tests.Checking;

/// <summary>An address that was ever printed keeps working.</summary>
public class AddressPlanTests
{
    private static readonly Book Printed = A.Book(A.Stage("lid"), A.Stage("tray")) with { Id = A.Value("tea-caddy"), Address = A.Value("https://a.example/") };
    private static readonly AddressLock Lock = AddressPlan.Plan(Printed, AddressLock.Nothing).Lock;

    // Python: h = hashlib.sha256("hintbook page\ntea-caddy\nlid".encode()).digest()[:5]; n = int.from_bytes(h, "big");
    // "".join("0123456789abcdefghjkmnpqrstvwxyz"[n >> 35 - 5 * i & 31] for i in range(8))
    [Theory]
    [InlineData("tea-caddy", "lid", "ca0hma9k")]
    [InlineData("https://a.example/", "крышка", "9aev8an3")]
    public void A_new_name_comes_from_the_book_and_the_stage_alone(string book, string stage, string name) =>
        Assert.Equal(name, HintBook.Books.Addresses.Derive(book, stage));

    [Fact]
    public void Titles_order_and_file_numbers_change_no_name()
    {
        var (before, after) = (Names(Printed), Names(Printed with
        {
            Title = A.Value("Another title"),
            Stages = [Printed.Stages[1] with { Title = A.Value("Another") }, Printed.Stages[0]],
        }));
        Assert.Equal(before, after);
    }

    [Fact]
    public void Once_published_not_even_the_book_s_id_and_address_change_a_name()
    {
        var moved = Printed with { Id = A.Value("other"), Address = A.Value("https://b.example/"), MovedFrom = [A.Value("https://a.example/")] };
        var (addresses, _, findings) = AddressPlan.Plan(moved, Lock);
        Assert.Empty(findings.All);
        Assert.Equal(Names(Printed), addresses.Names.Select(pair => $"{pair.Key} {pair.Value[0]}"));
    }

    [Fact]
    public void A_renamed_stage_keeps_its_address_with_was()
    {
        var renamed = Printed with { Stages = [Printed.Stages[0], A.Stage("drawer") with { Was = [A.Value("tray")] }] };
        var (addresses, next, findings) = AddressPlan.Plan(renamed, Lock);
        Assert.Empty(findings.All);
        Assert.Equal(Lock.Stages["tray"][0].Value, addresses.Names["drawer"][0]);
        Assert.Equal(Lock.Stages["tray"][0].Value, next.Stages["drawer"][0].Value);
    }

    [Fact]
    public void A_stage_that_took_in_another_keeps_both_addresses_its_own_first()
    {
        var joined = Printed with { Stages = [Printed.Stages[0] with { Was = [A.Value("tray")] }] };
        var (addresses, _, findings) = AddressPlan.Plan(joined, Lock);
        Assert.Empty(findings.All);
        Assert.Equal([Lock.Stages["lid"][0].Value, Lock.Stages["tray"][0].Value], addresses.Names["lid"]);
    }

    [Fact]
    public void A_stage_that_is_gone_is_an_error_that_names_the_likely_new_one()
    {
        var finding = Assert.Single(AddressPlan.Plan(Printed with { Stages = [Printed.Stages[0], A.Stage("trays")] }, Lock).Findings.All);
        Assert.Equal("HB7301", finding.Code.Id);
        Assert.Equal("If “trays” is its new name, write “was: [ tray ]” in that stage.", finding.Help);
    }

    [Fact]
    public void While_nobody_knows_which_stages_there_are_none_is_called_gone() =>
        Assert.Empty(AddressPlan.Plan(Printed with { Stages = [Printed.Stages[0]], KnowsAllStages = false }, Lock).Findings.All);

    [Fact]
    public void A_site_that_moved_is_an_error_until_the_old_place_leads_on()
    {
        var moved = Printed with { Address = A.Value("https://b.example/") };
        Assert.Equal("HB7302", Assert.Single(AddressPlan.Plan(moved, Lock).Findings.All).Code.Id);
        Assert.Equal("HB7302", Assert.Single(AddressPlan.Plan(Printed with { Address = null }, Lock).Findings.All).Code.Id);
        Assert.Empty(AddressPlan.Plan(moved with { MovedFrom = [A.Value("https://a.example/")] }, Lock).Findings.All);
    }

    [Fact]
    public void Every_place_where_the_site_has_lived_is_remembered()
    {
        var moved = Printed with { Address = A.Value("https://b.example/"), MovedFrom = [A.Value("https://a.example/")] };
        var next = AddressPlan.Plan(moved, Lock).Lock;
        Assert.Equal(["https://b.example/", "https://a.example/"], next.Sites.Select(site => site.Value));
        Assert.Equal("HB7302", Assert.Single(AddressPlan.Plan(moved with { MovedFrom = [] }, next).Findings.All).Code.Id);
    }

    [Fact]
    public void Two_stages_can_t_claim_one_address()
    {
        var both = Printed with { Stages = [Printed.Stages[0], Printed.Stages[1], A.Stage("cup") with { Was = [A.Value("tray")] }] };
        Assert.Equal("HB7304", Assert.Single(AddressPlan.Plan(both, Lock).Findings.All).Code.Id);
        var twice = Printed with
        {
            Stages = [Printed.Stages[0], A.Stage("cup") with { Was = [A.Value("tray")] }, A.Stage("dish") with { Was = [A.Value("tray")] }],
        };
        Assert.Equal("HB7304", Assert.Single(AddressPlan.Plan(twice, Lock).Findings.All).Code.Id);
    }

    [Fact]
    public void A_name_that_is_taken_is_passed_over_and_stays_so()
    {
        var taken = HintBook.Books.Addresses.Derive("tea-caddy", "lid");
        var known = AddressLock.Nothing with { Stages = AddressLock.Nothing.Stages.Add("tray", [A.Value(taken)]) };
        var (addresses, next, _) = AddressPlan.Plan(Printed, known);
        Assert.NotEqual(taken, addresses.Names["lid"][0]);
        Assert.Equal(addresses.Names["lid"], AddressPlan.Plan(Printed with { Stages = [.. Printed.Stages.Reverse()] }, next).Addresses.Names["lid"]);
    }

    [Fact]
    public void A_second_publish_says_the_same() => Assert.Equal(Lock.ToText(), AddressPlan.Plan(Printed, Lock).Lock.ToText());

    private static string[] Names(Book book) => [.. AddressPlan.Plan(book, AddressLock.Nothing).Addresses.Names.Select(pair => $"{pair.Key} {pair.Value[0]}")];
}
