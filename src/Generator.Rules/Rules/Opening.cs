using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>A follow-up finds the posture it needs while it is open, and what follows suits the technique and that posture.</summary>
public sealed class Opening : Rule
{
    public override string Id => "opening";

    public override string Title => "A follow-up finds the posture it needs while it is open, and the reaction suits it.";

    public override Severity Worst => Severity.Broken;

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        if (step.Technique is not { } technique)
        {
            return null;
        }

        if (!step.HasTarget)
        {
            if (step.Reaction is not null && tally.Count(Severity.Broken))
            {
                tally.Tell(Unsuited(scene, step, technique));
            }

            return null;
        }

        if (step.TargetPosture == Posture.Out)
        {
            return null;
        }

        var open = step.Mode != MoveMode.FollowUp || FindsOpening(step, technique);
        if (!open && tally.Count(Severity.Broken))
        {
            tally.Tell(Closed(scene, step, technique));
        }

        if (step.Reaction is not { } reaction)
        {
            return null;
        }

        if (step.ReactionAssumed || !scene.Book.Lists(step.Row.Technique, step.Row.Reaction))
        {
            if (tally.Count(Severity.Broken))
            {
                tally.Tell(Unsuited(scene, step, technique));
            }
        }
        else if (open && !Follows(step, technique, reaction) && tally.Count(Severity.Broken))
        {
            tally.Tell(Impossible(scene, step, technique, reaction));
        }

        return null;
    }

    /// <summary>The target is in a posture that the technique needs, or in a grip that it opens.</summary>
    public static bool FindsOpening(Step step, Technique technique)
    {
        var target = step.Before.Attackers[step.Row.Attacker];
        var opensGrip = technique.Family == Family.Escape && target.Posture == Posture.Gripping && target.Grip is { } line && technique.Answers.Contains(line);
        return opensGrip || (step.TargetPosture is { } posture && technique.Needs.Contains(posture));
    }

    /// <summary>The posture before the move and the people there let a listed reaction happen.</summary>
    public static bool Follows(Step step, Technique technique, Reaction reaction)
    {
        if ((technique.TakesTwo || reaction.HitsSecond) && step.Second < 0)
        {
            return false;
        }

        if (reaction.AnswersBlow)
        {
            return step.Attack is not null || step.TargetPosture is Posture.Ready or Posture.OffBalance;
        }

        var kneels = step.TargetPosture is { } at && at.IsKneeling();
        if (step.Attack is null && (kneels ? reaction.NeedsFeet : reaction.NeedsKnee))
        {
            return false;
        }

        return reaction.Posture switch
        {
            null => step.Mode == MoveMode.FollowUp && step.TargetPosture is { } held && held.IsControlled(),
            Posture.Gripping => (step.Mode == MoveMode.FollowUp && step.TargetPosture == Posture.Gripping)
                || (technique.Seizes && step.Attack is not null),
            Posture.OnBack when reaction.Back.Value == 0 && reaction.Fall == FallClass.None => step.TargetPosture == Posture.OnBack,
            Posture.FaceDown or Posture.Pinned when reaction.Fall == FallClass.None => step.TargetPosture is { } low && low.IsDown(),
            _ => true,
        };
    }

    private Finding Closed(Scene scene, Step step, Technique technique)
    {
        var who = Words.Name(scene, step.Row.Attacker);
        var before = step.Before.Attackers[step.Row.Attacker];
        if (step.Start > before.OpenUntil && before.Posture != Posture.Ready && technique.Needs.Contains(before.Posture))
        {
            return At(scene, step, Severity.Broken, $"The opening is over: {who} was {Words.Of(before.Posture)} until count {new HalfCounts(before.OpenUntil).ToCountText()}, and {Words.Low(technique.Name)} comes at {new HalfCounts(step.Start).ToCountText()}.") with
            {
                Measured = (step.Start - before.OpenUntil) / 2m,
                Allowed = 0,
                Unit = "counts",
                Advice = "Start the move sooner, or choose a reaction before it that stays open longer.",
            };
        }

        var now = step.TargetPosture is { } posture ? Words.Of(posture) : "recovering, neither open nor ready";
        return At(scene, step, Severity.Broken, technique.Needs.IsEmpty
            ? $"{Words.Cap(technique.Name)} only answers an attack, and {who} throws none."
            : $"{who} is {now}; {Words.Low(technique.Name)} needs somebody {Words.Of(technique.Needs)}.") with
        {
            Advice = "Choose a technique for this posture, or another reaction before it.",
        };
    }

    private Finding Unsuited(Scene scene, Step step, Technique technique)
    {
        var suits = Words.Join([.. technique.Reactions.Select(r => scene.Book.ReactionIndex(r) is var i and >= 0 ? Words.Low(scene.Book.Reactions[i].Name) : r)], "or");
        return At(scene, step, Severity.Broken, step.ReactionAssumed
            ? $"{Words.Cap(technique.Name)} leaves open how {Words.Name(scene, step.Row.Attacker)} reacts; what follows is judged as if the reaction were {Words.Low(step.Reaction!.Name)}."
            : $"{Words.Cap(step.Reaction!.Name)} does not suit {Words.Low(technique.Name)}.") with
        {
            Advice = technique.Reactions.Count == 0 ? "Leave the reaction out: nobody reacts to this." : $"Let it be {suits}.",
        };
    }

    private Finding Impossible(Scene scene, Step step, Technique technique, Reaction reaction)
    {
        var who = Words.Name(scene, step.Row.Attacker);
        if ((technique.TakesTwo || reaction.HitsSecond) && step.Second < 0)
        {
            return At(scene, step, Severity.Broken, technique.Two is { } two
                ? $"{technique.Name} needs a second attacker, {Words.Of(two.Needs)}, {two.FewestApart * 15} to {two.MostApart * 15}° round from {who} and {two.Nearest} to {two.Farthest} from the mark, and nobody is."
                : $"{reaction.Name} needs a second attacker there, and nobody is.") with
            {
                Advice = "Bring a second attacker beside the first, or choose another technique or reaction.",
            };
        }

        var needs = reaction.Posture switch
        {
            _ when reaction.NeedsFeet && step.TargetPosture is { } at && at.IsKneeling() => "on their feet",
            Posture.Kneeling => "on a knee",
            null => "held by the hero",
            Posture.Gripping => "gripping already",
            Posture.Ready => "ready, or no more than off balance",
            Posture.OnBack => "on the back already",
            _ => "down already",
        };
        return At(scene, step, Severity.Broken, $"{Words.Cap(reaction.Name)} is only for somebody {needs}; {who} is {(step.TargetPosture is { } p ? Words.Of(p) : "recovering")}.") with
        {
            Advice = "Choose another reaction.",
        };
    }
}
