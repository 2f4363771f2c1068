using HintBook.Books;
using HintBook.Pages;
using HintBook.Text;

namespace HintBook.Checking;

/// <summary>What the holder of an old card would stumble over.</summary>
internal static class AddressFindings
{
    public static readonly FindingCode GoneCode = new("HB7301", Severity.Warning, "a published stage is gone");
    public static readonly FindingCode MovedCode = new("HB7302", Severity.Warning, "the site's address has changed");
    public static readonly FindingCode NotKeptCode = new("HB7303", Severity.Warning, "kept-addresses.txt could not be written into the book");
    public static readonly FindingCode ClaimedCode = new("HB7304", Severity.Error, "two stages claim one address");

    public static Finding Gone(string stage, Located<string> name, string? renamedTo) => GoneCode.At(
        name.At,
        $"The stage “{stage}” has been published at “{name.Value}.html” and isn't in the book any more. "
            + "Whoever holds its card reads there that this step has changed, and is led to “Where am I?”.",
        renamedTo is null
            ? $"Put the stage back, or write “was: [ {stage} ]” in the stage that takes its place: then the card leads there."
            : $"If “{renamedTo}” is its new name, write “was: [ {stage} ]” in that stage: then the card leads there.");

    public static Finding Moved(Span at, Located<string> old, string? now) => MovedCode.At(
        at,
        now is null
            ? $"The book has been published for {old.Value} and has no “address” any more."
            : $"The book has been published for {old.Value} and is now published for {now}. Cards with the old address lead where they always did.",
        now is null || ExampleHosts.IsExample(now)
            ? $"Write “address: {old.Value}” again."
            : $"Put what publish makes in “moved/{MovedSite.FolderOf(old.Value)}” where the old site was: its pages lead to the new ones. "
                + $"Then write “moved-from: [ {old.Value} ]” in book.yaml. If the address is a slip, write the old one again.",
        new Related(old.At, "It was published with this address."));

    public static Finding Claimed(Located<string> was, Located<string> owner) => ClaimedCode.At(
        was.At,
        $"The address of “{was.Value}” can't lead to this stage: another one has it.",
        $"Take “{was.Value}” out of “was” here, or there.",
        new Related(owner.At, "This is the other one."));

    public static Finding NotKept(SourceFile book, string outPath) => NotKeptCode.At(
        book.Top,
        $"The book's folder can't be written, so kept-addresses.txt stands in the output folder only.",
        $"Copy “{outPath}” into the book's folder when you can, so that printed addresses stay safe.");
}
