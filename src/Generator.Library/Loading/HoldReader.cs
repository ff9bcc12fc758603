using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Loading;

/// <summary>Reads <c>holds.json</c>: what the hand that holds, every held posture and every kind of grab ask while they last.</summary>
internal static class HoldReader
{
    private static readonly IReadOnlyList<Posture> HeldPostures = [.. Enum.GetValues<Posture>().Where(p => p.IsControlled())];

    private static readonly IReadOnlyList<LineKind> GripKinds = [.. Enum.GetValues<LineKind>().Where(k => new AttackLine(k, LineSide.Centre).IsGrab)];

    public static HoldTable Read(ObjectReader root)
    {
        var hand = LoadReader.Required(root, "hand");
        var held = new Dictionary<Posture, Load>();
        foreach (var source in root.Objects("held"))
        {
            var posture = source.RequiredWord<Posture>("posture");
            if (source.Has("posture") && (!posture.IsControlled() || !held.TryAdd(posture, default)))
            {
                source.Refuse("posture", posture.IsControlled() ? "This posture is given twice." : "Nobody is held in this posture.", $"Maybe one of these is meant: {Words(HeldPostures)}.");
            }

            held[posture] = LoadReader.Required(source);
            source.Finish();
        }

        var grips = new List<GripLoad>();
        foreach (var source in root.Objects("grips"))
        {
            var grip = new GripLoad(source.Line(), LoadReader.Required(source), LoadReader.Required(source, "heroLoad"));
            if (grips.Exists(g => g.Line == grip.Line || g.Line == grip.Line.Mirrored))
            {
                source.Refuse("line", "This grip is given twice; one with a side stands for the other side too.", "Maybe one of the two can go.");
            }

            source.Finish();
            grips.Add(grip);
        }

        Complete(root, "held", HeldPostures.Where(p => !held.ContainsKey(p)));
        Complete(root, "grips", GripKinds.Where(k => !grips.Exists(g => g.Line.Kind == k)));
        root.Finish();
        return new HoldTable(hand, held, grips);
    }

    private static void Complete<T>(ObjectReader root, string list, IEnumerable<T> missing)
        where T : struct, Enum
    {
        if (missing.ToList() is { Count: > 0 } some)
        {
            root.Refuse(list, $"These are missing: {Words(some)}.", "Maybe add a record for each.");
        }
    }

    private static string Words<T>(IEnumerable<T> some)
        where T : struct, Enum => string.Join(", ", some.Select(EnumWords.Of));
}
