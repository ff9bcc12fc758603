using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>
/// Each attacker's share of the exchanges fits the time they are in play, or is as the brief asks. Without a wish, nobody in play at least as
/// long as another has two or more exchanges fewer: a point for each beyond the first. With one, the share may be one exchange off.
/// </summary>
public sealed class Share : Rule
{
    public override string Id => "share";

    public override string Title => "Each attacker's share of the exchanges fits the time they are in play, or is as the brief asks.";

    public override Severity Worst => Severity.Rough;

    public override Whose Looks => Whose.Both;

    public override object? Begin(Scene scene, FightState open, Tally tally) => new ShareMemory(new int[scene.Cast]);

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        var was = (ShareMemory)memory!;
        if (!step.Opens || step.Technique is null)
        {
            return was;
        }

        var exchanges = was.Exchanges.ToArray();
        exchanges[step.Row.Attacker]++;
        return new ShareMemory(exchanges);
    }

    public override void Close(Scene scene, object? memory, FightState end, Tally tally)
    {
        var exchanges = ((ShareMemory)memory!).Exchanges;
        var all = exchanges.Sum();
        for (var a = 0; a < scene.Cast; a++)
        {
            if (scene.Brief.Attackers[a].SharePercent is { } percent)
            {
                JudgeWish(scene, end, a, exchanges[a], percent, all, tally);
                continue;
            }

            for (var b = 0; b < scene.Cast; b++)
            {
                if (b != a && scene.Brief.Attackers[b].SharePercent is null)
                {
                    JudgePair(scene, end, a, b, exchanges, tally);
                }
            }
        }
    }

    /// <summary>Half counts for which an attacker is in play.</summary>
    public static int TimeInPlay(FightState end, int attacker)
    {
        var state = end.Attackers[attacker];
        return (state.OutAt >= 0 ? state.OutAt : end.Time) - state.Entrance;
    }

    private void JudgePair(Scene scene, FightState end, int longer, int shorter, IReadOnlyList<int> exchanges, Tally tally)
    {
        var over = exchanges[shorter] - exchanges[longer] - 1;
        if (over <= 0 || TimeInPlay(end, longer) < TimeInPlay(end, shorter) || !tally.Count(Severity.Rough, over))
        {
            return;
        }

        var (who, other) = (Words.Name(scene, longer), Words.Name(scene, shorter));
        tally.Tell(AtEnd(end, Severity.Rough, $"{who}, {other}", $"{who} is in the fight at least as long as {other}, but has {exchanges[longer]} exchanges to {exchanges[shorter]}.") with
        {
            Points = over,
            Measured = exchanges[shorter] - exchanges[longer],
            Allowed = 1,
            Unit = "exchanges",
            Advice = $"Give {who} an exchange more, or put {who} out sooner.",
        });
    }

    private void JudgeWish(Scene scene, FightState end, int attacker, int own, int percent, int all, Tally tally)
    {
        var over = Math.Abs((100 * own) - (percent * all)) - 100;
        if (over <= 0 || !tally.Count(Severity.Rough, (over + 99) / 100))
        {
            return;
        }

        var who = Words.Name(scene, attacker);
        tally.Tell(AtEnd(end, Severity.Rough, who, $"{who} has {own} of {all} exchanges; the brief asks for {percent} in a hundred.") with
        {
            Points = (over + 99) / 100,
            Measured = own,
            Allowed = percent * all / 100m,
            Unit = "exchanges",
            Advice = 100 * own > percent * all ? $"Give one of {who}'s exchanges to another attacker." : $"Give {who} an exchange more.",
        });
    }
}
