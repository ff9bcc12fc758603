using System.Text;

namespace Generator.Cli.Guarding;

/// <summary>Standard error. Where it is full or closed nobody can be told anything: what would be said is lost, and the work and its exit code stay what they are.</summary>
internal sealed class StandardError : TextWriter
{
    private TextWriter? inner;

    public override Encoding Encoding => Encoding.UTF8;

    public override void Write(char value) => Try(w => w.Write(value));

    public override void Write(char[] buffer, int index, int count) => Try(w => w.Write(buffer, index, count));

    public override void Write(string? value) => Try(w => w.Write(value));

    public override void Flush() => Try(w => w.Flush());

    private void Try(Action<TextWriter> write)
    {
        try
        {
            inner ??= StandardStreams.IsErrorClosed ? Null : new StreamWriter(Console.OpenStandardError(), new UTF8Encoding(encoderShouldEmitUTF8Identifier: false)) { AutoFlush = true };
            write(inner);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or ObjectDisposedException)
        {
            inner = Null;
        }
    }
}
