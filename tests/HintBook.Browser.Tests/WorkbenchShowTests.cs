using HintBook.Browser.Tests.Reading;
using HintBook.Browser.Tests.Sites;
using HintBook.Starting;
using HintBook.Workbench;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Metadata.Profiles.Exif;
using SixLabors.ImageSharp.PixelFormats;

namespace HintBook.Browser.Tests;

/// <summary>The workbench where it shows: photos, marks, film, publishing, what readers know, and the pages on a telephone.</summary>
public sealed class WorkbenchShowTests(ReadingRoom room) : IAsyncLifetime
{
    private const string Number = "stages/02-the-number.md";
    private static readonly PageWaitForFunctionOptions Patience = new() { Timeout = 60_000 };

    private readonly string root = Directory.CreateTempSubdirectory("hintbook-workbench-").FullName;
    private WorkbenchServer bench = null!;
    private IPage page = null!;

    private string Book => Path.Combine(root, "book");

    private string Text => File.ReadAllText(Path.Combine(Book, Number));

    public async ValueTask InitializeAsync()
    {
        NewBook.In(Book);
        bench = await WorkbenchServer.Open(Book, onPhones: true);
        page = await room.Page(new() { Width = 1600, Height = 900 });
        await page.GotoAsync(bench.Address.ToString());
        await page.WaitForFunctionAsync("() => document.documentElement.dataset.look > 0", null, Patience);
    }

    public async ValueTask DisposeAsync()
    {
        await page.Context.DisposeAsync();
        await bench.DisposeAsync();
        Directory.Delete(root, recursive: true);
    }

    [Fact]
    public async Task A_dropped_photo_is_turned_stripped_and_named_and_its_entry_is_written()
    {
        await Open(Number);

        await Drop("IMG_2034.JPG", Photo(orientation: 6));
        await page.Locator("#photo").WaitForAsync();

        Assert.Contains("photos: { clue: the-number-clue.jpg }\n", Text, StringComparison.Ordinal);
        using var kept = await Image.LoadAsync<Rgb24>(Path.Combine(Book, "photos", "the-number-clue.jpg"));
        Assert.Equal((300, 400), (kept.Width, kept.Height));
        Assert.Null(kept.Metadata.ExifProfile);
        Assert.Null(kept.Metadata.XmpProfile);
        // Asked for next, since a reader may not see the picture.
        await page.WaitForFunctionAsync("() => document.activeElement.id === 'photo-alt'", null, Patience);
        await page.Keyboard.TypeAsync("A card with four numbers.");
        await Written("clue: { file: the-number-clue.jpg, alt: A card with four numbers. }");
        await page.WaitForFunctionAsync(
            "alt => [...document.querySelector('#phone-view').contentDocument?.images ?? []].some(image => image.alt === alt)",
            "A card with four numbers.",
            Patience);
    }

    [Fact]
    public async Task A_second_photo_of_that_name_gets_another()
    {
        await Open(Number);
        await page.Locator("#photo-place").SelectOptionAsync("answer");

        await Drop("The tray.jpg", Photo());
        await page.Locator("#photos li").First.WaitForAsync();
        await Drop("The tray.jpg", Photo());

        await page.WaitForFunctionAsync("() => document.querySelectorAll('#photos li').length === 2", null, Patience);
        Assert.Contains("answer: [ the-tray.jpg, the-tray-2.jpg ]", Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_no_picture_is_refused_in_a_sentence_and_nothing_is_written()
    {
        await Open(Number);
        var before = Text;

        await Drop("notes.jpg", "not a picture"u8.ToArray());

        await page.WaitForFunctionAsync(
            "() => document.querySelector('#pictures-said').textContent.includes('is not a JPEG, PNG or WebP picture')", null, Patience);
        Assert.Equal(before, Text);
        Assert.False(File.Exists(Path.Combine(Book, "photos", "notes.jpg")));
    }

    [Fact]
    public async Task A_mark_is_set_by_a_click_dragged_moved_by_arrows_named_and_taken_away()
    {
        await Open(Number);
        await Drop("tray.jpg", Photo());
        await page.Locator("#photo").WaitForAsync();

        var picture = await Shown();
        await page.Mouse.ClickAsync(picture.X + (picture.Width * 0.25f), picture.Y + (picture.Height * 0.5f));
        await page.Keyboard.TypeAsync("the catch");
        await Written("marks: [ { at: [ 25, 50 ], says: the catch } ]", roundly: true);

        picture = await Shown();
        await page.Mouse.MoveAsync(picture.X + (picture.Width * 0.25f), picture.Y + (picture.Height * 0.5f));
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(picture.X + (picture.Width * 0.5f), picture.Y + (picture.Height * 0.75f), new() { Steps = 4 });
        await page.Mouse.UpAsync();
        await Written("marks: [ { at: [ 50, 75 ], says: the catch } ]", roundly: true);

        await page.Locator(".mark").FocusAsync();
        await page.Keyboard.PressAsync("Shift+ArrowLeft");
        await page.Keyboard.PressAsync("Shift+ArrowUp");
        await Written("marks: [ { at: [ 45, 70 ], says: the catch } ]", roundly: true);

        await page.Keyboard.PressAsync("Delete");
        await page.WaitForFunctionAsync("() => document.activeElement.id === 'add-mark'", null, Patience);
        await Until(() => !Text.Contains("marks", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_photo_is_added_and_marked_by_keyboard_alone()
    {
        await Open(Number);
        await page.Locator("#photo-file").SetInputFilesAsync(new FilePayload { Name = "tray.png", MimeType = "image/png", Buffer = Photo() });
        await page.WaitForFunctionAsync("() => document.activeElement.id === 'photo-alt'", null, Patience);
        await page.Keyboard.TypeAsync("A tray.");
        await page.Keyboard.PressAsync("Shift+Tab");
        await page.Keyboard.PressAsync("Enter");
        await page.Keyboard.TypeAsync("the spring");

        await Written("alt: A tray., marks: [ { at: [ 50, 50 ], says: the spring } ]");
        Complaint.None(await AccessTests.Broken(page));
    }

    [Fact]
    public async Task Text_that_is_typed_meanwhile_is_kept_beside_the_entry()
    {
        await Open(Number);
        await page.EvaluateAsync(
            """
            () => {
              const text = document.querySelector('#text');
              text.value = text.value.replace('# Nudge\n', '# Nudge\nTyped words. ');
              text.dispatchEvent(new Event('input'));
            }
            """);
        await Drop("tray.jpg", Photo());

        await page.Locator("#photo").WaitForAsync();
        await Until(() => Text.Contains("Typed words.", StringComparison.Ordinal) && Text.Contains("clue: tray.jpg", StringComparison.Ordinal));
        await page.WaitForFunctionAsync(
            "() => ['Typed words.', 'clue: tray.jpg'].every(words => document.querySelector('#text').value.includes(words))", null, Patience);
    }

    [Fact]
    public async Task The_part_of_a_film_is_marked_while_it_plays()
    {
        Film.Make(Path.Combine(Book, "clips"));
        await Open(Number);
        await page.Locator("#film > summary").ClickAsync();
        await page.WaitForFunctionAsync("() => document.querySelector('#film-video').readyState > 0", null, Patience);

        await Seek(1.5);
        await page.Locator("#film-from-here").ClickAsync();
        await Written("clip: { file: film.webm, from: 0:01.5 }");
        await Seek(3);
        await page.Locator("#film-to-here").ClickAsync();
        await Written("clip: { file: film.webm, from: 0:01.5, to: 0:03 }");
        Complaint.None(await AccessTests.Broken(page));

        await page.Locator("#film-to").FillAsync("0:01");
        await page.Locator("#film-to").BlurAsync();
        await page.WaitForFunctionAsync("() => document.querySelector('#film-said').textContent.includes('ends before')", null, Patience);
        await page.Locator("#film-none").ClickAsync();
        await Until(() => !Text.Contains("clip:", StringComparison.Ordinal));

        async Task Seek(double time) => await page.EvaluateAsync(
            """
            async time => {
              const film = document.querySelector('#film-video');
              const there = new Promise(done => { film.onseeked = done; });
              film.currentTime = time;
              await there;
            }
            """,
            time);
    }

    [Fact]
    public async Task A_film_that_the_browser_cannot_play_is_told_and_its_times_are_typed()
    {
        Directory.CreateDirectory(Path.Combine(Book, "clips"));
        await File.WriteAllTextAsync(Path.Combine(Book, "clips", "odd.mkv"), "no film");
        await Open(Number);
        await page.Locator("#film > summary").ClickAsync();

        await page.WaitForFunctionAsync("() => document.querySelector('#film-said').textContent.includes(\"can't play the film\")", null, Patience);
        await page.Locator("#film-from").FillAsync("2:16");
        await page.Locator("#film-from").BlurAsync();

        await Written("clip: { file: odd.mkv, from: 2:16 }");
    }

    [Fact]
    public async Task The_book_is_published_from_the_page_and_its_report_is_told()
    {
        await page.Locator("#to-make").ClickAsync();
        await page.WaitForFunctionAsync("() => document.querySelector('#make-output').value", null, Patience);
        Assert.Equal(Path.Combine(Book, "published"), await page.Locator("#make-output").InputValueAsync());

        await page.Locator("#make-all").ClickAsync();

        await page.WaitForFunctionAsync("() => document.querySelector('#make-said').textContent === 'It is done.'", null, Patience);
        Assert.True(File.Exists(Path.Combine(Book, "published", "site", "index.html")));
        var told = await page.Locator("#make-lines").TextContentAsync();
        Assert.Contains("read back", told, StringComparison.Ordinal);
        Assert.Contains("Upload everything in", told, StringComparison.Ordinal);
        Complaint.None(await AccessTests.Broken(page));
    }

    [Fact]
    public async Task A_folder_that_is_not_for_a_publish_is_refused_in_a_sentence()
    {
        await page.Locator("#to-make").ClickAsync();
        await page.WaitForFunctionAsync("() => document.querySelector('#make-output').value", null, Patience);
        await page.Locator("#make-output").FillAsync(Path.Combine(Book, "stages"));

        await page.Locator("#make-all").ClickAsync();

        await page.WaitForFunctionAsync("() => document.querySelector('#make-said').textContent === \"It wasn't done.\"", null, Patience);
        Assert.Contains("where a book keeps its own files", await page.Locator("#make-lines").TextContentAsync() ?? "", StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_book_with_errors_is_not_published_and_the_errors_are_listed()
    {
        var path = Path.Combine(Book, Number);
        await File.WriteAllTextAsync(path, Text.Replace("sign:", "sing:", StringComparison.Ordinal));
        await page.Locator("#to-make").ClickAsync();
        await page.WaitForFunctionAsync("() => document.querySelector('#make-output').value", null, Patience);

        await page.Locator("#make-all").ClickAsync();

        await page.Locator("#make-found li").First.WaitForAsync();
        await page.Locator("#make-found button").First.ClickAsync();
        await page.WaitForFunctionAsync("() => document.activeElement.id === 'text'", null, Patience);
    }

    [Fact]
    public async Task Papers_are_printed_from_the_page()
    {
        await page.Locator("#to-make").ClickAsync();
        await page.Locator("#make-papers input").First.WaitForAsync();
        foreach (var paper in await page.Locator("#make-papers input").AllAsync())
            await paper.SetCheckedAsync(await paper.GetAttributeAsync("value") == "booklet");

        await page.Locator("#make-print").ClickAsync();

        await page.WaitForFunctionAsync("() => document.querySelector('#make-said').textContent === 'It is done.'", null, Patience);
        Assert.NotEmpty(Directory.GetFiles(Path.Combine(Book, "published", "print"), "*.pdf"));
    }

    [Fact]
    public async Task What_readers_know_is_told_with_the_reason_for_each_spoiler()
    {
        await page.Locator("#to-proofs").ClickAsync();
        await page.Locator("#known-step option").First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
        await page.Locator("#known-step").SelectOptionAsync(Number);

        await Assertions.Expect(page.Locator("#spoilers")).ToContainTextAsync("the answer of");
        Complaint.None(await AccessTests.Broken(page));
    }

    [Fact]
    public async Task Where_am_I_is_walked_and_its_taps_are_counted()
    {
        await page.Locator("#to-proofs").ClickAsync();
        await page.Locator("#where-says li").First.WaitForAsync();
        await page.Locator("#where-walk").ClickAsync();
        await page.WaitForFunctionAsync("() => document.querySelectorAll('#where-way li').length === 1", null, Patience);
        await page.FrameLocator("#phone-view").Locator("main a").First.ClickAsync();

        await page.WaitForFunctionAsync("() => document.querySelector('#where-taps').textContent.includes('1 tap')", null, Patience);
    }

    [Fact]
    public async Task Findings_stand_on_the_map()
    {
        var path = Path.Combine(Book, Number);
        await File.WriteAllTextAsync(path, Text.Replace("# Nudge\n", "# Nudge\n[nowhere](nowhere.html) ", StringComparison.Ordinal));
        await page.WaitForFunctionAsync("() => document.querySelectorAll('#found li').length > 0", null, Patience);

        await page.Locator("#to-proofs").ClickAsync();

        await page.Locator("#map-found button").First.WaitForAsync();
        var map = await page.EvaluateAsync<string>("async () => (await fetch(document.querySelector('#map').src)).text()");
        Assert.Matches("<text[^>]*>1 (error|warning)</text>", map);
    }

    [Fact]
    public async Task A_telephone_reads_the_pages_by_the_code_on_the_page()
    {
        await page.Locator("#to-make").ClickAsync();
        await page.Locator("#phone-on").WaitForAsync();
        var address = Assert.Single(bench.OnPhones.Take(1));
        Assert.Contains(address.ToString(), await page.Locator("#phone-addresses").TextContentAsync() ?? "", StringComparison.Ordinal);
        await page.WaitForFunctionAsync("() => document.querySelector('#phone-code').naturalWidth > 0", null, Patience);

        var telephone = await room.Page(new() { Width = 390, Height = 800 });
        await telephone.GotoAsync(address.ToString());
        await telephone.Locator("main a").First.ClickAsync();

        Assert.Contains(address.AbsolutePath, telephone.Url, StringComparison.Ordinal);
        await telephone.Context.DisposeAsync();
    }

    [Fact]
    public async Task A_second_workbench_on_one_book_says_so()
    {
        await using var second = await WorkbenchServer.Open(Book);
        Assert.True(second.HasAnother);
        await page.GotoAsync(second.Address.ToString());

        await page.WaitForFunctionAsync("() => document.querySelector('#house').textContent.includes('Another workbench')", null, Patience);
    }

    [Fact]
    public async Task A_book_that_can_only_be_read_is_said_to_be_and_its_fields_are_shut()
    {
        await page.RouteAsync("**/house", route => route.FulfillAsync(new()
        {
            ContentType = "application/json",
            Body = """{ "readOnly": true, "another": false, "sealed": false, "phone": false, "addresses": [] }""",
        }));
        await page.ReloadAsync();
        await page.WaitForFunctionAsync("() => document.querySelector('#house').textContent.includes('only be read')", null, Patience);
        await Open(Number);

        Assert.False(await page.Locator("#text").IsEditableAsync());
        await page.WaitForFunctionAsync(
            "() => document.querySelector('#photo-file').disabled && document.querySelector('#film-from').disabled", null, Patience);
        Complaint.None(await AccessTests.Broken(page));
    }

    private static byte[] Photo(int orientation = 1)
    {
        using var image = new Image<Rgb24>(400, 300, new Rgb24(180, 120, 40));
        image.Metadata.ExifProfile = new ExifProfile();
        image.Metadata.ExifProfile.SetValue(ExifTag.Orientation, (ushort)orientation);
        image.Metadata.ExifProfile.SetValue(ExifTag.Make, "A camera");
        using var stream = new MemoryStream();
        image.SaveAsJpeg(stream);
        return stream.ToArray();
    }

    private async Task Open(string file)
    {
        await page.GetByRole(AriaRole.Button, new() { Name = file }).First.ClickAsync();
        await page.WaitForFunctionAsync("file => document.querySelector('#writing').textContent === file", file, Patience);
        await page.Locator("#pictures").WaitForAsync();
        // The form stands above the pictures: they move when it comes.
        await page.WaitForFunctionAsync("file => document.querySelector('#form').dataset.of === file", file, Patience);
        await page.WaitForFunctionAsync(
            """
            () => {
              const view = document.querySelector('#phone-view');
              return view.contentDocument?.readyState === 'complete' && view.contentWindow.location.href === view.src;
            }
            """,
            null,
            Patience);
    }

    // As a hand does: over the text, and let go.
    private async Task Drop(string name, byte[] photo) => await page.EvaluateAsync(
        """
        ([name, bytes]) => {
          const data = new DataTransfer();
          data.items.add(new File([Uint8Array.from(atob(bytes), sign => sign.charCodeAt(0))], name, { type: 'image/jpeg' }));
          const text = document.querySelector('#text');
          text.dispatchEvent(new DragEvent('dragover', { dataTransfer: data, bubbles: true, cancelable: true }));
          text.dispatchEvent(new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true }));
        }
        """,
        new[] { name, Convert.ToBase64String(photo) });

    private async Task<LocatorBoundingBoxResult> Shown()
    {
        await page.Locator("#photo-img").ScrollIntoViewIfNeededAsync();
        await page.WaitForFunctionAsync("() => document.querySelector('#photo-img').naturalWidth > 0", null, Patience);
        return await page.Locator("#photo-img").BoundingBoxAsync() ?? throw new InvalidOperationException("The picture isn't shown.");
    }

    // Tenths of a per cent are lost where a screen has whole pixels.
    private Task Written(string words, bool roundly = false) =>
        Until(() => (roundly ? Rounded(Text) : Text).Contains(words, StringComparison.Ordinal));

    private static string Rounded(string text) => System.Text.RegularExpressions.Regex.Replace(
        text, @"\d+\.\d", number => $"{Math.Round(double.Parse(number.Value, System.Globalization.CultureInfo.InvariantCulture))}");

    private Task Until(Func<bool> holds) => Disk.Until(Book, holds);
}
