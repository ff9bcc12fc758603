namespace Generator.Library.Files;

/// <summary>One row of a routine, whichever the kind of file: texts by field name, and a place to send problems to.</summary>
internal abstract class RoutineRow
{
    private readonly HashSet<string> refused = new(StringComparer.Ordinal);

    /// <summary>The fields of a row, in the order in which they are written.</summary>
    public static IReadOnlyList<string> Fields { get; } = ["count", ActorWords.By, "attacker", "from", "cue", "attack", "technique", "reaction", HurtWords.Hurts, MarkWords.To, "stance", "linger", "note"];

    /// <summary>Line of the file, from 1.</summary>
    public abstract int Line { get; }

    /// <summary>The value as text, trimmed; null when absent or blank. A note is kept as it stands.</summary>
    public abstract string? Text(string field);

    /// <summary>Adds a problem with a field, unless one has been told already.</summary>
    public void Refuse(string field, string message, string maybe)
    {
        if (refused.Add(field))
        {
            Report(field, message, maybe);
        }
    }

    protected abstract void Report(string field, string message, string maybe);
}
