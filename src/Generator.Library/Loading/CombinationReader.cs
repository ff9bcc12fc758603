using Generator.Domain;
using Generator.Library.Reading;
using Generator.Library.Words;

namespace Generator.Library.Loading;

/// <summary>Reads one combination, and finds what contradicts itself in all.</summary>
internal static class CombinationReader
{
    private const int Fewest = 2;

    private const int Most = 3;

    private static readonly Quantity Gap = new("a gap", 0.5m, 1m, "counts", "Maybe it is in seconds; write counts, 0.5 or 1.");

    public static Combination Read(ObjectReader source)
    {
        var id = source.BaseId();
        var name = source.RequiredText("name", "\"name\": \"Jab and cross\"");
        var aliases = source.Texts("aliases");
        var parts = source.Objects("attacks").Select(Part).ToList();
        if (!source.Has("attacks"))
        {
            source.Missing("attacks", "\"attacks\": [ { \"attack\": \"jab\", \"side\": \"lead\" }, { \"attack\": \"cross\", \"side\": \"rear\" } ]");
        }
        else if (parts.Count is < Fewest or > Most)
        {
            source.Refuse("attacks", $"A combination has two or three attacks, and this has {parts.Count}.", "Maybe more are several combinations, and one is none.");
        }

        var gap = source.RequiredNumber("gap", Gap);
        if (source.Has("gap") && Gap.Allows(gap) && gap % 0.5m != 0)
        {
            source.Refuse("gap", "Time goes in half counts.", "Maybe 0.5 or 1 is meant.");
        }

        var halves = new HalfCounts((int)(gap * HalfCounts.PerCount));
        var combination = new Combination
        {
            Id = id,
            Name = name,
            Aliases = aliases,
            Attacks = parts,
            Gap = halves,
            GapSeconds = Tempo.Default.SecondsIn(halves),
            Note = source.RequiredText("note", "\"note\": \"What it looks like.\""),
            Safety = source.RequiredText("safety", "\"safety\": \"The jab is back before the cross goes.\""),
        };
        source.Finish();
        return combination;
    }

    /// <summary>Every attack is one of the library, with a side where it has sides, and no two combinations are the same attacks.</summary>
    public static void Check(Records records)
    {
        var attacks = records.Attacks.Select(p => p.Record).DistinctBy(a => a.BaseId, StringComparer.Ordinal).ToDictionary(a => a.BaseId, StringComparer.Ordinal);
        var known = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (combination, source) in records.Combinations)
        {
            for (var i = 0; i < combination.Attacks.Count; i++)
            {
                Check(combination.Attacks[i], source, $"attacks[{i}]", attacks);
            }

            var all = string.Join(", ", combination.Attacks);
            if (combination.Attacks.Count >= Fewest && !known.TryAdd(all, combination.Id))
            {
                source.Refuse("attacks", $"These are the attacks of {known[all]}.", "Maybe one of the two can go.");
            }
        }
    }

    private static void Check(CombinationPart part, ObjectReader source, string path, Dictionary<string, Attack> attacks)
    {
        path = source.PathOf(path);
        if (!attacks.TryGetValue(part.Attack, out var attack))
        {
            if (part.Attack.Length > 0)
            {
                source.Refuse(null, path, $"The library has no attack {FieldText.Quote(part.Attack)}.", NearestWords.Maybe(part.Attack, attacks.Keys, "Maybe generator library list attack shows it; write its id without the side."));
            }

            return;
        }

        var name = SideWords.WithoutSide(attack.Name, attack.Side);
        if (attack.IsWalkIn)
        {
            source.Refuse(null, path, $"{attack.Name} is no blow, and nobody combines it with one.", "Maybe another attack is meant.");
        }

        if (attack.Side is null != part.Side is null)
        {
            source.Refuse(null, path, attack.Side is null ? $"{name} has no sides." : $"{name} has two sides.", attack.Side is null ? "Maybe leave \"side\" out." : "Maybe add \"side\": \"lead\" or \"rear\".");
        }
    }

    private static CombinationPart Part(ObjectReader source)
    {
        var part = new CombinationPart(source.RequiredText("attack", "\"attack\": \"jab\""), source.Word<LeadSide>("side"));
        source.Finish();
        return part;
    }
}
