using System.Text;
using Generator.Cli.Guarding;

namespace Generator.Cli.Work;

/// <summary>Standard output: that it is full or closed is no fault of the program, and is told apart from one.</summary>
/// <param name="inner">What is written to; null where it is closed.</param>
internal sealed class StandardOutput(TextWriter? inner) : GuardedWriter
{
    public override Encoding Encoding => inner?.Encoding ?? Encoding.UTF8;

    public override void Flush()
    {
        if (inner is not null)
        {
            base.Flush();
        }
    }

    protected override void Try(Action<TextWriter> write)
    {
        try
        {
            write(inner ?? throw new IOException("closed"));
        }
        catch (Exception error) when (IsFullOrClosed(error))
        {
            throw new OutputException("Generator stopped: standard output cannot be written.\n  Maybe the disk is full, or nobody reads it any more; --out writes into a file.", error);
        }
    }
}
