using System.Collections.Immutable;
using System.Reflection;

namespace HintBook.Cards.Kept;

/// <summary>What tells this build from every other: its own code and the libraries that it brings along.</summary>
internal static class ThisBuild
{
    private static readonly string[] OfTheRuntime = ["System", "mscorlib", "netstandard", "WindowsBase"];

    /// <summary>
    /// The ids of the modules, in the order of their names. A deterministic build has another id whenever its code or what is embedded in it, such as a theme
    /// or a font, has changed.
    /// </summary>
    public static ImmutableArray<Guid> Ids { get; } = [.. Modules().OrderBy(module => module.Key, StringComparer.Ordinal).Select(module => module.Value)];

    private static Dictionary<string, Guid> Modules()
    {
        var ids = new Dictionary<string, Guid>(StringComparer.Ordinal);
        var waiting = new Stack<Assembly>([typeof(ThisBuild).Assembly]);
        while (waiting.TryPop(out var assembly))
        {
            if (!ids.TryAdd(assembly.GetName().Name!, assembly.ManifestModule.ModuleVersionId))
                continue;
            foreach (var name in assembly.GetReferencedAssemblies().Where(name => !IsOfTheRuntime(name.Name!) && !ids.ContainsKey(name.Name!)))
            {
                if (Loaded(name) is { } referenced)
                    waiting.Push(referenced);
            }
        }

        return ids;
    }

    private static bool IsOfTheRuntime(string name) => name.StartsWith("System.", StringComparison.Ordinal) || OfTheRuntime.Contains(name);

    // A library may name another one that it can do without.
    private static Assembly? Loaded(AssemblyName name)
    {
        try
        {
            return Assembly.Load(name);
        }
        catch (IOException)
        {
            return null;
        }
    }
}
