using Generator.Domain;
using Generator.Rules.Bodies;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>
/// Nobody comes, stands, is sent or falls onto a body on the floor, and the hero stands and steps clear of all but the one the technique works on. What it has told of the hero is remembered, one
/// bit an attacker, until they move; of the ally the same eight bits on.
/// </summary>
public sealed class Underfoot : Rule
{
    public override string Id => "underfoot";

    public override string Title => "Nobody stands, steps, lands or falls onto a body on the floor.";

    public override Severity Worst => Severity.Unsafe;

    public override Whose Looks => Whose.Both;

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        foreach (var meeting in step.Meetings(scene))
        {
            if (meeting.IsUnderfoot && tally.Count(Severity.Unsafe))
            {
                tally.Tell(OnTheBody(scene, step, meeting));
            }
        }

        var was = memory is int known ? known : 0;
        var told = was;
        var first = step.IsByAlly ? 8 : 0;
        for (var a = 0; a < scene.Cast; a++)
        {
            var other = step.Before.Attackers[a];
            if (step.Concerns(a))
            {
                told &= ~((1 << a) | (1 << (8 + a)));
            }
            else if ((told & (1 << (first + a))) == 0 && other.LiesAt(step.Start) && Spacing.AtTheHero(scene, step, a) is { } near)
            {
                told |= 1 << (first + a);
                if (tally.Count(Severity.Unsafe))
                {
                    tally.Tell(AtTheHero(scene, step, a, near));
                }
            }
        }

        return told == was ? memory : told;
    }

    private Finding AtTheHero(Scene scene, Step step, int attacker, int distance) => Told(
        scene,
        step,
        $"{Words.Name(scene, attacker)} lies at {scene.Brief.Hero.Name}'s feet, {Words.Metres(distance)} from {(step.StepsTo == default ? "the mark" : "where the technique steps")}, while the move is on somebody else.",
        Words.Name(scene, attacker),
        distance,
        2 * scene.Settle.BodyRadius.Value,
        "Let the fall carry farther, or put a move between that clears the floor.");

    private Finding OnTheBody(Scene scene, Step step, Meeting meeting)
    {
        var (one, other) = (Words.Name(scene, meeting.First), Words.Name(scene, meeting.Second));
        var (goes, lies) = meeting.Other.Lies ? (one, other) : (other, one);
        var message = (meeting.Mine.Lies, meeting.Other.Lies) switch
        {
            (true, true) => $"{one} comes to lie on {other}, {Words.Metres(meeting.Apart)} from body to body.",
            (true, false) => $"{one} falls at the feet of {other}, {Words.Metres(meeting.Apart)} from the body.",
            _ when meeting.Mine.Kind is LegKind.Comes or LegKind.Enters => $"{goes} walks over {lies}, who lies on the floor: {Words.Metres(meeting.Apart)} from the body.",
            _ when meeting.Mine.Kind == LegKind.Rests => $"{goes} stands on {lies}, who lies on the floor: {Words.Metres(meeting.Apart)} from the body.",
            _ => $"{goes} is sent over {lies}, who lies on the floor: {Words.Metres(meeting.Apart)} from the body.",
        };
        return Told(scene, step, message, $"{one}, {other}", meeting.Apart, meeting.Room, $"Let {one} come from another bearing, or choose a reaction that ends elsewhere.");
    }

    private Finding Told(Scene scene, Step step, string message, string who, int measured, int wanted, string advice) => At(scene, step, Severity.Unsafe, message) with
    {
        Who = who,
        Measured = measured / 100m,
        Allowed = wanted / 100m,
        Unit = "m",
        Advice = advice,
    };
}
