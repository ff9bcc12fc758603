using Generator.Domain;

namespace Generator.Library.Loading;

/// <summary>Finds what contradicts itself in one attack.</summary>
internal static class AttackChecks
{
    public static void Check(Records records)
    {
        foreach (var (attack, source) in records.Attacks)
        {
            if (source.Has("line") && attack.IsGrab != (attack.GripsBound is not null))
            {
                source.Refuse(
                    "grips",
                    attack.IsGrab ? "A grab must say how its grip leaves the hero." : "Only a grab leaves a grip.",
                    attack.IsGrab ? "Maybe add \"grips\": { \"bound\": \"front\" }." : "Maybe leave \"grips\" out, or write a line that begins with grab-.");
            }

            if (attack.MissPosture is Posture.Out or Posture.Gripping or Posture.Knelt || attack.MissPosture.IsControlled())
            {
                source.Refuse("miss", "A miss leaves nobody out, held or gripping.", "Maybe off-balance or turned is meant.");
            }

            if (attack.FromKnee && attack.HeroStances.Members.Any(s => !s.IsKneeling()))
            {
                source.Refuse("stances", "From the knee only a hero on a knee is reached.", "Maybe only kneeling-left and kneeling-right are meant, or a line that does not begin with knee-.");
            }

            if (source.Has("line") && attack.Side is null && !SideChecks.IsOwnMirror(attack))
            {
                source.Refuse("id", "It has no side, and yet its left and right differ.", "Maybe add \"side\", or make both sides alike.");
            }
        }
    }
}
