using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Loading;

/// <summary>Reads <c>stances.json</c>: every stance once, with its changes.</summary>
internal static class StanceReader
{
    private static readonly Quantity Share = new("a share of standing height", 0.05m, 1m);

    private static readonly Quantity HalfCount = new("a time", 1m, 100m, "half counts");

    public static StanceTable Read(ObjectReader root)
    {
        var stances = new List<Placed<StanceInfo>>();
        foreach (var source in root.Objects("stances"))
        {
            var info = new StanceInfo
            {
                Stance = source.RequiredWord<Stance>("id"),
                Name = source.RequiredText("name"),
                HeightShare = source.RequiredNumber("heightShare", Share),
                Lead = source.Word<Side>("lead"),
                Load = LoadReader.Optional(source),
                Changes = [.. source.Objects("changes").Select(ReadChange)],
            };
            source.Finish();
            if (source.Has("id") && stances.Any(s => s.Record.Stance == info.Stance))
            {
                source.Refuse("id", "This stance is given twice.", "Maybe one of the two can go.");
            }

            stances.Add(new Placed<StanceInfo>(info, source));
        }

        var missing = Enum.GetValues<Stance>().Except(stances.Select(s => s.Record.Stance)).Select(EnumWords.Of).ToList();
        if (missing.Count > 0)
        {
            root.Refuse("stances", $"These stances are missing: {string.Join(", ", missing)}.", "Maybe add a record for each.");
        }

        root.Finish();
        var table = new StanceTable([.. stances.Select(s => s.Record)]);
        foreach (var (info, source) in stances)
        {
            CheckMirror(table, info, source);
        }

        return table;
    }

    private static StanceChange ReadChange(ObjectReader source)
    {
        var trained = source.RequiredWhole("trained", HalfCount);
        var novice = source.Whole("novice", HalfCount) ?? trained;
        if (novice < trained)
        {
            source.Refuse("novice", "A novice is never faster than a trained performer.", "Maybe the two times are swapped.");
        }

        var change = new StanceChange(source.RequiredWord<Stance>("to"), new(trained), new(novice)) { Load = LoadReader.Optional(source) };
        source.Finish();
        return change;
    }

    /// <summary>Left and right must take the same time, or mirrored routines would not be equal.</summary>
    private static void CheckMirror(StanceTable table, StanceInfo info, ObjectReader source)
    {
        foreach (var change in info.Changes)
        {
            if (change.To == info.Stance)
            {
                source.Refuse("changes", $"A change from {EnumWords.Of(info.Stance)} to itself takes no time and is not written.", "Maybe another stance is meant.");
            }
            else if (((Skill[])[Skill.Novice, Skill.Stunt]).Any(s => table.Time(info.Stance, change.To, s) != table.Time(info.Stance.Mirrored(), change.To.Mirrored(), s)))
            {
                source.Refuse(
                    "changes",
                    $"The change to {EnumWords.Of(change.To)} takes another time than its mirror, {EnumWords.Of(info.Stance.Mirrored())} to {EnumWords.Of(change.To.Mirrored())}.",
                    "Maybe one of the two is missing or mistyped.");
            }
            else if (table.LoadOf(info.Stance, change.To) != table.LoadOf(info.Stance.Mirrored(), change.To.Mirrored()).Mirrored)
            {
                source.Refuse("changes", $"The change to {EnumWords.Of(change.To)} asks something else of the body than its mirror.", "Maybe one of the two loads is missing or mistyped.");
            }
        }
    }
}
