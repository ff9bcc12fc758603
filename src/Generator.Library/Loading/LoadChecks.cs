using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Loading;

/// <summary>Finds loads that contradict what else a record says: its stances, limbs, turns and falls.</summary>
internal static class LoadChecks
{
    /// <summary>A turn of a technique from which somebody turns on the ball of a foot rather than with steps: a quarter of the circle.</summary>
    private const int TurnsOnFoot = 6;

    private static readonly Dictionary<string, (BodyParts Limb, string Words)> Limbs = new(StringComparer.Ordinal)
    {
        [Demand.LeftHand] = (BodyParts.LeftArm, "left arm"),
        [Demand.RightHand] = (BodyParts.RightArm, "right arm"),
        [Demand.LeftLeg] = (BodyParts.LeftLeg, "left leg"),
        [Demand.RightLeg] = (BodyParts.RightLeg, "right leg"),
    };

    public static void Check(Records records, StanceTable stances)
    {
        foreach (var (technique, source) in records.Techniques.Where(t => t.Source.Has("load")))
        {
            CheckDemands(technique.Demands, technique.Load, source);
            CheckKick(technique, source);
            CheckStances(technique, stances, source);
            Refuse(Math.Abs(technique.Turn.HalfHours) >= TurnsOnFoot && technique.Load.Pivot == BodyParts.None, source, "It turns a quarter of the circle or more, and pivots on nothing", "\"pivot\"");
            CheckFall(technique.HeroFall, technique.Load, source);
        }

        foreach (var (attack, source) in records.Attacks.Where(a => a.Source.Has("load")))
        {
            CheckDemands(attack.Demands, attack.Load, source);
            Refuse(attack.Contact.Limb == Limb.Leg && attack.Load.Carry == BodyParts.None, source, "It is a kick, and nothing carries the weight meanwhile", "\"carry\"");
        }

        foreach (var (reaction, source) in records.Reactions.Where(r => r.Source.Has("load")))
        {
            CheckFall(reaction.Fall, reaction.Load, source);
        }
    }

    private static void CheckDemands(IReadOnlyList<string> demands, Load load, ObjectReader source)
    {
        foreach (var (limb, words) in demands.Where(Limbs.ContainsKey).Select(d => Limbs[d]))
        {
            Refuse((load.Anywhere & limb) == BodyParts.None, source, $"It works with the {words}, and no part of it is loaded", "\"work\" or \"strain\"");
        }

        Refuse(demands.Contains(Demand.Jump) && (load.Jump == BodyParts.None || load.Land == BodyParts.None), source, "It is a jump, and nothing leaves the floor or lands", "\"jump\" and \"land\"");
        Refuse(demands.Contains(Demand.Spin) && load.Pivot == BodyParts.None, source, "It is a spin, and pivots on nothing", "\"pivot\"");
        Refuse(demands.Contains(Demand.Kneel) && load.Kneel == BodyParts.None, source, "It asks for a knee on the floor, and no knee is loaded", "\"kneel\"");
        Refuse(demands.Contains(Demand.Fall) && load.Land == BodyParts.None, source, "It is a fall, and lands on nothing", "\"land\"");
    }

    /// <summary>Who kicks on the feet stands on the other leg, unless both leave the floor.</summary>
    private static void CheckKick(Technique technique, ObjectReader source)
    {
        var upright = technique.Starts.Members.Any(s => !s.IsFloor() && !s.IsKneeling());
        var right = technique.Demands.Contains(Demand.RightLeg);
        if (upright && technique.Family == Family.Kick && right != technique.Demands.Contains(Demand.LeftLeg))
        {
            var standing = right ? BodyParts.LeftLeg : BodyParts.RightLeg;
            Refuse(
                ((technique.Load.Carry | technique.Load.Jump) & standing) != standing,
                source,
                $"It is a kick with the {(right ? "right" : "left")} leg, and the {(right ? "left" : "right")} one does not carry the weight",
                "\"carry\"");
        }
    }

    /// <summary>What its end stance asks, and what all stances ask that it starts from.</summary>
    private static void CheckStances(Technique technique, StanceTable stances, ObjectReader source)
    {
        var start = technique.Starts.Members.Select(stances.LoadOf).Aggregate((Load?)null, (all, one) => all?.And(one) ?? one) ?? default;
        var asked = technique.EndStance is { } end ? start.Or(stances.LoadOf(end)) : start;
        foreach (var act in Enum.GetValues<LoadAct>())
        {
            var missing = asked[act] & ~technique.Load[act];
            Refuse(missing != BodyParts.None, source, $"Its stances load {string.Join(", ", BodyPartWords.Of(missing))} ({EnumWords.Of(act)}), and its load does not say so", $"\"{EnumWords.Of(act)}\"");
        }
    }

    private static void CheckFall(FallClass fall, Load load, ObjectReader source)
    {
        Refuse(fall == FallClass.ToKnee && load.Kneel == BodyParts.None, source, "It ends on a knee, and no knee is loaded", "\"kneel\"");
        Refuse(fall is not (FallClass.None or FallClass.ToKnee) && load.Land == BodyParts.None, source, "It is a fall, and lands on nothing", "\"land\"");
    }

    private static void Refuse(bool wrong, ObjectReader source, string message, string missing)
    {
        if (wrong)
        {
            source.Refuse("load", message + ".", $"Maybe {missing} is missing in the load.");
        }
    }
}
