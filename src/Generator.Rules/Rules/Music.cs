using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Rules.Replaying;
using Generator.Rules.Shapes;

namespace Generator.Rules.Rules;

/// <summary>
/// A contact lands on each accent of the music, three points where none does; and where the music holds nobody is in the middle of a move, nor falling.
/// </summary>
public sealed class Music : Rule
{
    /// <summary>Points for an accent without a contact.</summary>
    public const int Missed = 3;

    public override string Id => "music";

    public override string Title => "A contact lands on each accent of the music, and no move is under way where it holds.";

    public override Severity Worst => Severity.Unsafe;

    public override Whose Looks => Whose.Hero;

    public override object? Begin(Scene scene, FightState open, Tally tally) => scene.Brief.Music is null ? null : MusicMemory.None;

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        if (memory is not MusicMemory was || scene.Brief.Music is not { } music)
        {
            return null;
        }

        foreach (var hold in music.Holds)
        {
            if (IsUnderWay(scene, step, hold.At.Value) && tally.Count(Severity.Unsafe))
            {
                tally.Tell(Caught(scene, step, hold));
            }
        }

        var settled = was.Settled;
        for (var i = 0; i < music.Accents.Count; i++)
        {
            var at = music.Accents[i].Value;
            if (was.IsSettled(i))
            {
                continue;
            }

            if (Lands(step, at))
            {
                settled |= 1UL << i;
            }
            else if (step.Start > at)
            {
                settled |= 1UL << i;
                if (tally.Count(Severity.Rough, Missed))
                {
                    tally.Tell(Told(At(scene, step, Severity.Rough, Empty(music.Accents[i]))));
                }
            }
        }

        return settled == was.Settled ? was : new MusicMemory(settled);
    }

    public override void Close(Scene scene, object? memory, FightState end, Tally tally)
    {
        for (var i = 0; memory is MusicMemory was && i < scene.Brief.Music!.Accents.Count; i++)
        {
            if (!was.IsSettled(i) && tally.Count(Severity.Rough, Missed))
            {
                tally.Tell(Told(AtEnd(end, Severity.Rough, scene.Brief.Hero.Name, Empty(scene.Brief.Music.Accents[i]))));
            }
        }
    }

    /// <summary>An attack lands or is stopped, a blow hits or is answered, or a body is thrown at this moment.</summary>
    private static bool Lands(Step step, int moment) =>
        (Contact.OfAttack(step) && step.Contact == moment) || (Contact.OfHero(step) && step.End == moment);

    /// <summary>From the swing of an attack to the end of the move, and while somebody falls after it. Its own first and last moment are still: a hit may be held.</summary>
    private static bool IsUnderWay(Scene scene, Step step, int moment)
    {
        var begins = step.Attack is { } attack ? Math.Min(step.Start, step.Contact - attack.Length.Value) : step.Start;
        var falls = step.Reaction is { Fall: not FallClass.None } && step.End < moment && moment < step.End + scene.Settle.ContactAfter.Value;
        return falls || (begins < moment && moment < step.Over);
    }

    private Finding Caught(Scene scene, Step step, MusicHold hold) =>
        At(scene, step, Severity.Unsafe, $"The music holds at count {hold.At.ToCountText()}, while {Words.Low(step.Technique?.Name ?? step.Attack!.Name)} is under way: nobody can stand still there.") with
        {
            Measured = new HalfCounts(step.Over - hold.At.Value).Value / 2m,
            Allowed = 0,
            Unit = "counts",
            Advice = "Let the move end on that count, or begin with it.",
        };

    private static string Empty(HalfCounts accent) => $"Nothing lands on the accent at count {accent.ToCountText()}.";

    private static Finding Told(Finding finding) => finding with { Points = Missed, Advice = "Shift a blow or an attack so that its contact falls on that count." };
}
