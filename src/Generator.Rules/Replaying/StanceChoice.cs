using Generator.Domain;

namespace Generator.Rules.Replaying;

/// <summary>
/// Which stance the hero changes to when a technique starts from several: one that the hero's limits allow; of those the soonest reached; of equals
/// square first, then the one with the hero's own lead foot in front.
/// </summary>
public static class StanceChoice
{
    private static readonly Stance[] All = Enum.GetValues<Stance>();

    /// <summary>The stance and the half counts it takes (0 when the stance fits already, <see cref="StanceTable.Never"/> when none is reached).</summary>
    public static (Stance Stance, int Time) For(Scene scene, Stance from, StanceSet starts) =>
        For(scene.Book.Stances, from, scene.Able.Allowed(from, starts), scene.Brief.Hero.Skill, scene.Brief.Hero.Lead ?? Side.Left);

    /// <summary>The same for a hero of this skill and lead foot who may take every stance.</summary>
    public static (Stance Stance, int Time) For(StanceTable stances, Stance from, StanceSet starts, Skill skill, Side lead)
    {
        if (starts.Contains(from))
        {
            return (from, 0);
        }

        var best = (Stance: from, Time: StanceTable.Never, Rank: int.MaxValue);
        foreach (var to in All)
        {
            if (!starts.Contains(to))
            {
                continue;
            }

            var time = stances.Time(from, to, skill);
            var rank = RankOf(lead, to);
            if (time < StanceTable.Never && (time < best.Time || (time == best.Time && rank < best.Rank)))
            {
                best = (to, time, rank);
            }
        }

        return (best.Stance, best.Time);
    }

    /// <summary>Whence and where to the hero goes for a technique, and the time it takes; an escape starts as the grab that it gets out of leaves them.</summary>
    public static (Stance From, Stance To, int Time) For(Scene scene, Stance before, Technique technique, Attack? escaped)
    {
        var from = escaped is null ? before : Pulled(before, escaped);
        var (to, time) = For(scene, from, technique.Starts);
        return (from, to, time);
    }

    /// <summary>The stance in which a grab leaves the hero: some pull a standing hero down.</summary>
    public static Stance Pulled(Stance stance, Attack grab) =>
        grab.GripsStance is { } into && (stance is Stance.LeftLead or Stance.RightLead or Stance.Square) ? into : stance;

    private static int RankOf(Side lead, Stance stance)
    {
        if (stance == Stance.Square)
        {
            return 0;
        }

        var foot = stance switch
        {
            Stance.LeftLead or Stance.KneelingRight or Stance.OnRightLeg => Side.Left,
            Stance.RightLead or Stance.KneelingLeft or Stance.OnLeftLeg => Side.Right,
            _ => (Side?)null,
        };
        return foot == lead ? 1 : 2;
    }
}
