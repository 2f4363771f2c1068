using HintBook.Text;

namespace HintBook.Reading;

/// <summary>What can be wrong with the names that the author gives to parts, things, facts and codes.</summary>
internal static class DeclarationFindings
{
    public static readonly FindingCode TwiceCode = new("HB1401", Severity.Error, "two things of one name");

    public static Finding Twice(Located<string> name, Located<string> first) => TwiceCode.At(
        name.At,
        name.Value == first.Value
            ? $"“{name.Value}” is declared twice."
            : $"“{name.Value}” and “{first.Value}” differ only in capital letters.",
        "Parts, things, facts and codes share one list of names: give this one another name.",
        new Related(first.At, "The first is here."));
}
