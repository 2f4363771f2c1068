using System.Collections.Immutable;

namespace HintBook.Benchmarks.UnderLoad;

/// <summary>A book that its reader may not write, used by another user of the computer (util-linux's setpriv; that takes an administrator).</summary>
internal static class ReadOnlyBook
{
    private const string Nobody = "65534";

    public static IEnumerable<Tried> Run(int count, int seed)
    {
        if (!OperatingSystem.IsLinux() || !Environment.IsPrivilegedProcess || !File.Exists("/usr/bin/setpriv"))
        {
            yield return new("a read-only book as another user (not tried: it takes Linux, setpriv and an administrator)", 0, []);
            yield break;
        }

        var tried = 0;
        var failures = ImmutableArray.CreateBuilder<string>();
        for (var round = 0; round < count; round++)
        {
            using var desk = new Desk(12, 2);
            Ran.By("chmod", "-R", "a+rX,a-w", desk.Book);
            Ran.By("chmod", "755", desk.Root);
            Ran.By("install", "-d", "-o", Nobody, desk.Output);
            // Found nothing to write but the output folder.
            Expect(0, "publish", desk.Publish);
            Expect(0, "publish, nothing changed", desk.Publish);
            Expect(0, "cards", "cards", desk.Book, "--out", desk.Output);
            Expect(0, "check", "check", desk.Book);
            // The made book has stages that can be left out, which solve calls refuted.
            Expect(1, "solve", "solve", desk.Book);
            Expect(0, "map", "map", desk.Book);
            Expect(0, "audit", "audit", desk.Output, "--book", desk.Book);
            Expect(3, "publish into the book", "publish", desk.Book);
            Expect(3, "a map into the book", "map", desk.Book, "--out", Path.Combine(desk.Book, "map.svg"));
            Expect(3, "schemas into the book", "schema", "--out", Path.Combine(desk.Book, "schemas"));
            var printed = Finished.Of(desk.Output).Cards.ToArray();
            Ran.By("chmod", "u+w", Path.Combine(desk.Book, "stages"));
            desk.Change();
            Ran.By("chmod", "-R", "a+rX,a-w", desk.Book);
            Expect(0, "publish with a stage renamed", desk.Publish);
            var finished = Finished.Of(desk.Output);
            var faults = finished.Faults(finished, finished, Finished.KeptBy(desk)).Concat(finished.FaultsOfTheNext(desk, printed));
            failures.AddRange(faults.Select(LoadRuns.Failed));
            File.SetUnixFileMode(Directory.GetFiles(Path.Combine(desk.Book, "stages"))[0], UnixFileMode.None);
            Expect(1, "a stage that may not be read", "check", desk.Book);
            Ran.By("chmod", "000", desk.Book);
            Expect(1, "a book that may not be read", "check", desk.Book);
            Ran.By("chmod", "-R", "u+rwX", desk.Root);

            void Expect(int exit, string what, params string[] args)
            {
                tried++;
                var ran = Ran.By(["setpriv", $"--reuid={Nobody}", $"--regid={Nobody}", "--clear-groups", "dotnet", Ran.Program, .. args]);
                if (ran.Exit != exit || ran.Said.Contains("   at ", StringComparison.Ordinal))
                    failures.Add(LoadRuns.Failed($"{what}: ended with {ran.Exit}: {ran.Said}"));
            }
        }

        yield return new("a read-only book as another user: every verb that reads it, and those that may not write", tried, failures.ToImmutable());
    }
}
