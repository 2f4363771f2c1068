using System.Text.RegularExpressions;
using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;
using HintBook.Starting;

namespace HintBook.Browser.Tests;

/// <summary>A letter of an owner, answered in the workbench.</summary>
public sealed class WorkbenchLetterTests(ReadingRoom room)
{
    [Fact]
    public async Task A_pasted_letter_is_answered_with_one_step_and_noted_where_that_is_asked_for()
    {
        await using var bench = await OpenBench.On(room, folder => NewBook.In(folder));
        var page = bench.Page;
        await page.GetByRole(AriaRole.Button, new() { Name = "Answer a letter" }).ClickAsync();

        await page.GetByLabel("The letter, or its subject").FillAsync("Hello, I am at the number. Help!");
        await page.GetByLabel("Page, if it isn’t in the letter").FillAsync("the-number");
        await Answer();
        await bench.Wait("() => document.querySelector('#letter-answer').value.includes('Nudge')");

        var nudge = await page.GetByLabel("Answer", new() { Exact = true }).InputValueAsync();
        Assert.DoesNotContain("0420", nudge, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(bench.Book, "letters.csv")));

        // The subject that the page would have written, in which the page's name stands.
        var subject = await page.GetByLabel("Subject", new() { Exact = true }).InputValueAsync();
        await page.GetByLabel("The letter, or its subject").FillAsync($"Subject: {subject}\n\nstill stuck");
        await page.GetByLabel("Page, if it isn’t in the letter").FillAsync("");
        await page.Locator("#letter-step").SelectOptionAsync("answer");
        await Answer();
        await bench.Wait("() => document.querySelector('#letter-answer').value.includes('0420')");

        await page.GetByLabel("Day").FillAsync("2026-11-28");
        await page.GetByRole(AriaRole.Button, new() { Name = "Note page and day" }).ClickAsync();
        await bench.Wait("() => document.querySelector('#letter-said').textContent === 'Noted.'");
        Assert.Matches("^page,date\n[0-9a-z]{8},2026-11-28\n$", bench.Text("letters.csv"));

        await page.GetByLabel("Page, if it isn’t in the letter").FillAsync("umbrella");
        await Answer();
        await Assertions.Expect(page.Locator("#letter-said")).ToContainTextAsync("ever called “umbrella”");
        Assert.True(await page.Locator("#letter-reply").IsHiddenAsync());

        Task Answer() => page.GetByRole(AriaRole.Button, new() { Name = "Write the answer" }).ClickAsync();
    }

    [Fact]
    public async Task A_book_with_errors_answers_no_letter()
    {
        await using var bench = await OpenBench.On(room, folder => NewBook.In(folder));
        bench.Elsewhere("stages/02-the-number.md", text => text.Replace("# Clue", "# Clew", StringComparison.Ordinal));
        await Assertions.Expect(bench.Page.Locator("#count")).ToContainTextAsync(new Regex("[1-9][0-9]* errors", RegexOptions.None, TimeSpan.FromSeconds(5)));
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Answer a letter" }).ClickAsync();

        await bench.Page.GetByLabel("Page, if it isn’t in the letter").FillAsync("the-number");
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Write the answer" }).ClickAsync();

        await bench.Wait("() => document.querySelector('#letter-said').textContent.includes('Mend them first')");
    }
}
