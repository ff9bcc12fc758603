using System.Text;

namespace Generator.Cli.Guarding;

/// <summary>Standard error. Where it is full or closed nobody can be told anything: what would be said is lost, and the work and its exit code stay what they are.</summary>
internal sealed class StandardError : GuardedWriter
{
    private TextWriter? inner;

    public override Encoding Encoding => Encoding.UTF8;

    protected override void Try(Action<TextWriter> write)
    {
        try
        {
            inner ??= StandardStreams.IsErrorClosed ? Null : new StreamWriter(Console.OpenStandardError(), new UTF8Encoding(encoderShouldEmitUTF8Identifier: false)) { AutoFlush = true };
            write(inner);
        }
        catch (Exception error) when (IsFullOrClosed(error))
        {
            inner = Null;
        }
    }
}
