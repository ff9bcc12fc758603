using System.Globalization;
using Generator.Domain;
using Generator.Library;

namespace Generator.Benchmarks.Coverage;

/// <summary>Briefs of many kinds for the coverage run: drawn from a fixed seed, so that two runs compare.</summary>
internal static class CoverageBriefs
{
    private static readonly string[] Names = ["Bruno", "Wanda", "Piet", "Lotte", "Igor"];

    /// <summary>A brief without hero moments.</summary>
    public static Brief Free(int number)
    {
        var random = new Random(7000 + number);
        var cast = random.Next(1, 6);
        return new Brief
        {
            Title = string.Create(CultureInfo.InvariantCulture, $"Coverage {number}"),
            Tempo = new Tempo(random.Next(8, 11) * 10),
            Length = new Length((cast * 12) + random.Next(8, 20), null, 6),
            Floor = new FloorPlan { Width = new Centimetres(1200), Depth = new Centimetres(1200), MarkX = new Centimetres(600), MarkY = new Centimetres(600), Surface = random.Next(8) == 0 ? Surface.Hard : Surface.Matted },
            Hero = new HeroPart { Name = "Ines", Height = Height(random), Skill = random.Next(6) == 0 ? Skill.Trained : Skill.Stunt, Lead = random.Next(3) == 0 ? Side.Right : Side.Left },
            Attackers = [.. Enumerable.Range(0, cast).Select(a => new AttackerPart { Name = Names[a], Height = Height(random), Skill = random.Next(5) == 0 ? Skill.Trained : Skill.Stunt, Speed = random.Next(16, 31) * 10 })],
            Setbacks = random.Next(0, cast + 3),
            Pauses = random.Next(0, 3),
            Arc = (Arc)random.Next(4),
            Safety = Safety.Default with { Runs = 2 },
        };
    }

    /// <summary>
    /// A short fight of two or three stunt performers against a stunt hero in which one technique is a hero moment, led in by a move that leaves
    /// the hero as it needs: on one leg, on the floor, held, bound, or holding another.
    /// </summary>
    public static Brief Asking(Technique technique, Book book, int number)
    {
        var leads = LeadIns(technique, book).Distinct(StringComparer.Ordinal).ToList();
        var lead = leads.Count == 0 ? null : leads[number % leads.Count];
        List<MomentMove> moves = [.. lead is null ? [] : new[] { new MomentMove(lead, null, null, null) }, new MomentMove(technique.BaseId, null, null, null)];
        var families = moves.Select(m => book.Techniques.First(t => string.Equals(t.BaseId, m.Technique, StringComparison.Ordinal))).ToList();
        return new()
        {
            Title = technique.BaseId,
            Length = new Length(14 + (number * 6), null, 6),
            Floor = new FloorPlan { Width = new Centimetres(1200), Depth = new Centimetres(1200), MarkX = new Centimetres(600), MarkY = new Centimetres(600) },
            Tempo = new Tempo(90),
            Attackers = [.. Names.Take(2 + (number % 2)).Select(n => new AttackerPart { Name = n, Skill = Skill.Stunt })],
            Moments = [new Moment(moves, null, null)],
            Pauses = families.Count(t => t.IsStoryPause),
            Setbacks = families.Count(t => t.Family == Family.Setback),
            Safety = Safety.Default with { Runs = 2 },
        };
    }

    /// <summary>Moves that leave the hero as a technique needs; none when it starts on both feet with free hands.</summary>
    private static IEnumerable<string> LeadIns(Technique technique, Book book)
    {
        HandNeed[] needs = [technique.LeftNeed, technique.RightNeed];
        var bound = !technique.Bounds.HasFlag(BoundSet.Free);
        var heldByOther = needs.Count(n => n == HandNeed.HeldByOther);
        foreach (var before in book.Techniques)
        {
            var fits = bound
                ? before.EndBound is { } end && end != Bound.Free && technique.Bounds.HasFlag((BoundSet)(1 << (int)end)) && (technique.Supported || Grips(before, technique, book))
                : heldByOther > 0
                    ? before.Family == Family.Setback && new[] { before.LeftEnd, before.RightEnd }.Count(e => e == HandEnd.Held) == heldByOther && before.EndBound is null
                    : needs.Contains(HandNeed.HoldingOther)
                        ? before.BaseId is "wrist-catch" or "arm-wrap" or "knee-pin"
                        : before.EndStance is { } stance && !technique.Starts.Contains(Stance.Square) && technique.Starts.Contains(stance) && !before.HasNoTarget && before.Family is Family.Defence or Family.Setback;
            if (fits && !string.Equals(before.BaseId, technique.BaseId, StringComparison.Ordinal))
            {
                yield return before.BaseId;
            }
        }
    }

    /// <summary>The grip that a setback takes is one that an escape opens, or a technique for a gripping target works in it.</summary>
    private static bool Grips(Technique setback, Technique technique, Book book) =>
        technique.Family != Family.Escape || book.Attacks.Any(a => setback.Answers.Contains(a.Line) && technique.Answers.Contains(a.Line));

    private static Centimetres Height(Random random) => new(random.Next(158, 193));
}
