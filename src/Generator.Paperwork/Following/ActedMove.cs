using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Figures.Posing;
using Generator.Rules;
using Generator.Rules.Replaying;
using Body = Generator.Figures.Bodies.Figure;
using Turn = Generator.Figures.Bodies.Turned;

namespace Generator.Paperwork.Following;

/// <summary>A move as its card has it, put on the floor: both look along the line between them, as far apart as on the card.</summary>
/// <param name="Step">The move.</param>
/// <param name="Card">Its picture.</param>
/// <param name="Begins">Half count in which whoever moves first does.</param>
/// <param name="Contact">Half count of the contact.</param>
/// <param name="Ends">Half count by which it is sold.</param>
/// <param name="Mark">Where the hero's mark on the card lies on the floor.</param>
/// <param name="Turned">Degrees by which the card is turned to its left.</param>
internal sealed record ActedMove(Step Step, Card Card, int Begins, int Contact, int Ends, Vec Mark, double Turned)
{
    /// <summary>Null where no picture is known of the move, or it concerns nobody else.</summary>
    /// <param name="scene">Brief and library.</param>
    /// <param name="step">The move.</param>
    /// <param name="cards">For the two who meet.</param>
    /// <param name="attacker">The way of the other one through the routine.</param>
    public static ActedMove? Of(Scene scene, Step step, Cards cards, PerformerCourse attacker)
    {
        var card = step switch
        {
            { HasTarget: false } => null,
            { Technique: { } technique } => cards.Of(technique, met: FigureHands.Met(step)),
            { Attack: { } attack } => cards.Of(attack, held: FigureHands.Held(step)),
            _ => null,
        };
        if (card is not { Contact: { Hero: { } hero, Attacker: { } other } })
        {
            return null;
        }

        var contact = HeroTrail.SoundsAt(step);
        var at = Stage.Of(attacker.PlaceAt(contact));
        var hers = attacker.Marks.Count == 0 ? default : Stage.Of(attacker.MarkAt(contact));
        var turned = Stage.Towards(hers, at);
        var begins = step.Attack is null ? step.Start : Math.Min(step.Start, AttackerTrail.AttackStart(step));

        // On their feet the hero steps so far that both are as near as on the card; else the attacker comes so near.
        var stands = Math.Min(hero[Joint.Crown].Y, hero[Joint.Hips].Y) > 0.35 * hero.Stature;
        var mark = stands ? at - other.TurnedLeft(turned)[Joint.Hips].Level : hers;
        return new ActedMove(step, card, Math.Min(begins, contact - 1), contact, Math.Max(contact + 1, step.Over), mark, turned) { Onto = OntoOf(scene, step, card) };
    }

    /// <summary>How far beyond and above the place where the other one comes to be they land first, on the card: on the thing onto which they are thrown; nothing for who lands on the floor.</summary>
    public Vec? Onto { get; private init; }

    /// <summary>The place on which they land, for one on the floor.</summary>
    public Vec On(Vec at) => Onto is { } onto ? at + (Turn.Leftwards(Turned) * onto) : at;

    private static Vec? OntoOf(Scene scene, Step step, Card card) =>
        step.Reaction?.Uses is { Use: ThingUse.ThrownOnto } && card.End.Attacker is { } flat && FigureThing.In(scene, step, card).End.Attacker is { } lies && lies[Joint.Hips].Y > flat[Joint.Hips].Y
            ? lies[Joint.Hips] - flat[Joint.Hips] : null;

    /// <summary>A body of the card, on the floor.</summary>
    public Body Placed(Body figure) => figure.TurnedLeft(Turned).Moved(Mark);

    /// <summary>Where they meet.</summary>
    public IEnumerable<Meeting> Meetings => Card.Contact.Marks.Select(m => new Meeting(Contact, Placed(m.At), m.Kind));

    /// <summary>What is in their hands when they meet.</summary>
    public IEnumerable<HeldProp> Props => Card.Contact.Props.Select(p => p with { Hand = Placed(p.Hand), Far = Placed(p.Far) });

    /// <summary>A place of the card, on the floor.</summary>
    private Vec Placed(Vec at) => (Turn.Leftwards(Turned) * at) + Mark;
}
