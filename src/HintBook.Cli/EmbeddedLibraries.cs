using System.Reflection;
using System.Runtime.InteropServices;
using System.Runtime.Loader;
using System.Security.Cryptography;
using HintBook.Publishing;

namespace HintBook.Cli;

/// <summary>
/// Libraries of machine code that travel inside the program where it is one file. One is unpacked when it is first called, so that a verb which
/// doesn't need it writes nothing. (.NET's own way unpacks all of them before the program starts, and fails for a user without a home.)
/// </summary>
internal static class EmbeddedLibraries
{
    private const string Prefix = "native/";

    /// <summary>Offers them to whoever calls a library that is found nowhere else.</summary>
    public static void Offer() => AssemblyLoadContext.Default.ResolvingUnmanagedDll += (_, name) => Load(name);

    private static nint Load(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(Prefix + name);
        if (stream is null)
            return 0;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return OperatingSystem.IsWindows() ? LoadKept(name, bytes) : LoadOnce(name, bytes);
    }

    // Windows holds a library's file for as long as it is used: it is kept, by the name of what is in it, for the next time.
    private static nint LoadKept(string name, byte[] bytes)
    {
        var hash = SHA256.HashData(bytes);
        var path = Path.Combine(Path.GetTempPath(), $"hintbook-{Convert.ToHexStringLower(hash.AsSpan(0, 8))}", $"{name}.dll");
        if (!File.Exists(path) || !SHA256.HashData(File.ReadAllBytes(path)).AsSpan().SequenceEqual(hash))
            SingleFile.Write(path, bytes);
        return NativeLibrary.Load(path);
    }

    // Elsewhere a file that is gone stays loaded. From a folder for temporary files perhaps nothing may be started; then the user's own is tried.
    private static nint LoadOnce(string name, byte[] bytes)
    {
        var loaded = LoadFrom(() => Directory.CreateTempSubdirectory("hintbook-").FullName, name, bytes);
        var home = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile);
        return loaded != 0 || home.Length == 0
            ? loaded
            : LoadFrom(() => Directory.CreateDirectory(Path.Combine(home, $".hintbook-{Environment.ProcessId}")).FullName, name, bytes);
    }

    private static nint LoadFrom(Func<string> make, string name, byte[] bytes)
    {
        string? folder = null;
        try
        {
            folder = make();
            var path = Path.Combine(folder, name);
            File.WriteAllBytes(path, bytes);
            return NativeLibrary.TryLoad(path, out var handle) ? handle : 0;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return 0;
        }
        finally
        {
            if (folder is not null)
                Directory.Delete(folder, recursive: true);
        }
    }
}
