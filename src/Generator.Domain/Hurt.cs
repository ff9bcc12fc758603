namespace Generator.Domain;

/// <summary>
/// A part of the body that a blow hurts, and until when: from the end of the move until that count whoever takes it does nothing with the part or on it, as under a limit.
/// A setback hurts the hero, every other move its target.
/// </summary>
/// <param name="Part">The word for the part, of <see cref="BodyPartWords.All"/>: <c>left-knee</c>.</param>
/// <param name="Until">The first count at which it may be used again.</param>
public sealed record Hurt(string Part, HalfCounts Until)
{
    /// <summary>Between the part and the count.</summary>
    public const string Till = "until";

    /// <summary>As it is written everywhere: <c>left-knee until 24</c>.</summary>
    public string Text => $"{Part} {Till} {Until.ToCountText()}";

    /// <summary>The part in a sentence, without an article: <c>left knee</c>.</summary>
    public string PartInWords => Part.Replace('-', ' ');

    /// <summary>The same part, whatever it is called, until the same count.</summary>
    public bool IsAs(Hurt other) => BodyPartWords.Find(Part) == BodyPartWords.Find(other.Part) && Until == other.Until;

    /// <summary>
    /// The two halves of such a text, each as written: <c>her left knee until count 24</c> is <c>left-knee</c> and <c>24</c>. Null where it is no such text; whether the part and the count exist is not asked.
    /// </summary>
    public static (string Part, string Count)? Split(string text)
    {
        var at = text.LastIndexOf($" {Till} ", StringComparison.OrdinalIgnoreCase);
        if (at <= 0)
        {
            return null;
        }

        var part = text[..at].Trim().ToLowerInvariant().Split([' ', '-'], StringSplitOptions.RemoveEmptyEntries).SkipWhile(w => w is "his" or "her" or "their" or "the");
        var count = text[(at + Till.Length + 2)..].Trim();
        return (string.Join('-', part), count.StartsWith("count ", StringComparison.OrdinalIgnoreCase) ? count[6..].Trim() : count);
    }
}
