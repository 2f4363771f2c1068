using System.Collections.Immutable;
using System.Text;
using System.Text.RegularExpressions;
using HintBook.Audit.Sealed;

namespace HintBook.Tests.Audit.Sealed;

/// <summary>A sealed site is opened with its cards and read without them; whoever tampers with it is found.</summary>
public sealed partial class SealedAuditTests(SmallSealedSite site) : IClassFixture<SmallSealedSite>
{
    [Fact]
    public void A_sealed_book_is_clean_and_every_page_was_opened_with_every_card()
    {
        var report = site.Changed(_ => { });

        Assert.Empty(report.Faults);
        Assert.Equal(site.Cards.InUse.Length, report.Cards);
        // Stages under every name, front page, solution, reset, and “where am I?”.
        Assert.True(report.Opened >= site.Stages.Length + 3, $"{report.Opened} pages were opened");
    }

    [Fact]
    public void A_publish_says_how_many_pages_were_opened_with_how_many_cards_and_doubts_nothing()
    {
        Assert.Equal(site.Cards.InUse.Length, site.Report.Audit.Cards);
        Assert.Equal(site.Changed(_ => { }).Opened, site.Report.Audit.Opened);
        Assert.DoesNotContain(site.Report.Findings.All, finding => finding.Code.Id.StartsWith("HB74", StringComparison.Ordinal));
    }

    [Fact]
    public void A_piece_left_open_is_found() => Found(
        "isn't sealed",
        folder => Change(folder, site.Stages[0], html => Piece("clue").Replace(html, "${before}" + Plainly("<p>Turn the lid to the left.</p>") + "${after}")));

    [Fact]
    public void A_piece_left_open_in_every_page_is_found() => Found(
        "five pieces",
        folder => Array.ForEach(site.Stages, stage => Change(folder, stage, html => Piece("clue").Replace(html, ""))));

    [Fact]
    public void A_piece_sealed_for_another_page_is_found() => Found(
        "doesn't open with the key of its page",
        folder =>
        {
            var other = Piece("clue").Match(File.ReadAllText(FileOf(folder, site.Stages[1]))).Value;
            Change(folder, site.Stages[0], html => Piece("clue").Replace(html, other));
        });

    [Fact]
    public void The_slot_of_a_retired_copy_is_found()
    {
        var cards = site.Cards with { InUse = Of("002"), Retired = Of("001") };

        var faults = site.Changed(_ => { }, cards).Faults;

        Assert.Equal(cards.Retired.Length, faults.Count(fault => fault.Message.Contains("still opens its slot", StringComparison.Ordinal)));
        Assert.DoesNotContain(faults, fault => cards.Retired.Any(card => fault.Message.Contains(card.Code, StringComparison.Ordinal)));

        ImmutableArray<SealedCard> Of(string serial) => [.. site.Cards.InUse.Where(card => card.Serial == serial)];
    }

    [Fact]
    public void A_slot_that_no_card_opens_is_found() => Found(
        "opens nothing",
        folder => Rewrite(Path.Combine(folder, "k", "box-0.js"), text => Bytes().Replace(text, bytes => Turned(bytes.Value))));

    [Fact]
    public void A_key_that_lies_in_a_slot_of_nobody_is_found() => Found(
        "lies in the clear",
        folder => Rewrite(Path.Combine(folder, "k", "box-0.js"), text =>
        {
            const int size = 44;
            var used = site.Cards.InUse.Select(card => SealedCode.Read(card.Code)?.Number).ToHashSet();
            var free = Enumerable.Range(0, 64).First(number => !used.Contains(number));
            var bytes = Convert.FromBase64String(Bytes().Match(text).Value);
            site.Epoch.BoxKey.CopyTo(bytes, (free * size) + 12);
            return Bytes().Replace(text, Convert.ToBase64String(bytes));
        }));

    [Fact]
    public void A_page_that_opens_with_the_key_of_any_other_is_found()
    {
        var (first, last) = (site.Stages[0], site.Stages[^1]);

        var faults = site.Changed(folder => site.SealWith(folder, last, Of(first))).Faults;

        Assert.Contains(
            faults, fault => fault.File == last + ".html" && fault.Message.Contains($"with the cards of the page {first}", StringComparison.Ordinal));

        byte[] Of(string page) => site.Epoch.PageKey(page);
    }

    [Fact]
    public void A_shell_that_is_longer_than_others_is_found() => Found(
        "differs from others of its kind",
        folder => Change(folder, site.Stages[1], html => html.Replace("</main>", " </main>", StringComparison.Ordinal)));

    [Fact]
    public void A_title_in_an_attribute_is_found_even_if_all_pages_have_it()
    {
        var title = site.Book.Book.Stages[0].Title.Value;

        var faults = site.Changed(folder => Array.ForEach(site.Stages, stage =>
            Change(folder, stage, html => html.Replace("<main", $"<main title=\"{title}\"", StringComparison.Ordinal)))).Faults;

        Assert.Equal(site.Stages.Length, faults.Count(fault => fault.Message.Contains($"“{title}” lies open", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_sign_in_readable_data_is_found() => Found(
        "lies open",
        folder => File.WriteAllText(
            Path.Combine(folder, "stages.json"), $$"""{ "sign": "{{site.Book.Book.Stages.Select(stage => stage.Sign.Value).MaxBy(sign => sign.Length)}}" }"""));

    [Fact]
    public void A_hint_in_a_remark_of_a_script_is_found() => Found(
        "lies open",
        folder =>
        {
            site.WriteNudge(folder, site.Stages[0], "<div class=\"prose\"><p>Look at the underside of the lid again.</p></div>");
            File.WriteAllText(Path.Combine(folder, "more.js"), "// Look at the underside of the lid again.");
        });

    [Fact]
    public void An_everyday_title_in_other_letters_is_nothing()
    {
        var title = site.Book.Book.Stages[0].Title.Value;

        Assert.Empty(site.Changed(folder => File.WriteAllText(Path.Combine(folder, "note.txt"), $"So {title.ToUpperInvariant()} it is.")).Faults);
    }

    [Fact]
    public void A_table_of_another_length_is_found() => Found(
        "another length",
        folder => Rewrite(Path.Combine(folder, "k", $"{site.Stages[0]}-0.js"), text =>
        {
            var bytes = Convert.FromBase64String(Bytes().Match(text).Value);
            return text.Replace(Bytes().Match(text).Value, Convert.ToBase64String(bytes[..^44]), StringComparison.Ordinal);
        }));

    [Fact]
    public void What_a_nudge_tells_too_early_is_found_once_it_is_opened()
    {
        var table = site.Table;
        var page = table.Pages.First(page => page.File == site.Stages[0] + ".html");
        var secret = table.Secrets.Index().First(secret => !page.Folds["nudge"][secret.Index] && page.Sure?[secret.Index] != false).Item;

        var faults = site.Changed(folder => site.WriteNudge(folder, site.Stages[0], $"<p>It is {secret.Name}.</p>")).Faults;

        var fault = Assert.Single(faults, fault => fault.Secret == secret.Name);
        Assert.StartsWith("Once it is opened with a card", fault.Message, StringComparison.Ordinal);
        Assert.Equal(page.File, fault.File);
    }

    [Fact]
    public void A_link_in_a_sealed_piece_that_leads_nowhere_is_found() => Found(
        "Once it is opened with a card",
        folder => site.WriteNudge(folder, site.Stages[0], "<p><a href=\"nowhere.html\">Look there.</a></p>"));

    [Fact]
    public void A_folder_without_tables_or_with_anything_else_in_them_is_told_and_nothing_more()
    {
        Assert.Contains(site.Changed(folder => Directory.Delete(Path.Combine(folder, "k"), recursive: true)).Faults, fault =>
            fault.Message.Contains("opens nothing", StringComparison.Ordinal));
        Found("This isn't a table of slots", folder => File.WriteAllText(Path.Combine(folder, "k", "box-0.js"), "let key = 1;"));
        Found("No sealed piece names this file", folder => File.WriteAllText(
            Path.Combine(Directory.CreateDirectory(Path.Combine(folder, "p")).FullName, "abcdefghjkmnpqrs-0.js"), ""));
    }

    [Fact]
    public void Sealed_bytes_are_no_words_and_base64_of_a_text_is()
    {
        var random = new byte[1024 + 28];
        new Random(1).NextBytes(random);

        Assert.True(SealedForm.Holds("div", "data-text", Convert.ToBase64String(random)));
        Assert.False(SealedForm.Holds("div", "data-text", Plainly(new string('a', 1024 + 28))));
        Assert.False(SealedForm.Holds("div", "data-text", "the number is 5173"));
    }

    private void Found(string message, Action<string> change) =>
        Assert.Contains(site.Changed(change).Faults, fault => fault.IsSure && fault.Message.Contains(message, StringComparison.Ordinal));

    private static string FileOf(string folder, string page) => Path.Combine(folder, page + ".html");

    private static void Change(string folder, string page, Func<string, string> change) => Rewrite(FileOf(folder, page), change);

    private static void Rewrite(string file, Func<string, string> change)
    {
        var before = File.ReadAllText(file);
        var after = change(before);
        Assert.NotEqual(before, after);
        File.WriteAllText(file, after);
    }

    private static string Plainly(string text) => Convert.ToBase64String(Encoding.UTF8.GetBytes(text));

    private static string Turned(string base64) => Convert.ToBase64String([.. Convert.FromBase64String(base64).Select(each => (byte)(each ^ 0xFF))]);

    private static Regex Piece(string name) =>
        new($"(?<before><div data-sealed=\"{name}\" data-text=\")[^\"]*(?<after>\"></div>)", RegexOptions.ExplicitCapture);

    [GeneratedRegex("(?<=,\")[A-Za-z0-9+/=]{100,}(?=\"\\))")]
    private static partial Regex Bytes();
}
