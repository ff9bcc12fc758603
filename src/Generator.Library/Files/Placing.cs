using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>Where the attackers of a routine open: as the routine says, else as the brief says, else by default.</summary>
public static class Placing
{
    /// <summary>Reads the list of attackers, by number in the cast.</summary>
    internal static IReadOnlyDictionary<int, Place> Places(IReadOnlyList<ObjectReader> readers, Cast cast)
    {
        var places = new Dictionary<int, Place>();
        foreach (var reader in readers)
        {
            if (!reader.Has("name"))
            {
                reader.Missing("name", "\"name\": \"Bruno\"");
            }

            var place = new Place(reader.Clock("bearing"), reader.Metres("distance", Measures.Opening), reader.Count("entrance"));
            if (reader.Name("name") is { } name)
            {
                var index = cast.Find(name);
                if (index < 0)
                {
                    reader.Refuse("name", Cast.Unknown(name), cast.Advice(name));
                }
                else if (!places.TryAdd(index, place))
                {
                    reader.Refuse("name", $"{cast.Names[index]} is placed twice.", "Maybe one of the two can go, or is somebody else.");
                }
            }

            reader.Finish();
        }

        return places;
    }

    /// <summary>
    /// One placement for each attacker. By default they stand 3 m away from the first count on, spread evenly round the clock from 12;
    /// one whose first row says where they come from opens there.
    /// </summary>
    internal static IReadOnlyList<Placement> Fill(Brief brief, IReadOnlyDictionary<int, Place> places, IReadOnlyList<Move> moves) =>
        [.. brief.Attackers.Select((attacker, i) => new Placement(
            places.GetValueOrDefault(i)?.Bearing ?? attacker.Bearing ?? moves.FirstOrDefault(m => m.Attacker == i)?.From ?? Spread(i, brief.Attackers.Count),
            places.GetValueOrDefault(i)?.Distance ?? attacker.Distance ?? RoutineReader.DefaultDistance,
            places.GetValueOrDefault(i)?.Entrance ?? attacker.Entrance ?? HalfCounts.Zero))];

    /// <summary>The same where nobody says in rows of their own where the attackers open.</summary>
    public static IReadOnlyList<Placement> Usual(Brief brief, IReadOnlyList<Move> moves) => Fill(brief, new Dictionary<int, Place>(), moves);

    private static Bearing Spread(int index, int cast) => new(((Bearing.Circle * index) + (cast / 2)) / cast);
}
