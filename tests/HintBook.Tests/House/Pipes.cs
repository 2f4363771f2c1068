namespace HintBook.Tests.House;

/// <summary>Named pipes (POSIX mkfifo), where the system has them.</summary>
internal static class Pipes
{
    public static void Make(string path)
    {
        Assert.SkipUnless(DebianProgram.IsThere("mkfifo"), "There is no mkfifo here.");
        DebianProgram.Run(Path.GetTempPath(), "mkfifo", path);
        Assert.True(File.Exists(path));
    }
}
