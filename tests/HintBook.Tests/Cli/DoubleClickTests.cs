using HintBook.Cli;

namespace HintBook.Tests.Cli;

public class DoubleClickTests
{
    // t: a terminal, -: something else. Windows gives a double-clicked program a console of its own; file managers elsewhere give it none.
    [Theory]
    [InlineData("windows", "ttt", true, true, true)]
    [InlineData("windows", "ttt", false, true, false)]
    [InlineData("windows", "t--", true, true, false)]
    [InlineData("windows", "---", false, true, false)]
    [InlineData("windows", "ttt", true, false, false)]
    [InlineData("elsewhere", "---", false, true, true)]
    [InlineData("elsewhere", "---", false, false, false)]
    [InlineData("elsewhere", "ttt", false, true, false)]
    [InlineData("elsewhere", "-t-", false, true, false)]
    [InlineData("elsewhere", "--t", false, true, false)]
    [InlineData("elsewhere", "t--", false, true, false)]
    public void It_is_told_from_a_command_and_from_a_script(string system, string streams, bool ownsConsole, bool isWatched, bool isDoubleClick) =>
        Assert.Equal(
            isDoubleClick,
            DoubleClick.Is(new(system == "windows", streams[0] == 't', streams[1] == 't', streams[2] == 't', ownsConsole, isWatched)));

    [Theory]
    [InlineData("DISPLAY", true)]
    [InlineData("WAYLAND_DISPLAY", true)]
    [InlineData("DISPLAY CI", false)]
    [InlineData("DISPLAY SSH_CONNECTION", false)]
    public void Somebody_is_there_where_a_screen_is_and_no_build_server(string variables, bool isWatched) =>
        Assert.Equal(isWatched, Surroundings.IsWatched(name => variables.Split(' ').Contains(name) ? "1" : null));

    [Fact]
    public void Nothing_in_the_environment_is_nobody_on_linux() =>
        Assert.Equal(OperatingSystem.IsWindows() || OperatingSystem.IsMacOS(), Surroundings.IsWatched(_ => null));

    [Fact]
    public void The_workbench_without_a_book_opens_the_page_that_asks_for_one()
    {
        using var output = new StringWriter();
        var terminal = new Terminal { Out = output, Error = TextWriter.Null };

        Assert.Equal(0, CommandLine.Run(["workbench", "--no-browser"], terminal, new CancellationToken(canceled: true)));

        Assert.StartsWith("http://127.0.0.1:", output.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Telephones_need_a_book() => Assert.Equal(ExitCode.WrongUsage, Said.By("workbench", "--phone").Exit);
}
