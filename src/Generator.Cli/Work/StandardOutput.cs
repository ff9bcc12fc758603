using System.Text;

namespace Generator.Cli.Work;

/// <summary>Standard output: that it is full or closed is no fault of the program, and is told apart from one.</summary>
internal sealed class StandardOutput(TextWriter inner) : TextWriter
{
    public override Encoding Encoding => inner.Encoding;

    public override void Write(char value) => Try(() => inner.Write(value));

    public override void Write(char[] buffer, int index, int count) => Try(() => inner.Write(buffer, index, count));

    public override void Write(string? value) => Try(() => inner.Write(value));

    public override void Flush() => Try(inner.Flush);

    /// <summary>The same for a writer that the system does not even give, as where standard output is closed.</summary>
    public static TextWriter Of(Func<TextWriter> find)
    {
        TextWriter? found = null;
        Try(() => found = find());
        return new StandardOutput(found!);
    }

    private static void Try(Action write)
    {
        try
        {
            write();
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or ObjectDisposedException)
        {
            throw new OutputException("Generator stopped: standard output cannot be written.\n  Maybe the disk is full, or nobody reads it any more; --out writes into a file.", error);
        }
    }
}
