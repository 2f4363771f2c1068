using System.Globalization;
using System.Text.Json;
using HintBook.Sealing;
using HintBook.Starting.Edition;
using HintBook.Tests.House;

namespace HintBook.Tests.Publishing;

/// <summary>A published sealed site with 2,000 copies, opened by a program of our own in another language with another library for cryptography.</summary>
public sealed class SealedInNodeTests : IDisposable
{
    private const string Id = "two-thousand";
    private const int Many = 2_000;

    // Written from the description of the format alone, with Node's crypto. Reads a line for each card: its code, the page of a stage card or “-”, and the
    // page that is to be opened or “-”.
    private const string Opener =
        """
        const { createHash, createDecipheriv, hkdfSync } = require("crypto"), fs = require("fs"), path = require("path");
        const [site, questions, ...pages] = process.argv.slice(1), letters = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
        const field = each => typeof each === "number" ? Buffer.from([each >> 24, each >> 16, each >> 8, each].map(byte => byte & 255)) : Buffer.from(each);
        const T = (...fields) => Buffer.concat(fields.flatMap(each => [Buffer.from([field(each).length >> 8, field(each).length & 255]), field(each)]));
        const derive = (parent, length, info) => Buffer.from(hkdfSync("sha256", parent, Buffer.alloc(0), info, length));
        const open = (parent, context, sealed) => {
          try {
            const gcm = createDecipheriv("aes-256-gcm", derive(parent, 32, Buffer.concat([T("hb1", "key"), context])), sealed.subarray(0, 12));
            gcm.setAAD(context).setAuthTag(sealed.subarray(-16));
            return Buffer.concat([gcm.update(sealed.subarray(12, -16)), gcm.final()]);
          } catch { return null; }
        };
        const codeOf = text => {
          let bits = 0n;
          for (const letter of text) bits = bits << 5n | BigInt(letters.indexOf(letter));
          const bytes = Buffer.from(bits.toString(16).padStart(40, "0"), "hex"), checked = Buffer.from(bytes.subarray(0, 19));
          checked[18] &= 0xf0;
          const sum = createHash("sha256").update("hb1 code").update(checked).digest();
          if ((sum[0] << 4 | sum[1] >> 4) !== ((bytes[18] & 15) << 8 | bytes[19]) || bytes[0] >> 4 !== 1) return null;
          const key = (bits >> 12n & (1n << 128n) - 1n).toString(16).padStart(32, "0");
          return { number: Number(bits >> 140n & 0x7fffn), key: Buffer.from(key, "hex") };
        };
        const tables = new Map();
        const slotOf = (table, number) => {
          const file = path.join(site, "k", `${table || "box"}-${number >> 7}.js`);
          if (!tables.has(file)) {
            const [, epoch, size, text] = fs.existsSync(file) ? /,"([0-9a-f]{16})",(\d+),"([^"]*)"/.exec(fs.readFileSync(file, "utf8")) : [0, "", 0, ""];
            tables.set(file, { epoch: Buffer.from(epoch, "hex"), size: Number(size), bytes: Buffer.from(text, "base64") });
          }
          const { epoch, size, bytes } = tables.get(file);
          return { epoch, slot: bytes.subarray((number & 127) * size, (number & 127) * size + size) };
        };
        const shells = new Map(pages.map(page => {
          const html = fs.readFileSync(path.join(site, page + ".html"), "utf8"), said = name => new RegExp(`${name}="([^"]*)"`).exec(html)[1];
          const head = /<[^>]*data-sealed="?head"?[^>]*>/.exec(html)[0];
          const [tag, epoch, version] = ["tag", "epoch", "version"].map(name => Buffer.from(said(`data-${name}`), "hex"));
          const lang = /<html[^>]* lang="?([^" >]*)/.exec(html)[1];
          return [page, { lang, tag, epoch, version, head: Buffer.from(/data-text="([^"]*)"/.exec(head)[1], "base64") }];
        }));
        const headOf = (page, pageKey) => {
          const { lang, tag, epoch, version, head } = shells.get(page);
          const padded = open(pageKey, T("piece", tag, epoch, lang, page, version, "head"), head);
          return padded && padded.subarray(4, 4 + padded.readUInt32BE(0)).toString("utf8");
        };
        const tag = shells.get(pages[0]).tag;
        const answers = fs.readFileSync(questions, "utf8").trim().split("\n").map(line => {
          const [text, table, asked] = line.split(" "), code = codeOf(text);
          if (!code) return "misread";
          const page = table === "-" ? "" : table, { epoch, slot } = slotOf(page, code.number);
          const opened = slot.length > 28 && open(code.key, T("slot", tag, epoch, page, code.number), slot);
          if (!opened) return "shut";
          const key = opened.subarray(0, 16);
          if (asked === "-") return "slot";
          return headOf(asked, page ? key : derive(key, 16, T("hb1", "page", asked))) ? "page" : "no page";
        });
        console.log(JSON.stringify(answers));
        """;

    private readonly BookAndOutput desk = new();
    private readonly Random dice = new(2000);

    public void Dispose() => desk.Dispose();

    [Fact]
    public void Every_one_of_two_thousand_copies_opens_its_slot_some_open_pages_and_no_forgery_does()
    {
        DebianProgram.Have("node", "nodejs");
        var pages = Publish();
        var (copies, codes) = (Edition.Read().Kept!.Copies.ToArray(), Edition.Codes!);
        dice.Shuffle(copies);
        var drawn = copies.Take(60).Select(copy => (Copy: copy, Page: pages[dice.Next(pages.Length)])).ToArray();
        var strange = new CopyCodes(new(new byte[BookSecret.Length]), Id);

        (string Asked, string Wanted)[] tried =
        [
            .. copies.Select(copy => ($"{codes.OfBox(copy)} - -", "slot")),
            .. drawn.Select(each => ($"{codes.OfBox(each.Copy)} - {each.Page}", "page")),
            .. drawn.Select(each => ($"{codes.OfPage(each.Copy, each.Page)} {each.Page} {each.Page}", "page")),
            // The number of another copy, the key of another book, of another issue and of another stage.
            .. copies.Zip(copies.Skip(1), (one, other) => ($"{At(other.Number, codes.OfBox(one))} - -", "shut")),
            .. drawn.Select(each => ($"{strange.OfBox(each.Copy)} - -", "shut")),
            .. drawn.Select(each => ($"{codes.OfBox(each.Copy with { Issue = 2 })} - -", "shut")),
            .. drawn.Select(each => ($"{codes.OfPage(each.Copy, each.Page)} {pages.First(page => page != each.Page)} -", "shut")),
            .. drawn.Select(each => ($"{Mistyped(codes.OfBox(each.Copy).ToString())} - -", "misread")),
        ];

        var answers = Answers(pages, tried.Select(each => each.Asked));

        Assert.Equal(tried.Length, answers.Length);
        Assert.Empty(tried.Zip(answers).Where(each => each.First.Wanted != each.Second).Select(each => $"{each.First.Wanted}: {each.Second}").Take(5));
        Assert.Equal(Many, answers.Count(answer => answer == "slot"));
    }

    [Fact]
    public void Two_publishes_of_two_thousand_copies_are_alike_and_one_more_copy_changes_one_slot_of_each_table()
    {
        var pages = Publish();
        var before = BookAndOutput.Tree(desk.Site);
        desk.Published(desk.Options with { Output = Path.Combine(desk.Root, "again") });
        Assert.Equal(before, BookAndOutput.Tree(Path.Combine(desk.Root, "again", "site")));

        Copies(Many + 1);
        desk.Published();

        var after = BookAndOutput.Tree(desk.Site);
        Assert.Equal(before.Keys, after.Keys);
        var changed = after.Where(file => before[file.Key] != file.Value).Select(file => file.Key).Where(file => file != "sw.js").ToArray();
        Assert.Equal(pages.Append("box").Order(StringComparer.Ordinal), changed.Select(file => file[2..file.LastIndexOf('-')]).Order(StringComparer.Ordinal));
        Assert.All(changed, file => Assert.Equal(1, SlotsIn(before[file]).Zip(SlotsIn(after[file])).Count(pair => pair.First != pair.Second)));
    }

    // A booklet is the same for all copies: here it is the site alone that counts, and not 8,000 cards.
    private string[] Publish()
    {
        var yaml = Path.Combine(desk.Book, "book.yaml");
        string[] others = ["id:", "address:", "print:"];
        var lines = File.ReadAllLines(yaml).Where(line => !others.Any(key => line.StartsWith(key, StringComparison.Ordinal)));
        File.WriteAllText(
            yaml, string.Join('\n', lines) + $"\nid: {Id}\nsealed: true\naddress: https://made.home.arpa/\nprint: {{ make: [ booklet ] }}\n");
        Copies(Many);
        return [.. desk.Published().Book!.Addresses.Names.Values.Select(names => names[0])];
    }

    private void Copies(int count)
    {
        string[] serials = [.. Enumerable.Range(1, count).Select(number => number.ToString("0000", CultureInfo.InvariantCulture))];
        File.WriteAllText(
            Path.Combine(desk.Book, "copies.yaml"), "copies:\n" + string.Concat(serials.Select(serial => $"  \"{serial}\": {{ sold: false }}\n")));
        Assert.Null(Edition.Complete(serials, () => Secret, dice.Next).Why);
    }

    private string[] Answers(string[] pages, IEnumerable<string> asked)
    {
        var questions = Path.Combine(desk.Root, "asked.txt");
        File.WriteAllLines(questions, asked);
        return JsonSerializer.Deserialize<string[]>(DebianProgram.Run(desk.Root, "node", ["-e", Opener, desk.Site, questions, .. pages])) ?? [];
    }

    private static CardCode At(int number, CardCode code) => new(code.Kind, number, code.Key);

    private static string Mistyped(string code) => $"{code[..20]}{(code[20] == '7' ? 'X' : '7')}{code[21..]}";

    private static string[] SlotsIn(string hexOfScript) => CardInHand.SlotsIn(System.Text.Encoding.ASCII.GetString(Convert.FromHexString(hexOfScript)));

    private static BookSecret Secret { get; } = new([.. Enumerable.Range(0, BookSecret.Length).Select(each => (byte)each)]);

    private SealedEdition Edition => new(desk.Book, Id);
}
