using Generator.Domain;
using Generator.Rules.Bodies;
using Generator.Rules.Replaying;

namespace Generator.Rules.Sight;

/// <summary>
/// A planned miss that has to read: a hit of the hero, which the sightline rule judges too, or an attack that the hero sells in a setback.
/// </summary>
public sealed record Hit
{
    /// <summary>Number of the move, from 1.</summary>
    public required int Move { get; init; }

    /// <summary>Moment in half counts from count 1.</summary>
    public required int Start { get; init; }

    /// <summary>Who takes it, or throws it at the hero.</summary>
    public required int Attacker { get; init; }

    /// <summary>The hero takes it.</summary>
    public bool OnHero { get; init; }

    /// <summary>Name of the technique, or of the attack.</summary>
    public required string Name { get; init; }

    /// <summary>From where it can read.</summary>
    public required Sells Sells { get; init; }

    /// <summary>Of the line of the blow as seen from the mark, 0 to 23 half hours.</summary>
    public required int Bearing { get; init; }

    /// <summary>Of the one who takes it from the mark, in centimetres.</summary>
    public required int Distance { get; init; }

    /// <summary>At which it lands, in centimetres above the floor.</summary>
    public required int Height { get; init; }

    /// <summary>From fist or foot to what it is aimed at, in metres: what is taught (<see cref="MissGeometry.Gap"/>), or what it is between these two where that is known.</summary>
    public double Gap { get; init; } = MissGeometry.Gap;

    /// <summary>The mark from which all that is seen, as a place on the floor.</summary>
    public Place Mark { get; init; }

    public IReadOnlyList<Bystander> Others { get; init; } = [];

    /// <summary>Things of the floor that may stand in the way.</summary>
    public IReadOnlyList<Screen> Screens { get; init; } = [];

    /// <summary>The non-contact hits of a routine, in order.</summary>
    public static IReadOnlyList<Hit> Of(Scene scene, IReadOnlyList<Step> steps) => [.. steps.Select(s => Of(scene, s)).OfType<Hit>()];

    private static Hit? Of(Scene scene, Step step)
    {
        if (step is not { HasTarget: true, Technique: { Kind: ContactKind.NonContact } technique })
        {
            return null;
        }

        return technique switch
        {
            { IsHit: true } when !step.IsAnswered => Of(scene, step, technique) with { Name = technique.Name, Sells = technique.Sells },
            { Family: Family.Setback } when step.Attack is { IsGrab: false } attack => Of(scene, step, technique) with
            {
                OnHero = true,
                Name = attack.Name,
                Sells = SellsOf(attack.Line.Kind),
                Distance = 0,
                Height = Level(scene.Brief.Hero.Height.Value, LevelOf(attack.Line), KneelsHero(step.StanceStart), step.StanceStart is Stance.FloorBack or Stance.FloorFront),
            },
            _ => null,
        };
    }

    private static Hit Of(Scene scene, Step step, Technique technique) => new()
    {
        Move = step.Index + 1,
        Start = step.Start,
        Attacker = step.Row.Attacker,
        Name = technique.Name,
        Sells = technique.Sells,
        Bearing = step.TargetBearing,
        Distance = step.Distance,
        Mark = step.Mark,
        Screens = Screen.Of(scene, step.Mark),
        Height = Level(scene.Brief.Attackers[step.Row.Attacker].Height.Value, technique.Height, step.TargetPosture?.IsKneeling() == true, step.TargetPosture?.IsLying() == true),
        Others = [.. Enumerable.Range(0, scene.Cast).Where(a => a != step.Row.Attacker && Stands(step.Before.Attackers[a], step.Start)).Select(a => new Bystander(a, step.Before.Attackers[a].Bearing, step.Before.Attackers[a].Distance, scene.Brief.Attackers[a].Height.Value))],
    };

    /// <summary>As the hero's own hits of that kind in the library: what comes straight, down or up reads along its line, what is swung reads across it.</summary>
    private static Sells SellsOf(LineKind line) => line switch
    {
        LineKind.HighRound or LineKind.KneeRound or LineKind.KickMiddleRound or LineKind.KickHighRound or LineKind.PropRoundHigh or LineKind.PropRound or LineKind.PropSlash => Sells.Across,
        LineKind.KickLowRound or LineKind.KickStomp or LineKind.KickAtFallen => Sells.Any,
        _ => Sells.Along,
    };

    private static Height LevelOf(AttackLine line) => line switch
    {
        { IsAtHead: true } => Domain.Height.High,
        { Kind: LineKind.KickLowRound or LineKind.KickStomp or LineKind.KickAtFallen } => Domain.Height.Low,
        _ => Domain.Height.Middle,
    };

    private static bool KneelsHero(Stance stance) => stance is Stance.KneelingLeft or Stance.KneelingRight;

    /// <summary>
    /// Face, belly or knee at 0.935, 0.66 and 0.285 of stature (Drillis and Contini 1966: chin 0.870, hip 0.530, shoulder 0.818, knee 0.285); a kneeling
    /// target is lower by the knee height, a lying one is 20 cm above the floor.
    /// </summary>
    private static int Level(int stature, Height height, bool kneels, bool lies)
    {
        if (lies)
        {
            return 20;
        }

        var thousandths = height switch
        {
            Domain.Height.Low => 285,
            Domain.Height.Middle => 660,
            _ => 935,
        };
        return stature * (thousandths - (kneels ? Math.Min(285, thousandths - 100) : 0)) / 1000;
    }

    private static bool Stands(AttackerState other, int moment) =>
        other.Posture != Posture.Out && other.Entrance <= moment && other.PostureAt(moment) is { } posture && !posture.IsDown();
}
