using Generator.Domain;
using Generator.Figures.Bodies;

namespace Generator.Figures.Posing;

/// <summary>Everything about how one record looks: its start, its contact and its end.</summary>
/// <param name="Id">Of the record.</param>
/// <param name="Name">Of the record.</param>
/// <param name="Side">The side that does it, from which it is looked at.</param>
/// <param name="Start">Before it.</param>
/// <param name="Contact">When it meets.</param>
/// <param name="End">After it, with the sell.</param>
/// <param name="ShowsStart">The start says something that the contact does not.</param>
public sealed record Card(string Id, string Name, Side Side, Frame Start, Frame Contact, Frame End, bool ShowsStart)
{
    /// <summary>An attack, of which start and contact are shown: what follows depends on the answer.</summary>
    public bool Attacks { get; init; }

    /// <summary>The attacker does it: attacks, setbacks of the hero and reactions.</summary>
    public bool ByAttacker { get; init; }

    /// <summary>Degrees by which both are turned to the left before they are looked at: a technique for two is seen from behind the hero, who stands between them; others as their shape says.</summary>
    public double Round { get; init; }

    /// <summary>What a card shows: contact and end, and the start where it says something; an end that is as the contact gives way to the start.</summary>
    public IReadOnlyList<Frame> Shown => (Attacks || EndsAsItMet, ShowsStart, Start.Attacker is null && Start.Hero is not null) switch
    {
        (true, false, true) => [Contact],
        (true, _, _) => [Start, Contact],
        (false, true, _) => [Start, Contact, End],
        _ => [Contact, End],
    };

    /// <summary>The end looks no other than the contact.</summary>
    public bool EndsAsItMet => Same(Contact, End);

    /// <summary>Its record: a frame holds its own mirror image, and that one the frame, so that all of it has no end.</summary>
    public override string ToString() => Id;

    private static bool Same(Frame one, Frame other) => Same(one.Hero, other.Hero) && Same(one.Attacker, other.Attacker)
        && one.Props.Count == other.Props.Count && one.Props.Zip(other.Props).All(p => p.First.Kind == p.Second.Kind && p.First.Hand.To(p.Second.Hand) < 0.02 && p.First.Far.To(p.Second.Far) < 0.02);

    private static bool Same(Figure? one, Figure? other) =>
        one is null || other is null ? one == other : Enum.GetValues<Joint>().All(j => one[j].To(other[j]) < 0.02);
}
