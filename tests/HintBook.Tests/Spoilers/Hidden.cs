using System.Collections.Immutable;
using HintBook.Spoilers;
using HintBook.Text;

namespace HintBook.Tests.Spoilers;

/// <summary>A cabinet full of secrets, to be looked for in sentences.</summary>
internal static class Hidden
{
    private static readonly (string Id, SecretKind Kind, string[] Spellings)[] All =
    [
        ("brass-bee", SecretKind.Name, ["brass bee", "magnetic bee"]),
        ("hive-tool", SecretKind.Name, ["hive tool", "pry bar", "flat bar"]),
        ("folded-card", SecretKind.Name, ["folded card"]),
        ("queen-clip", SecretKind.Name, ["queen clip", "brass tongs"]),
        ("honey-jar", SecretKind.Name, ["jar of honey"]),
        ("wax-pellet", SecretKind.Name, ["wax pellet", "lump of wax"]),
        ("smoker", SecretKind.Name, ["smoker", "bee smoker"]),
        ("penknife", SecretKind.Name, ["penknife"]),
        ("pocket-watch", SecretKind.Name, ["pocket watch"]),
        ("crown-board", SecretKind.Name, ["the crown board"]),
        ("iron-bolt", SecretKind.Name, ["the iron bolt"]),
        ("queen-cell", SecretKind.Name, ["the queen cell"]),
        ("pollen-tray", SecretKind.Name, ["the pollen tray", "hidden tray"]),
        ("roof-rhyme", SecretKind.Name, ["rhyme under the roof"]),
        ("locket", SecretKind.Name, ["fiancée’s locket"]),
        ("smoker-lock", SecretKind.Answer, ["5173"]),
        ("queen-years", SecretKind.Answer, ["32514"]),
        ("drawer-word", SecretKind.Answer, ["CLOVER"]),
        ("lid-number", SecretKind.Answer, ["0420"]),
        ("mixed-code", SecretKind.Answer, ["B7K2"]),
        ("twin-code", SecretKind.Answer, ["7733"]),
    ];

    public static ImmutableArray<Secret> Secrets { get; } = Of(All);

    public static ImmutableArray<Secret> Of(params (string Id, SecretKind Kind, string[] Spellings)[] secrets) =>
        [.. secrets.Select((secret, i) => new Secret(i, secret.Kind, secret.Id, [.. secret.Spellings], SourceFile.Unread("book.yaml").Top, Open: false))];

    public static ImmutableArray<Secret> Names(params string[] names) => Of([.. names.Select(name => (name, SecretKind.Name, new[] { name }))]);

    /// <summary>The ids of what a text mentions, each once, in order of the alphabet.</summary>
    public static string[] In(string text, ImmutableArray<Secret>? secrets = null, string language = "en")
    {
        var all = secrets ?? Secrets;
        return [.. new Finder(all, language).In(text).Select(mention => all[mention.Secret].Id).Distinct().Order(StringComparer.Ordinal)];
    }
}
