namespace Generator.Cli.Guarding;

/// <summary>A writer to a standard stream, which may be full or closed at any write: what that means is said in one place.</summary>
internal abstract class GuardedWriter : TextWriter
{
    public override void Write(char value) => Try(w => w.Write(value));

    public override void Write(char[] buffer, int index, int count) => Try(w => w.Write(buffer, index, count));

    public override void Write(string? value) => Try(w => w.Write(value));

    public override void Flush() => Try(w => w.Flush());

    /// <summary>A write to a stream that is full, or closed by whoever reads it.</summary>
    protected static bool IsFullOrClosed(Exception error) => error is IOException or UnauthorizedAccessException or ObjectDisposedException;

    protected abstract void Try(Action<TextWriter> write);
}
