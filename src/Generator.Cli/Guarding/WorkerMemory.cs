using System.Buffers.Text;
using System.Diagnostics;
using System.Globalization;
using Microsoft.Win32.SafeHandles;

namespace Generator.Cli.Guarding;

/// <summary>
/// How much memory a worker has. Where the system keeps it in a small file, as Linux does, that is read: the runtime's own way looks at every thread and takes
/// a tenth of a second of processor time from the first search.
/// </summary>
/// <param name="worker">The process.</param>
internal sealed class WorkerMemory(Process worker) : IDisposable
{
    private readonly SafeFileHandle? file = Open(worker.Id);
    private readonly byte[] line = new byte[128];

    /// <summary>Bytes of working set; 0 once it has ended.</summary>
    public long Bytes() => file is null ? Asked() : Read(file);

    public void Dispose() => file?.Dispose();

    /// <summary>The second number of the line is the resident set, in pages.</summary>
    private long Read(SafeFileHandle pages)
    {
        try
        {
            var text = line.AsSpan(0, RandomAccess.Read(pages, line, 0));
            return text.IndexOf((byte)' ') is >= 0 and var blank && Utf8Parser.TryParse(text[(blank + 1)..], out long resident, out _) ? resident * Environment.SystemPageSize : 0;
        }
        catch (IOException)
        {
            // It has just ended.
            return 0;
        }
    }

    private long Asked()
    {
        try
        {
            worker.Refresh();
            return worker.WorkingSet64;
        }
        catch (InvalidOperationException)
        {
            // It has just ended.
            return 0;
        }
    }

    private static SafeFileHandle? Open(int process)
    {
        try
        {
            return OperatingSystem.IsLinux() ? File.OpenHandle("/proc/" + process.ToString(CultureInfo.InvariantCulture) + "/statm") : null;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            // The runtime's own way then.
            return null;
        }
    }
}
