using HintBook.Text;

namespace HintBook.Checking;

/// <summary>What would break an address that was published.</summary>
internal static class AddressFindings
{
    public static readonly FindingCode LostCode = new("HB7301", Severity.Error, "a published address would lead nowhere");
    public static readonly FindingCode MovedCode = new("HB7302", Severity.Error, "the site's address has changed");
    public static readonly FindingCode NotKeptCode = new("HB7303", Severity.Warning, "addresses.lock could not be written into the book");
    public static readonly FindingCode ClaimedCode = new("HB7304", Severity.Error, "two stages claim one address");

    public static Finding Lost(string stage, Located<string> name, string? renamedTo) => LostCode.At(
        name.At,
        $"The stage “{stage}” has been published at “{name.Value}.html” and isn't in the book any more: cards printed for it would lead nowhere.",
        renamedTo is null
            ? $"Put the stage back, or write “was: [ {stage} ]” in the stage that takes its place."
            : $"If “{renamedTo}” is its new name, write “was: [ {stage} ]” in that stage.");

    public static Finding Moved(Span at, Located<string> old, string? now) => MovedCode.At(
        at,
        now is null
            ? $"The book has been published for {old.Value} and has no “address” any more."
            : $"The book has been published for {old.Value}; cards with that address would lead nowhere.",
        now is null
            ? $"Write “address: {old.Value}” again."
            : $"Write the old address again. If you let the old place lead to the new one, add “moved-from: [ {old.Value} ]”.",
        new Related(old.At, "It was published with this address."));

    public static Finding Claimed(Located<string> was, Located<string> owner) => ClaimedCode.At(
        was.At,
        $"The address of “{was.Value}” can't lead to this stage: another one has it.",
        $"Take “{was.Value}” out of “was” here, or there.",
        new Related(owner.At, "This is the other one."));

    public static Finding NotKept(SourceFile book, string outPath) => NotKeptCode.At(
        book.Top,
        $"The book's folder can't be written, so addresses.lock stands in the output folder only.",
        $"Copy “{outPath}” into the book's folder when you can, so that printed addresses stay safe.");
}
