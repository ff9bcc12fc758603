using System.Text;

namespace Generator.Cli.Work;

/// <summary>Standard output: that it is full or closed is no fault of the program, and is told apart from one.</summary>
/// <param name="inner">What is written to; null where it is closed.</param>
internal sealed class StandardOutput(TextWriter? inner) : TextWriter
{
    public override Encoding Encoding => inner?.Encoding ?? Encoding.UTF8;

    public override void Write(char value) => Try(w => w.Write(value));

    public override void Write(char[] buffer, int index, int count) => Try(w => w.Write(buffer, index, count));

    public override void Write(string? value) => Try(w => w.Write(value));

    public override void Flush()
    {
        if (inner is not null)
        {
            Try(w => w.Flush());
        }
    }

    private void Try(Action<TextWriter> write)
    {
        try
        {
            write(inner ?? throw new IOException("closed"));
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or ObjectDisposedException)
        {
            throw new OutputException("Generator stopped: standard output cannot be written.\n  Maybe the disk is full, or nobody reads it any more; --out writes into a file.", error);
        }
    }
}
