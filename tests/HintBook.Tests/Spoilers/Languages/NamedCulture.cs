using System.Globalization;

namespace HintBook.Tests.Spoilers.Languages;

/// <summary>A culture that has a name and nothing else: the tests run without cultures, and the library of number words asks for no more.</summary>
internal sealed class NamedCulture(string name) : CultureInfo("")
{
    public override string Name => name;

    public override CultureInfo Parent => InvariantCulture;

    public override string TwoLetterISOLanguageName => name;
}
