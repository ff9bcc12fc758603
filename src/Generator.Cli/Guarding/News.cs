using System.Globalization;

namespace Generator.Cli.Guarding;

/// <summary>What a worker has told its guard so far. Each message is a line: a word and a number.</summary>
internal sealed class News
{
    /// <summary>The work is over after so many milliseconds at the latest.</summary>
    public const string Limit = "limit";

    /// <summary>The work ended in an orderly way with this exit code.</summary>
    public const string End = "end";

    private const long None = -1;

    private long limit = None;
    private long end = None;

    /// <summary>How long the work may still take, once: asking again gives null until there is another limit.</summary>
    public TimeSpan? TakeLimit() => Interlocked.Exchange(ref limit, None) is >= 0 and var milliseconds ? TimeSpan.FromMilliseconds(milliseconds) : null;

    /// <summary>Exit code of an orderly end; null without one.</summary>
    public int? EndCode => Interlocked.Read(ref end) is >= 0 and var code ? (int)code : null;

    /// <summary>Takes in lines until there are no more.</summary>
    public void ReadAll(TextReader lines)
    {
        while (lines.ReadLine() is { } line)
        {
            if (line.Split(' ') is [var word, var text] && long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number))
            {
                Take(word, number);
            }
        }
    }

    private void Take(string word, long number)
    {
        switch (word)
        {
            case Limit:
                Interlocked.Exchange(ref limit, number);
                break;
            case End:
                Interlocked.Exchange(ref end, number);
                break;
            default:
                break;
        }
    }
}
