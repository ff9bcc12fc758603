using System.Runtime.CompilerServices;
using Generator.Library.Files;
using Generator.Paperwork.Printing;

namespace Generator.Cli.Guarding;

/// <summary>What a worker that did not live to its end was just writing: half a file under another name, and the folder from which a pack is printed.</summary>
internal static class LeftBehind
{
    /// <summary>
    /// Clears it up where the worker wrote: in a folder that <c>--out</c> names, beside a file that it names, and where routines are kept. Only now, when there is nothing left to watch,
    /// does the guard load anything for it. What cannot go stays, and the next run of the same names it or clears it up.
    /// </summary>
    /// <param name="output">What <c>--out</c> says; null for nothing.</param>
    /// <param name="rescue">What <see cref="RescuePath"/> gave.</param>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static void Clear(string? output, string rescue)
    {
        try
        {
            RoutineFiles.ClearLeft(Path.GetDirectoryName(rescue)!, name => name.StartsWith(Path.GetFileName(rescue), StringComparison.Ordinal));
            if (Directory.Exists(output))
            {
                RoutineFiles.ClearLeft(output, _ => true);
            }
            else if (output is { Length: > 0 } && Path.GetDirectoryName(Path.GetFullPath(output)) is { } folder && Directory.Exists(folder))
            {
                RoutineFiles.ClearLeft(folder, name => string.Equals(name, Path.GetFileName(output), StringComparison.Ordinal));
            }

            Browser.ClearLeft();
        }
#pragma warning disable CA1031 // the user is told of the breakdown, whatever becomes of this
        catch (Exception)
#pragma warning restore CA1031
        {
            return;
        }
    }
}
