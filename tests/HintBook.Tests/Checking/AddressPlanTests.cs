using CsCheck;
using HintBook.Books;
using HintBook.Checking;
using HintBook.Reading;
using HintBook.Tests.Books;
using HintBook.Text;

namespace HintBook.Tests.Checking;

/// <summary>An address that was ever printed keeps working.</summary>
public class AddressPlanTests
{
    private static readonly Book Printed = A.Book(A.Stage("lid"), A.Stage("tray")) with
    {
        Id = A.Value("tea-caddy"),
        Address = A.Value("https://a.home.arpa/"),
    };

    private static readonly AddressList List = AddressPlan.Plan(Printed, AddressList.Nothing).Kept;

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
        var moved = Printed with { Id = A.Value("other"), Address = A.Value("https://b.home.arpa/"), MovedFrom = [A.Value("https://a.home.arpa/")] };
        var (addresses, _, findings) = AddressPlan.Plan(moved, List);
        Assert.Empty(findings.All);
        Assert.Equal(Names(Printed), addresses.Names.Select(pair => $"{pair.Key} {pair.Value[0]}"));
    }

    [Fact]
    public void A_renamed_stage_keeps_its_address_with_was()
    {
        var renamed = Printed with { Stages = [Printed.Stages[0], A.Stage("drawer") with { Was = [A.Value("tray")] }] };
        var (addresses, next, findings) = AddressPlan.Plan(renamed, List);
        Assert.Empty(findings.All);
        Assert.Equal(List.Stages["tray"][0].Value, addresses.Names["drawer"][0]);
        Assert.Equal(List.Stages["tray"][0].Value, next.Stages["drawer"][0].Value);
    }

    [Fact]
    public void A_stage_that_took_in_another_keeps_both_addresses_its_own_first()
    {
        var joined = Printed with { Stages = [Printed.Stages[0] with { Was = [A.Value("tray")] }] };
        var (addresses, _, findings) = AddressPlan.Plan(joined, List);
        Assert.Empty(findings.All);
        Assert.Equal([List.Stages["lid"][0].Value, List.Stages["tray"][0].Value], addresses.Names["lid"]);
    }

    [Fact]
    public void A_stage_that_is_gone_keeps_its_page_with_a_warning_that_names_the_likely_new_one()
    {
        var (addresses, next, findings) = AddressPlan.Plan(Printed with { Stages = [Printed.Stages[0], A.Stage("trays")] }, List);
        var finding = Assert.Single(findings.All);
        Assert.Equal(("HB7301", Severity.Warning), (finding.Code.Id, finding.Code.Severity));
        Assert.Equal("If “trays” is its new name, write “was: [ tray ]” in that stage: then the card leads there.", finding.Help);
        Assert.Equal([List.Stages["tray"][0].Value], addresses.Gone);
        Assert.Equal(List.Stages["tray"], next.Stages["tray"]);
    }

    [Fact]
    public void A_page_whose_stage_is_gone_is_led_on_by_was_however_much_later()
    {
        var (_, without, _) = AddressPlan.Plan(Printed with { Stages = [Printed.Stages[0]] }, List);
        var (addresses, next, findings) = AddressPlan.Plan(Printed with { Stages = [Printed.Stages[0] with { Was = [A.Value("tray")] }] }, without);
        Assert.Empty(findings.All);
        Assert.Empty(addresses.Gone);
        Assert.Equal([List.Stages["lid"][0].Value, List.Stages["tray"][0].Value], addresses.Names["lid"]);
        Assert.False(next.Stages.ContainsKey("tray"));
    }

    // Whatever is renamed, taken out, joined or put back from one publish to the next: what was once a page stays one.
    [Fact]
    public void No_page_name_is_ever_dropped() =>
        Gen.Select(Gen.Int[0, 4], Gen.Int[0, 4], Gen.Bool).Array[1, 6].Sample(changes =>
        {
            string[] ids = ["a", "b", "c", "d", "e"];
            var list = AddressList.Nothing;
            var published = new HashSet<string>();
            foreach (var (stage, was, real) in changes)
            {
                var one = A.Stage(ids[stage]) with { Was = was == stage ? [] : [A.Value(ids[was])] };
                var book = A.Book(one) with { Id = A.Value("box"), Address = A.Value(real ? "https://a.home.arpa/" : "https://a.example/") };
                var (addresses, next, findings) = AddressPlan.Plan(book, list);
                Assert.DoesNotContain(findings.All, finding => finding.IsError);
                var pages = addresses.Names.Values.SelectMany(names => names).Concat(addresses.Gone).ToArray();
                Assert.Equal(pages.Length, pages.Distinct().Count());
                published.UnionWith(pages);
                Assert.Equal(published.Order(StringComparer.Ordinal), pages.Order(StringComparer.Ordinal));
                list = AddressList.Parse(new SourceFile(AddressList.FileName, next.ToText()), []);
                Assert.Equal(next.ToText(), list.ToText());
            }
        });

    [Fact]
    public void A_publish_for_an_address_of_examples_fixes_nothing()
    {
        var proof = Printed with { Address = A.Value("https://my-workshop.example/box/") };
        var (_, first, none) = AddressPlan.Plan(proof, AddressList.Nothing);
        Assert.Empty(none.All);
        Assert.Empty(first.Sites);

        var (addresses, next, findings) = AddressPlan.Plan(Printed with { Stages = [Printed.Stages[0]] }, first);
        Assert.Empty(findings.All);
        Assert.Equal(List.Stages["tray"].Select(name => name.Value), addresses.Gone);
        Assert.Equal("HB7301", Assert.Single(AddressPlan.Plan(Printed with { Stages = [Printed.Stages[1]] }, next).Findings.All).Code.Id);
    }

    [Fact]
    public void A_list_of_before_that_names_addresses_of_examples_alone_fixes_nothing_either()
    {
        var list = AddressPlan.Plan(Printed, AddressList.Nothing).Kept with { Sites = [A.Value("https://my-workshop.example/box/")] };
        Assert.Empty(AddressPlan.Plan(Printed with { Stages = [Printed.Stages[0]] }, list).Findings.All);
    }

    [Fact]
    public void While_nobody_knows_which_stages_there_are_none_is_called_gone() =>
        Assert.Empty(AddressPlan.Plan(Printed with { Stages = [Printed.Stages[0]], KnowsAllStages = false }, List).Findings.All);

    [Fact]
    public void A_site_that_moved_is_a_warning_until_the_old_place_leads_on()
    {
        var moved = Printed with { Address = A.Value("https://b.home.arpa/") };
        var finding = Assert.Single(AddressPlan.Plan(moved, List).Findings.All);
        Assert.Equal(("HB7302", Severity.Warning), (finding.Code.Id, finding.Code.Severity));
        Assert.Contains("moved/a.home.arpa", finding.Help, StringComparison.Ordinal);
        Assert.Equal("HB7302", Assert.Single(AddressPlan.Plan(Printed with { Address = null }, List).Findings.All).Code.Id);
        Assert.Empty(AddressPlan.Plan(moved with { MovedFrom = [A.Value("https://a.home.arpa/")] }, List).Findings.All);
    }

    [Fact]
    public void Every_place_where_the_site_has_lived_is_remembered()
    {
        var moved = Printed with { Address = A.Value("https://b.home.arpa/"), MovedFrom = [A.Value("https://a.home.arpa/")] };
        var next = AddressPlan.Plan(moved, List).Kept;
        Assert.Equal(["https://b.home.arpa/", "https://a.home.arpa/"], next.Sites.Select(site => site.Value));
        Assert.Equal("HB7302", Assert.Single(AddressPlan.Plan(moved with { MovedFrom = [] }, next).Findings.All).Code.Id);
    }

    [Fact]
    public void Two_stages_can_t_claim_one_address()
    {
        var both = Printed with { Stages = [Printed.Stages[0], Printed.Stages[1], A.Stage("cup") with { Was = [A.Value("tray")] }] };
        Assert.Equal("HB7304", Assert.Single(AddressPlan.Plan(both, List).Findings.All).Code.Id);
        var twice = Printed with
        {
            Stages = [Printed.Stages[0], A.Stage("cup") with { Was = [A.Value("tray")] }, A.Stage("dish") with { Was = [A.Value("tray")] }],
        };
        Assert.Equal("HB7304", Assert.Single(AddressPlan.Plan(twice, List).Findings.All).Code.Id);
    }

    [Fact]
    public void A_name_that_is_taken_is_passed_over_and_stays_so()
    {
        var taken = HintBook.Books.Addresses.Derive("tea-caddy", "lid");
        var known = AddressList.Nothing with { Stages = AddressList.Nothing.Stages.Add("tray", [A.Value(taken)]) };
        var (addresses, next, _) = AddressPlan.Plan(Printed, known);
        Assert.NotEqual(taken, addresses.Names["lid"][0]);
        Assert.Equal(addresses.Names["lid"], AddressPlan.Plan(Printed with { Stages = [.. Printed.Stages.Reverse()] }, next).Addresses.Names["lid"]);
    }

    [Fact]
    public void A_second_publish_says_the_same() => Assert.Equal(List.ToText(), AddressPlan.Plan(Printed, List).Kept.ToText());

    private static string[] Names(Book book) => [.. AddressPlan.Plan(book, AddressList.Nothing).Addresses.Names.Select(pair => $"{pair.Key} {pair.Value[0]}")];
}
