using Generator.Domain;
using Generator.Rules.Combining;
using Generator.Rules.Replaying;

namespace Generator.Rules.Shapes;

/// <summary>A routine read as a fight: its measures, each explained where it is defined. Knows no solver and gives no points.</summary>
public sealed class FightShape
{
    private FightShape(Scene scene, IReadOnlyList<Step> steps)
    {
        (Scene, Steps) = (scene, steps);
        End = steps.Select(s => s.Over).Append(0).Max();
        Contacts = Contact.Of(steps);
        Exchanges = Exchange.Of(steps);
        Intervals = Intervals.Of(Contacts);
        Flurries = Flurry.Of(Contacts);
        Intensity = Intensity.Of(Contacts, End);
        OnTop = UpperSpan.Of(steps, End);
        Setbacks = Setback.Of(steps, End);
        Outs = Out.Of(steps);
        LastFight = Shapes.LastFight.Of(steps, Outs);
        Wears = Wear.Of(scene, steps);
        Levels = Levels.Of(steps);
        ForNothing = ForNothing.Of(scene, steps);
        Chain = Chain.Of(steps);
        Returns = Returns.Of(steps);
        Manners = Manners.Of(steps);
        Combinations = ThrownCombination.Of(scene, steps);
        Areas = Areas.Of(scene, steps.Count > 0 ? steps[^1].After : Replay.Open(scene, []));
    }

    public Scene Scene { get; }

    public IReadOnlyList<Step> Steps { get; }

    /// <summary>Half counts from count 1 to the end of the last move.</summary>
    public int End { get; }

    public IReadOnlyList<Contact> Contacts { get; }

    public IReadOnlyList<Exchange> Exchanges { get; }

    public Intervals Intervals { get; }

    public IReadOnlyList<Flurry> Flurries { get; }

    public Intensity Intensity { get; }

    public IReadOnlyList<UpperSpan> OnTop { get; }

    public IReadOnlyList<Setback> Setbacks { get; }

    public IReadOnlyList<Out> Outs { get; }

    public LastFight? LastFight { get; }

    /// <summary>The hero, then the attackers in the order of the brief.</summary>
    public IReadOnlyList<Wear> Wears { get; }

    public Levels Levels { get; }

    public ForNothing ForNothing { get; }

    public Chain Chain { get; }

    public Returns Returns { get; }

    public Manners Manners { get; }

    public IReadOnlyList<ThrownCombination> Combinations { get; }

    public Areas Areas { get; }

    /// <summary>Attacks, walk-ins among them.</summary>
    public int Attacks => Steps.Count(s => s.Attack is not null && s.HasTarget);

    public decimal Seconds => Scene.Pulse.SecondsWithHolds(0, End);

    public static FightShape Of(Scene scene, IReadOnlyList<Step> steps) => new(scene, steps);

    public static FightShape Of(Scene scene, Routine routine) => new(scene, Replay.Of(scene, routine));

    /// <summary>Which hundredth of the fight a moment lies in, 0 to 100.</summary>
    public int PercentAt(int moment) => End == 0 ? 0 : Math.Clamp(100 * moment / End, 0, 100);
}
