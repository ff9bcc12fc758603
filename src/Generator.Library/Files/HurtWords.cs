using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>Reads what a blow hurts and until when: <c>left-knee until 24</c>.</summary>
internal static class HurtWords
{
    /// <summary>The name of the field and of the column.</summary>
    public const string Hurts = "hurts";

    private const string Example = "Maybe write a part of the body and the count from which it may be used again, such as left-knee until 24.";

    /// <summary>What a text says; null where it says nothing that can be read, with what is wrong and what to try.</summary>
    public static (Hurt? Hurt, string Message, string Maybe) Read(string text)
    {
        if (Hurt.Split(text) is not var (part, count))
        {
            return (null, $"{FieldText.Quote(text)} does not say what is hurt and until when.", Example);
        }

        if (BodyPartWords.Find(part) == BodyParts.None)
        {
            return (null, $"{FieldText.Quote(part)} is no part of the body.", NearestWords.Maybe(part, BodyPartWords.All, NearestWords.OneOf(BodyPartWords.All)));
        }

        return HalfCounts.TryParseCount(count, out var until) ? (new Hurt(part, until), string.Empty, string.Empty) : (null, $"{FieldText.Quote(count)} is not a count.", FieldForms.CountAdvice);
    }

    /// <summary>What a row hurts; null for nothing, or once something is wrong and told.</summary>
    /// <param name="row">The row.</param>
    /// <param name="start">When it starts; null where that is open.</param>
    public static Hurt? Of(RoutineRow row, HalfCounts? start)
    {
        if (row.Text(Hurts) is not { } text)
        {
            return null;
        }

        var (hurt, message, maybe) = Read(text);
        if (hurt is null)
        {
            row.Refuse(Hurts, message, maybe);
        }
        else if (hurt.Until <= start)
        {
            row.Refuse(Hurts, TooSoon(hurt, start.Value), "Maybe a later count is meant.");
        }

        return hurt;
    }

    /// <summary>The same of a row of a routine, whose technique must be a blow.</summary>
    public static Hurt? Of(RoutineRow row, HalfCounts start, Technique? technique)
    {
        if (row.Text(Hurts) is not null && row.Text("technique") is null)
        {
            row.Refuse(Hurts, "An attack that nothing answers hurts nobody.", "Maybe name the setback that the hero suffers, such as takes-face-hit.");
        }
        else if (row.Text(Hurts) is not null && technique is { HasNoTarget: true, Family: not Family.Setback })
        {
            row.Refuse(Hurts, $"{technique.Id} is done to nobody, so that it hurts nobody.", "Maybe it belongs to another row.");
        }

        return Of(row, start);
    }

    /// <summary>The count is over before anything can be hurt until then.</summary>
    public static string TooSoon(Hurt hurt, HalfCounts start) => $"Count {hurt.Until.ToCountText()} is not after count {start.ToCountText()}, at which the move starts.";
}
