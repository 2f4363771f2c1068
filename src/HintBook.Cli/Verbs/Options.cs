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
        var paper = new Option<string>("--paper") { Description = "The sheets to print on, where book.yaml names none.", DefaultValueFactory = _ => "a4" };
        return paper.AcceptOnlyFromAmong("a4", "letter", "a3", "sra3");
    }

    public static Cards.Paper PaperOf(string name) => name switch
    {
        "letter" => Cards.Paper.Letter,
        "a3" => Cards.Paper.A3,
        "sra3" => Cards.Paper.Sra3,
        _ => Cards.Paper.A4,
    };
}
