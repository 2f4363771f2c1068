using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;
using HintBook.Publishing;
using HintBook.Starting;

namespace HintBook.Browser.Tests;

/// <summary>A book is written in the workbench by its maker: in forms, in the text, step by step, from an empty folder on.</summary>
public sealed class WorkbenchWritingTests(ReadingRoom room)
{
    private const string Panel = "stages/01-the-side-panel.md";
    private const string Number = "stages/02-the-number.md";
    private const string Lid = "stages/03-the-lid.md";

    [Fact]
    public async Task A_field_changes_its_entry_and_nothing_else()
    {
        await using var bench = await OpenBench.On(room, NewBook.In);
        await bench.Open(Panel);
        var before = bench.Text(Panel);

        await bench.Fill("title", "The panel: a start");

        await bench.OnDisk(Panel, "a start");
        Assert.Equal(before.Replace("title: The side panel", "title: \"The panel: a start\"", StringComparison.Ordinal), bench.Text(Panel));
        await bench.Wait("() => document.querySelector('#text').value.includes('The panel: a start')");
    }

    [Fact]
    public async Task Conditions_names_cautions_and_minutes_are_rows_and_numbers()
    {
        await using var bench = await OpenBench.On(room, NewBook.In);
        await bench.Open(Lid);

        await bench.Page.Locator("#field-needs-2-1").FillAsync("on-its-end");
        await bench.Page.Locator("#field-needs-2-1").PressAsync("Enter");
        await bench.OnDisk(Lid, "needs: [ steel-pin, lid-number, { box-tilt: on-its-end } ]");
        await bench.Add("needs", "side-panel", "shut, slid-open");
        await bench.OnDisk(Lid, "{ box-tilt: on-its-end }, { side-panel: [ shut, slid-open ] } ]");
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Take out steel-pin of “Needs”" }).ClickAsync();
        await bench.OnDisk(Lid, "needs: [ lid-number, {");
        await bench.Add("cautions", "glass", "The lid has a window.");
        await bench.OnDisk(Lid, "  - { kind: glass, note: The lid has a window. }\n");
        await bench.Fill("minutes", "7");
        await bench.OnDisk(Lid, "minutes: 7\n");

        Assert.Contains("# Dangers stand where the reader meets them.", bench.Text(Lid), StringComparison.Ordinal);
        Assert.Contains("  - kind: force\n    note: The pin goes in", bench.Text(Lid), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_was_found_stands_under_the_field_that_it_is_about()
    {
        await using var bench = await OpenBench.On(room, NewBook.In);
        await bench.Open(Panel);

        await bench.Fill("needs-0-0", "box-tillt");

        await bench.Wait("() => document.querySelector('#field-needs-found').textContent.includes('box-tillt')");
        Complaint.None(await AccessTests.Broken(bench.Page));
        await bench.Fill("sign", "");
        await bench.Wait("() => document.querySelector('#field-sign-found').textContent.includes('sign')");
    }

    [Fact]
    public async Task The_forms_of_the_book_and_of_a_step_break_no_rule_of_accessibility()
    {
        await using var bench = await OpenBench.On(room, NewBook.In);
        await bench.Open("book.yaml");
        Complaint.None(await AccessTests.Broken(bench.Page));
        await bench.Open(Lid);
        Complaint.None(await AccessTests.Broken(bench.Page));
    }

    [Fact]
    public async Task A_form_is_filled_by_keyboard_alone()
    {
        await using var bench = await OpenBench.On(room, NewBook.In);
        await bench.Open(Number);

        await bench.Page.Locator("#field-title").FocusAsync();
        await bench.Page.Keyboard.PressAsync("Control+A");
        await bench.Page.Keyboard.TypeAsync("The farmyard");
        await bench.Page.Keyboard.PressAsync("Tab");
        await bench.OnDisk(Number, "title: The farmyard\n");
        Assert.Equal("field-sign", await bench.Page.EvaluateAsync<string>("() => document.activeElement.id"));
        await bench.Page.Keyboard.PressAsync("Tab");
        await bench.Page.Keyboard.PressAsync("Enter");
        await bench.Page.Keyboard.TypeAsync("box-tilt");
        await bench.Page.Keyboard.PressAsync("Tab");
        await bench.Page.Keyboard.TypeAsync("level");
        await bench.Page.Keyboard.PressAsync("Enter");

        await bench.OnDisk(Number, "needs: [ { box-tilt: level } ]\n");
    }

    [Fact]
    public async Task What_is_being_typed_in_a_field_stays_when_another_program_saves()
    {
        await using var bench = await OpenBench.On(room, NewBook.In);
        await bench.Open(Panel);
        await bench.Page.Locator("#field-sign").FocusAsync();
        await bench.Page.Keyboard.TypeAsync("Half a ");

        bench.Elsewhere(Panel, text => text.Replace("minutes: 5", "minutes: 6", StringComparison.Ordinal));
        await bench.Wait("() => document.querySelector('#text').value.includes('minutes: 6')");
        await bench.Page.Keyboard.TypeAsync("word. ");
        await bench.Page.Keyboard.PressAsync("Enter");

        await bench.OnDisk(Panel, "Half a word. ");
        Assert.Contains("minutes: 6", bench.Text(Panel), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_entry_that_two_change_at_once_is_asked_about_and_both_texts_are_there()
    {
        await using var bench = await OpenBench.On(room, NewBook.In);
        await bench.Open(Panel);
        await bench.Page.Locator("#field-sign").FillAsync("Mine.");

        bench.Elsewhere(Panel, text => text.Replace("sign: The box", "sign: Theirs. The box", StringComparison.Ordinal));
        await bench.Wait("() => document.querySelector('#text').value.includes('Theirs.')");
        await bench.Page.Locator("#field-sign").PressAsync("Enter");
        await bench.Wait("() => document.querySelector('#saved').textContent.includes('changed by another program meanwhile')");
        Assert.Equal("Mine.", await bench.Page.Locator("#field-sign").InputValueAsync());
        Assert.Contains("sign: Theirs.", bench.Text(Panel), StringComparison.Ordinal);

        await bench.Page.Locator("#field-sign").PressAsync("Enter");
        await bench.OnDisk(Panel, "sign: Mine.\n");
    }

    [Fact]
    public async Task A_step_is_renamed_after_it_was_told_what_that_means_and_the_renaming_is_taken_back()
    {
        await using var bench = await OpenBench.On(room, folder =>
        {
            NewBook.In(folder);
            File.WriteAllText(Path.Combine(folder, "kept-addresses.txt"), "stage the-number abcd2345\n");
            File.AppendAllText(Path.Combine(folder, "book.yaml"), "\n");
        });
        bench.Elsewhere(Lid, text => text.Replace("minutes: 5", "after: [ the-number ]\nminutes: 5", StringComparison.Ordinal));
        await bench.Open(Number);
        var (number, lid) = (bench.Text(Number), bench.Text(Lid));

        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Rename …" }).ClickAsync();
        await bench.Page.Locator("#wish-text").FillAsync("the-farmyard");
        await bench.Page.Locator("#wish-do:enabled").WaitForAsync();
        var told = await bench.Page.Locator("#wish-says").InnerTextAsync();
        Assert.Contains("abcd2345.html stays and leads to this step", told, StringComparison.Ordinal);
        Assert.Contains("stages/02-the-farmyard.md is made", told, StringComparison.Ordinal);
        Assert.Contains($"{Lid} changes", told, StringComparison.Ordinal);
        Complaint.None(await AccessTests.Broken(bench.Page));
        Assert.True(File.Exists(Path.Combine(bench.Book, Number)));
        await bench.Page.Keyboard.PressAsync("Enter");

        await bench.Opened("stages/02-the-farmyard.md");
        Assert.Contains("was: [ the-number ]\n", bench.Text("stages/02-the-farmyard.md"), StringComparison.Ordinal);
        Assert.Contains("after: [ the-farmyard ]\n", bench.Text(Lid), StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(bench.Book, Number)));

        await bench.Page.Locator("#take-back").ClickAsync();
        await bench.Opened("book.yaml");
        Assert.Equal((number, lid), (bench.Text(Number), bench.Text(Lid)));
        Assert.False(File.Exists(Path.Combine(bench.Book, "stages/02-the-farmyard.md")));
    }

    [Fact]
    public async Task Steps_are_moved_split_and_taken_out()
    {
        await using var bench = await OpenBench.On(room, NewBook.In);
        await bench.Open(Lid);

        await Done(bench, "Earlier …");
        await bench.Opened("stages/02-the-lid.md");
        Assert.True(File.Exists(Path.Combine(bench.Book, "stages/03-the-number.md")));

        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Split …" }).ClickAsync();
        await bench.Page.Locator("#wish-text").FillAsync("The heart");
        await bench.Page.GetByLabel("gives wooden-heart").CheckAsync();
        await bench.Page.Locator("#wish-do:enabled").ClickAsync();
        await bench.Opened("stages/03-the-heart.md");
        Assert.Contains("after: [ the-lid ]\n", bench.Text("stages/03-the-heart.md"), StringComparison.Ordinal);
        Assert.DoesNotContain("gives:", bench.Text("stages/02-the-lid.md"), StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(bench.Book, "stages/04-the-number.md")));

        await Done(bench, "Take out …");
        await bench.Opened("book.yaml");
        Assert.False(File.Exists(Path.Combine(bench.Book, "stages/03-the-heart.md")));
    }

    [Fact]
    public async Task Undo_goes_back_over_saves_forms_and_files()
    {
        await using var bench = await OpenBench.On(room, NewBook.In);
        await bench.Open(Number);
        var before = bench.Text(Number);
        await bench.Page.Locator("#text").FocusAsync();
        await bench.Page.Keyboard.PressAsync("Control+End");
        await bench.Page.Keyboard.TypeAsync("Typed.\n");
        await bench.OnDisk(Number, "Typed.\n");
        await bench.Fill("minutes", "9");
        await bench.OnDisk(Number, "minutes: 9\n");
        await bench.Wait("() => document.querySelector('#text').value.includes('minutes: 9')");
        await bench.Open(Lid);
        await bench.Open(Number);

        await bench.Page.Locator("#text").FocusAsync();
        await bench.Page.Keyboard.PressAsync("Control+z");
        await bench.OnDisk(Number, "minutes: 10\n");
        for (var step = 0; step < 20 && await bench.Page.Locator("#undo").IsEnabledAsync(); step++)
            await bench.Page.Keyboard.PressAsync("Control+z");
        await bench.Wait("before => document.querySelector('#text').value === before", before);
        await bench.Page.Locator("#redo").ClickAsync();
        await bench.Wait("before => document.querySelector('#text').value !== before", before);
    }

    [Fact]
    public async Task Names_are_completed_by_keyboard_in_the_text()
    {
        await using var bench = await OpenBench.On(room, NewBook.In);
        await bench.Open(Lid);
        await CaretBehind(bench, "needs: [ ");

        await bench.Page.Keyboard.TypeAsync("wo");
        await bench.Page.Locator("#completions li").First.WaitForAsync();
        await bench.Page.Keyboard.PressAsync("ArrowDown");
        Assert.Equal("completion-0", await bench.Page.Locator("#text").GetAttributeAsync("aria-activedescendant"));
        Complaint.None(await AccessTests.Broken(bench.Page));
        await bench.Page.Keyboard.PressAsync("Enter");
        await bench.OnDisk(Lid, "needs: [ wooden-heart");

        await bench.Page.Keyboard.TypeAsync(", { box-tilt: ");
        await bench.Page.Keyboard.PressAsync("Control+Space");
        Assert.Equal(["level", "on-its-end"], await bench.Page.Locator("#completions li").AllTextContentsAsync());
        await bench.Page.Keyboard.PressAsync("Escape");
        Assert.True(await bench.Page.Locator("#completions").IsHiddenAsync());
    }

    [Fact]
    public async Task Two_texts_of_one_file_are_shown_line_by_line()
    {
        await using var bench = await OpenBench.On(room, NewBook.In);
        await bench.Open(Number);
        // The page hears of no change from here on, as if both had saved in the same moment.
        await bench.Page.RouteAsync("**/look", _ => Task.CompletedTask);
        bench.Elsewhere(Number, text => text.Replace("minutes: 10", "minutes: 11", StringComparison.Ordinal));

        await bench.Page.Locator("#text").FocusAsync();
        await bench.Page.Keyboard.PressAsync("Control+End");
        await bench.Page.Keyboard.TypeAsync("Mine.\n");

        await bench.Wait("() => document.querySelector('#yours').textContent.endsWith('Mine.\\n')");
        await Assertions.Expect(bench.Page.Locator("#differences li.theirs")).ToHaveTextAsync(["on the disk: minutes: 11"]);
        await Assertions.Expect(bench.Page.Locator("#differences li.mine")).ToHaveTextAsync(["yours: minutes: 10", "yours: Mine."]);
        Complaint.None(await AccessTests.Broken(bench.Page));
    }

    [Fact]
    public async Task What_was_saved_while_the_file_was_being_read_again_stays()
    {
        await using var bench = await OpenBench.On(room, NewBook.In);
        await bench.Open(Number);
        var (asked, saved) = (new TaskCompletionSource(), new TaskCompletionSource());
        var isHeld = false;
        await bench.Page.RouteAsync(
            url => url.Contains("/text?name=", StringComparison.Ordinal),
            async route =>
            {
                if (route.Request.Method != "GET" || isHeld)
                {
                    await route.ContinueAsync();
                    return;
                }

                isHeld = true;
                var older = await route.FetchAsync();
                asked.SetResult();
                await saved.Task;
                await route.FulfillAsync(new() { Response = older });
            });
        bench.Elsewhere(Number, text => text.Replace("minutes: 10", "minutes: 11", StringComparison.Ordinal));
        await asked.Task.WaitAsync(TestContext.Current.CancellationToken);
        bench.Elsewhere(Number, text => text.Replace("minutes: 11", "minutes: 10", StringComparison.Ordinal));

        await bench.Page.Locator("#text").FocusAsync();
        await bench.Page.Keyboard.PressAsync("Control+End");
        await bench.Page.Keyboard.TypeAsync("Mine.\n");
        await bench.OnDisk(Number, "Mine.\n");
        await bench.Wait("() => document.querySelector('#saved').textContent === 'Saved.'");
        await bench.Page.EvaluateAsync(
            "() => { window.taken = []; document.addEventListener('taken', () => taken.push(document.querySelector('#text').value)); }");
        saved.SetResult();
        // The next reading comes after the one that was held.
        bench.Elsewhere(Number, text => text + "Theirs.\n");

        await bench.Wait("() => document.querySelector('#text').value.endsWith('Mine.\\nTheirs.\\n')");
        Assert.All(await bench.Page.EvaluateAsync<string[]>("() => taken"), text => Assert.Contains("Mine.", text, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_disk_that_fills_while_saving_is_told_and_the_text_is_still_on_the_page()
    {
        SmallDisk? disk = null;
        await using var bench = await OpenBench.On(room, folder =>
        {
            disk = SmallDisk.At(folder);
            NewBook.In(folder);
        });
        using var small = disk;
        await bench.Open(Number);
        var before = bench.Text(Number);
        small?.Fill();

        await bench.Page.Locator("#text").FocusAsync();
        await bench.Page.Keyboard.PressAsync("Control+End");
        await bench.Page.Keyboard.TypeAsync("Typed.\n");
        await bench.Wait("() => document.querySelector('#saved').textContent.includes('Your text is still on this page')");
        Assert.Equal(before, bench.Text(Number));
        await bench.Fill("minutes", "12");
        await bench.Wait("() => document.querySelector('#saved').textContent.includes('can\\'t be')");
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = "Earlier …" }).ClickAsync();
        await bench.Page.Locator("#wish-do:enabled").ClickAsync();
        await bench.Wait("() => document.querySelector('#wish-says').textContent.includes('Nothing was changed')");
        await bench.Page.Keyboard.PressAsync("Escape");
        Assert.True(File.Exists(Path.Combine(bench.Book, Number)));

        small?.Empty();
        await bench.Page.Locator("#text").FocusAsync();
        await bench.Page.Keyboard.TypeAsync("More.\n");
        await bench.OnDisk(Number, "Typed.\nMore.\n");
    }

    [Fact]
    public async Task From_an_empty_folder_to_a_book_of_three_steps_that_is_published_without_an_editor()
    {
        await using var bench = await OpenBench.On(room, _ => { });
        var page = bench.Page;
        Complaint.None(await AccessTests.Broken(page));
        await page.Locator("#begin-title").FillAsync("The Tea Caddy");
        await page.Locator("#begin-maker").FillAsync("Elm Yard Boxes");
        await page.Keyboard.PressAsync("Enter");
        await bench.Opened("book.yaml");

        await Declare(bench, "parts", "lid", "name", "the lid");
        await Declare(bench, "parts", "drawer", "name", "the drawer");
        await Declare(bench, "things", "spoon", "name", "silver spoon");
        await Declare(bench, "things", "tea", "name", "the green tea");
        await Declare(bench, "codes", "drawer-number", "answer", "0714");
        await bench.Fill("codes-drawer-number-name", "number of the drawer");
        await bench.Fill("codes-drawer-number-clue", "zero cups, seven pots, one kettle, four leaves");
        await bench.Add("codes-drawer-number-reads", "number-words");
        await bench.Page.Locator("[id='field-parts-lid-seen']").CheckAsync();
        await bench.Page.Locator("[id='field-parts-drawer-seen']").CheckAsync();
        await bench.Add("goal", "tea");
        await bench.OnDisk("book.yaml", "goal: [ tea ]\n");
        await bench.OnDisk("book.yaml", "seen: true");

        await Step(bench, "The spoon", "The lid is shut.", "Look above.", "The **lid** moves.", "Lift the **lid**. Take the **silver spoon**.");
        await bench.Add("does", "lid", "open");
        await bench.Add("gives", "spoon");
        var clue = "Count: *zero cups, seven pots, one kettle, four leaves*.";
        await Step(bench, "The row of cups", "There is a row of pictures.", "Read all.", clue, "It is **0714**.");
        await bench.Add("gives", "drawer-number");
        clue = "Use the **silver spoon** on the **drawer**.";
        await Step(bench, "The last drawer", "The drawer is shut.", "You have all.", clue, "Set **0714**; take **the green tea**.");
        await bench.Add("needs", "spoon", "");
        await bench.Add("needs", "drawer-number", "");
        await bench.Add("does", "drawer", "open");
        await bench.Add("gives", "tea");
        await bench.OnDisk("stages/03-the-last-drawer.md", "gives: [ tea ]\n");

        var outcome = Pipeline.Publish(bench.Book, new());
        var errors = outcome is Rejected rejected ? rejected.Findings.All.Where(finding => finding.IsError) : [];
        Complaint.None([.. errors.Select(finding => $"{finding.Message} {finding.Help}")]);
        Assert.IsType<Published>(outcome);
        Assert.Equal(3, Directory.GetFiles(Path.Combine(bench.Book, "stages")).Length);
    }

    private static async Task CaretBehind(OpenBench bench, string words) => await bench.Page.EvaluateAsync(
        """
        words => {
          const text = document.querySelector('#text');
          const at = text.value.indexOf(words) + words.length;
          text.focus();
          text.setSelectionRange(at, at);
        }
        """,
        words);

    private static async Task Done(OpenBench bench, string button)
    {
        await bench.Page.GetByRole(AriaRole.Button, new() { Name = button }).ClickAsync();
        await bench.Page.Locator("#wish-do:enabled").ClickAsync();
    }

    private static async Task Declare(OpenBench bench, string key, string name, string field, string text)
    {
        await bench.Page.Locator($"#declare-{key}").FillAsync(name);
        await bench.Page.Locator($"#declare-{key}").PressAsync("Enter");
        await bench.Page.Locator($"[id='field-{key}-{name}-{field}']").WaitForAsync();
        await bench.Fill($"{key}-{name}-{field}", text);
        await bench.OnDisk("book.yaml", text);
    }

    private static async Task Step(OpenBench bench, string title, string sign, string nudge, string clue, string answer)
    {
        await bench.Page.Locator("#new-step").ClickAsync();
        await bench.Page.Locator("#wish-text").FillAsync(title);
        await bench.Page.Locator("#wish-do:enabled").ClickAsync();
        await bench.Wait("title => document.querySelector('#field-title')?.value === title", title);
        await bench.Fill("sign", sign);
        await bench.Wait("sign => document.querySelector('#text').value.includes(sign)", sign);
        foreach (var (heading, help) in new[] { ("# Nudge\n", nudge), ("# Clue\n", clue), ("# Answer\n", answer) })
        {
            await CaretBehind(bench, heading);
            await bench.Page.Keyboard.TypeAsync($"{help}\n");
        }

        await bench.Wait("() => document.querySelector('#saved').textContent === 'Saved.'");
    }
}
