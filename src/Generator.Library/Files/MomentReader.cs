using Generator.Domain;
using Generator.Library.Reading;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Files;

/// <summary>Reads the hero moments of a brief. Technique and attack may be written without a side, which leaves the side free.</summary>
internal static class MomentReader
{
    public static IReadOnlyList<Moment> Moments(ObjectReader root, Cast cast, HalfCounts latest, Book book)
    {
        var words = new Vocabulary(book);
        return [.. root.Objects("moments").Select(r => One(r, cast, latest, words))];
    }

    private static Moment One(ObjectReader reader, Cast cast, HalfCounts latest, Vocabulary words)
    {
        var moves = new List<MomentMove>();
        if (reader.Has("moves"))
        {
            foreach (var row in reader.Objects("moves"))
            {
                moves.Add(Move(row, cast, words));
                row.Finish();
            }

            if (reader.Token("moves") is JArray { Count: 0 })
            {
                reader.Refuse("moves", "The run of moves is empty.", "Maybe write the moves, or leave the moment out.");
            }
        }
        else
        {
            moves.Add(Move(reader, cast, words));
        }

        var (earliest, last) = Counts(reader, latest);
        reader.Finish();
        return new Moment(moves, earliest, last);
    }

    private static MomentMove Move(ObjectReader reader, Cast cast, Vocabulary words)
    {
        if (!reader.Has("technique"))
        {
            reader.Missing("technique", "\"technique\": \"hip-throw\"");
        }

        var techniques = Found(reader, "technique", words.Techniques);
        var without = string.Equals(reader.Text("attack"), MomentMove.NoAttack, StringComparison.OrdinalIgnoreCase);
        var attacks = without ? [] : Found(reader, "attack", words.Attacks);
        var reactions = Found(reader, "reaction", words.Reactions);
        var attacker = reader.Text("attacker");
        if (attacker is not null && cast.Find(attacker) < 0)
        {
            reader.Refuse("attacker", Cast.Unknown(attacker), cast.Advice(attacker));
        }

        if (techniques.Count > 0 && reactions.Count > 0 && !techniques[0].Reactions.Contains(reactions[0].Id, StringComparer.Ordinal))
        {
            reader.Refuse("reaction", Suits.Message(techniques[0], reactions[0]), Suits.Advice(techniques[0]));
        }

        return new MomentMove(
            techniques switch { [] => string.Empty, [var one] => one.Id, [var side, ..] => side.BaseId },
            attacker is not null && cast.Find(attacker) is var index and >= 0 ? cast.Names[index] : null,
            attacks switch { [] => without ? MomentMove.NoAttack : null, [var one] => one.Id, [var side, ..] => side.BaseId },
            reactions is [var reaction, ..] ? reaction.Id : null);
    }

    private static IReadOnlyList<T> Found<T>(ObjectReader reader, string field, WordTable<T> table)
    {
        if (reader.Text(field) is not { } word)
        {
            return [];
        }

        var hits = table.Find(word);
        if (hits.Count == 0)
        {
            reader.Refuse(field, table.Unknown(word), table.Advice(word));
        }

        return hits;
    }

    /// <summary>Two counts, either of which may be null, between which the first move starts.</summary>
    private static (HalfCounts? Earliest, HalfCounts? Latest) Counts(ObjectReader reader, HalfCounts end)
    {
        if (!reader.Has("counts"))
        {
            return (null, null);
        }

        var entries = reader.Entries("counts");
        if (reader.Token("counts") is JArray && entries.Count != 2)
        {
            reader.Refuse("counts", "There must be two counts, the earliest and the latest.", "Maybe write the same count twice, such as [20, 20].");
        }

        if (entries.Count != 2)
        {
            return (null, null);
        }

        var ends = entries.Select(e => e.Value.Type == JTokenType.Null ? null : FieldForms.CountOf(reader, e.Value, e.Path)).ToList();
        if (ends[0] > ends[1])
        {
            reader.Refuse("counts", "The earliest count comes after the latest.", "Maybe the two are swapped.");
        }
        else if ((ends[0] ?? ends[1]) >= end)
        {
            reader.Refuse("counts", "The moment lies after the end of the routine.", "Maybe the length is meant to be longer.");
        }

        return (ends[0], ends[1]);
    }
}
