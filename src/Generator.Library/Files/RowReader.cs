using System.Globalization;
using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>
/// Turns rows into moves: words into ids of the library, names into numbers of the cast. Whether the moves make sense, whether their counts go
/// upwards and their reactions suit, is for the audit to say.
/// </summary>
internal sealed class RowReader(Brief brief, Vocabulary words)
{
    private readonly Cast cast = Cast.Of(brief);

    /// <summary>The move; worthless once a problem has been added.</summary>
    public Move Read(RoutineRow row)
    {
        var start = Start(row);
        var (technique, attack) = SidePicker.Pick(row, Found(row, "technique", words.Techniques), Found(row, "attack", words.Attacks));
        var attacker = Attacker(row, technique, attack);
        return new Move
        {
            Start = start,
            ByAlly = ActorWords.Of(row, brief),
            Attacker = attacker,
            From = From(row),
            Cue = Cue(row),
            Attack = attack?.Id,
            Technique = technique?.Id,
            Reaction = Reaction(row, technique)?.Id,
            Hurts = HurtWords.Of(row, start, technique),
            To = MarkWords.Of(row, technique, brief.Marks),
            Stance = Stance(row),
            Linger = Linger(row),
            Note = row.Text("note") ?? string.Empty,
        };
    }

    private static HalfCounts Start(RoutineRow row)
    {
        var text = row.Text("count");
        if (HalfCounts.TryParseCount(text, out var start))
        {
            return start;
        }

        row.Refuse("count", text is null ? "The row has no count." : $"{Shown(text)} is not a count.", FieldForms.CountAdvice);
        return HalfCounts.Zero;
    }

    private static IReadOnlyList<T>? Found<T>(RoutineRow row, string field, WordTable<T> table)
    {
        if (row.Text(field) is not { } word)
        {
            return null;
        }

        var hits = table.Find(word);
        if (hits.Count == 0)
        {
            row.Refuse(field, table.Unknown(word), table.Advice(word));
        }

        return hits;
    }

    private int? Attacker(RoutineRow row, Technique? technique, Attack? attack)
    {
        var word = row.Text("attacker");
        var says = row.Text("technique") is not null || row.Text("attack") is not null;
        if (!says)
        {
            row.Refuse("technique", "The row has neither an attack nor a technique.", "Maybe the row can go; a beat without action is a pause out of the library.");
        }

        var nobody = technique is { HasNoTarget: true } && row.Text("attack") is null;
        if (word is null)
        {
            // Without an attack or technique that could be read there is nothing to say of whom it concerns.
            if (says && !nobody && (technique is not null || attack is not null))
            {
                row.Refuse("attacker", $"The row does not say whom {technique?.Id ?? attack?.Id} concerns.", NearestWords.OneOf(cast.Names));
            }

            return null;
        }

        if (nobody)
        {
            row.Refuse("attacker", $"{technique!.Id} is done to nobody.", "Maybe leave the attacker out.");
        }

        var index = cast.Find(word);
        if (index < 0)
        {
            row.Refuse("attacker", Cast.Unknown(word), cast.Advice(word));
        }

        return index < 0 ? null : index;
    }

    private Reaction? Reaction(RoutineRow row, Technique? technique)
    {
        var found = Found(row, "reaction", words.Reactions);
        if (row.Text("technique") is null)
        {
            if (found is not null)
            {
                row.Refuse("reaction", "There is a reaction without a technique.", "Maybe the technique was left out; an attack that nothing answers has no reaction.");
            }

            return null;
        }

        // One that does not suit, or none where several do, is read as it stands.
        found ??= technique is { Reactions: [var only] } ? words.Reactions.Find(only) : [];
        return found.Count > 0 ? found[0] : null;
    }

    private static Bearing? From(RoutineRow row)
    {
        if (row.Text("from") is not { } text)
        {
            return null;
        }

        if (!Bearing.TryParse(text, out var bearing))
        {
            row.Refuse("from", $"{FieldText.Quote(text)} is not a clock position.", FieldForms.ClockAdvice);
        }
        else if (row.Text("attacker") is null)
        {
            row.Refuse("from", "Nobody is named who comes from there.", "Maybe the attacker was left out.");
        }

        return bearing;
    }

    internal static Cue Cue(RoutineRow row)
    {
        if (row.Text("cue") is not { } text)
        {
            return Domain.Cue.None;
        }

        if (!EnumWords.TryParse<Cue>(text.ToLowerInvariant(), out var cue))
        {
            row.Refuse("cue", $"{FieldText.Quote(text)} is not a cue.", "Maybe one of these is meant: voice, sound, touch.");
        }

        return cue;
    }

    /// <summary>With hyphens or spaces: "left-lead", "left lead". Whether the hero can stand so is for the audit to say.</summary>
    internal static Stance? Stance(RoutineRow row)
    {
        if (row.Text("stance") is not { } text)
        {
            return null;
        }

        if (EnumWords.TryParse<Stance>(text.ToLowerInvariant().Replace(' ', '-'), out var stance))
        {
            return stance;
        }

        var words = EnumWords.All<Stance>();
        row.Refuse("stance", $"{FieldText.Quote(text)} is not a stance.", NearestWords.Maybe(text, words, NearestWords.OneOf(words)));
        return null;
    }

    /// <summary>A number as it is, anything else in quotation marks.</summary>
    private static string Shown(string text) =>
        decimal.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out _) ? FieldText.Shorten(text) : FieldText.Quote(text);

    internal static HalfCounts Linger(RoutineRow row)
    {
        if (row.Text("linger") is not { } text)
        {
            return HalfCounts.Zero;
        }

        if (!decimal.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var counts))
        {
            row.Refuse("linger", $"{Shown(text)} is not a number of counts.", "Maybe write it with a point, such as 1.5.");
        }
        else if (!Measures.Span.Allows(counts))
        {
            row.Refuse("linger", $"{Shown(text)} is not {Measures.Span.Range}.", Measures.Span.Advice);
        }
        else if (decimal.Truncate(counts * 2) != counts * 2)
        {
            row.Refuse("linger", $"{Shown(text)} is neither a whole nor a half number of counts.", FieldForms.HalvesAdvice);
        }
        else
        {
            return new HalfCounts((int)(counts * 2));
        }

        return HalfCounts.Zero;
    }
}
