using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Rules.Replaying;
using Generator.Rules.Shapes;

namespace Generator.Rules.Rules;

/// <summary>
/// A chain goes on with what the last move frees: within an exchange a point for each blow with the limb that has just hit by which more than one in four so far are so, and a point for
/// each move wound up against the turn of the one before by which more than one in ten are so.
/// </summary>
public sealed class Momentum : Rule
{
    public override string Id => "momentum";

    public override string Title => "A chain goes on with another limb, and the way that the body turns already.";

    public override Severity Worst => Severity.Rough;

    public override object? Begin(Scene scene, FightState open, Tally tally) => MomentumMemory.None;

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        var was = (MomentumMemory)memory!;
        if (!scene.Judges(FightRule.Momentum))
        {
            return was;
        }

        var (way, goesOn) = (step.HasTarget ? Chain.WayOf(step) : 0, !step.Opens && step.HasTarget && was.HasTarget);
        var now = was with
        {
            HasTarget = step.HasTarget,
            Throws = step.Throws,
            Limb = Chain.LimbOf(step),
            Way = way,
            Neighbours = was.Neighbours + (goesOn ? 1 : 0),
            Against = was.Against + (goesOn && was.Way * way < 0 ? 1 : 0),
        };
        if (!goesOn)
        {
            return now;
        }

        if (now.Against > was.Against && Chain.Exceeds(now.Against, now.Neighbours, Chain.MostAgainst) && tally.Count(Severity.Rough, 1))
        {
            tally.Tell(At(scene, step, Severity.Rough, $"{scene.Brief.Hero.Name} turns one way for the last move and back for this one; {now.Against} of {now.Neighbours} moves in an exchange so far are wound up like this.") with
            {
                Points = 1,
                Measured = 100 * now.Against / now.Neighbours,
                Allowed = Chain.MostAgainst,
                Unit = "%",
                Advice = "Go on the way that the body turns already.",
            });
        }

        return was.Throws && step.Throws ? Linked(scene, was, now, step, tally) : now;
    }

    private MomentumMemory Linked(Scene scene, MomentumMemory was, MomentumMemory now, Step step, Tally tally)
    {
        now = now with { Links = was.Links + 1, Alike = was.Alike + ((was.Limb & now.Limb) != BodyParts.None ? 1 : 0) };
        if (now.Alike > was.Alike && Chain.Exceeds(now.Alike, now.Links, Chain.MostAlike) && tally.Count(Severity.Rough, 1))
        {
            tally.Tell(At(scene, step, Severity.Rough, $"{Words.Cap(step.Technique!.Name)} comes from the limb that has just hit, as do {now.Alike} of {now.Links} blows in a chain so far.") with
            {
                Points = 1,
                Measured = 100 * now.Alike / now.Links,
                Allowed = Chain.MostAlike,
                Unit = "%",
                Advice = "Go on with the other hand, or a foot.",
            });
        }

        return now;
    }
}
