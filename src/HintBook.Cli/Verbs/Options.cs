using System.CommandLine;

namespace HintBook.Cli.Verbs;

/// <summary>Arguments and options that several verbs share.</summary>
internal static class Options
{
    public static Argument<string> Book() => new("BOOK") { Description = "The book's folder." };

    public static Option<string?> Out(string what) => new("--out") { Description = what, HelpName = "PATH" };

    /// <summary>Leave to write over a file that is there already.</summary>
    public static Option<bool> Replace() => new("--replace") { Description = "Write over what is there already under that name." };

    public static Option<bool> Notes() => new("--notes") { Description = "Say what is worth knowing, too." };

    public static Option<string> Paper()
    {
        var paper = new Option<string>("--paper") { Description = "The sheets to print on.", DefaultValueFactory = _ => "a4" };
        return paper.AcceptOnlyFromAmong("a4", "letter");
    }

    public static Cards.Paper PaperOf(string name) => name == "letter" ? Cards.Paper.Letter : Cards.Paper.A4;
}
