using Generator.Rules.Memories;
using Generator.Rules.Replaying;

namespace Generator.Rules.Shapes;

/// <summary>
/// Wear: blows add up, and whoever has taken some stays away for longer, and is beaten by what they would have shaken off before. Common practice, no source, as are the numbers. A single attacker has nobody to
/// fill the time with and is left out.
/// </summary>
internal static class Worn
{
    /// <summary>Blows from which an attacker is worn.</summary>
    public const int From = 4;

    /// <summary>Half counts from the end of the last blow to the contact of the next own attack that somebody worn needs, beside one for each blow.</summary>
    public const int Rest = 4;

    /// <summary>Setbacks from which the hero is worn.</summary>
    public const int HeroFrom = 3;

    /// <summary>Half counts for which a setback of a hero who is worn is felt.</summary>
    public const int Felt = 6;

    /// <summary>Half counts that they need before they attack again, in contact; 0 where they are not worn.</summary>
    public static int RestOf(Scene scene, PartSoFar part) => scene.Cast > 1 && part.Blows >= From && part.HitAt >= 0 ? Rest + part.Blows : 0;

    /// <summary>They are worn and come again though nothing has beaten them since.</summary>
    public static bool IsUnbeaten(Scene scene, PartSoFar part) => RestOf(scene, part) > 0 && !part.IsBeaten;

    /// <summary>Their part after one more move.</summary>
    public static PartSoFar After(PartSoFar part, Step step, int attacker)
    {
        var attacks = step.Attack is not null && step.Row.Attacker == attacker;
        var isHit = Wear.Hits(step, attacker);
        return new PartSoFar(
            part.Moves + (step.Concerns(attacker) ? 1 : 0),
            part.Blows + (isHit ? 1 : 0),
            isHit ? step.End : attacks ? -1 : part.HitAt,
            (part.IsBeaten && !attacks) || (Wear.Takes(step, attacker) && step.Reaction is { Beats: true }));
    }
}
