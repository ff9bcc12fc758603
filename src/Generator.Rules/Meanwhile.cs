using Generator.Domain;
using Generator.Library;
using Generator.Rules.Replaying;

namespace Generator.Rules;

/// <summary>What those who hold somebody, or are held, can bear while the hero works on somebody else; null when all of it, else the reason in the trade's words.</summary>
public sealed class Meanwhile
{
    private static readonly Posture[] Held = [.. Enum.GetValues<Posture>().Where(p => p.IsControlled())];

    private readonly string?[,] held;
    private readonly string?[,] gripping;
    private readonly string?[,] support;
    private readonly string?[] gripped = new string?[AttackLine.Count];
    private readonly string?[] holding = new string?[2];
    private readonly bool asksHero;
    private readonly bool asksOthers;

    public Meanwhile(Brief brief, Book book)
    {
        var cast = brief.Attackers.Count;
        held = new string?[(int)Held[^1] + 1, cast];
        gripping = new string?[AttackLine.Count, cast];
        support = new string?[book.Techniques.Count, cast];
        (asksHero, asksOthers) = (IsLimited(brief.Hero), brief.Attackers.Any(IsLimited));
        foreach (var hand in asksHero ? Enum.GetValues<Side>() : [])
        {
            holding[(int)hand] = Ability.Asked($"keeping hold with the {(hand == Side.Left ? "left" : "right")} hand", [], book.Holds.OfHand(hand), brief.Hero, book.Settle);
        }

        for (var i = 0; i < AttackLine.Count && asksHero; i++)
        {
            gripped[i] = Ability.Asked($"staying held after {Grab(i, book)}", [], book.Holds.OfGrip(AttackLine.FromIndex(i)).HeroLoad, brief.Hero, book.Settle);
        }

        for (var a = 0; a < cast; a++)
        {
            if (IsLimited(brief.Attackers[a]))
            {
                Judge(a, brief.Attackers[a], book);
            }
        }
    }

    /// <summary>Why the hero cannot keep hold of somebody with this hand.</summary>
    public string? WhyNotHolding(Side hand) => holding[(int)hand];

    /// <summary>Why the hero cannot stay in a grip along this line.</summary>
    public string? WhyNotGripped(AttackLine line) => gripped[line.Index];

    /// <summary>Why the attacker cannot stay held so.</summary>
    public string? WhyNotHeld(Posture posture, int attacker) => held[(int)posture, attacker];

    /// <summary>Why the attacker cannot keep a grip along this line.</summary>
    public string? WhyNotGripping(AttackLine line, int attacker) => gripping[line.Index, attacker];

    /// <summary>Why the attacker, who holds the hero or is held, cannot be the base of a technique on somebody else.</summary>
    public string? WhyNotBase(int technique, int attacker) => support[technique, attacker];

    /// <summary>Why the hero cannot go on holding, or being held by, those whom a move does not concern.</summary>
    internal string? WhyNotHero(Step step)
    {
        var before = step.Before;
        return !asksHero ? null : Hand(before.Left, Side.Left) ?? Hand(before.Right, Side.Right) ?? Grips();

        string? Hand(Hand hand, Side side) => hand.Kind == HandKind.Holding && !step.Concerns(hand.Who) ? WhyNotHolding(side) : null;

        string? Grips()
        {
            string? reason = null;
            for (var a = 0; a < before.Attackers.Count && reason is null; a++)
            {
                reason = IsLeft(step, a) && before.Attackers[a].Posture == Posture.Gripping ? WhyNotGripped(LineOf(before.Attackers[a])) : null;
            }

            return reason;
        }
    }

    /// <summary>Of the attackers whom a move does not concern, those who cannot go on as they hold or are held, each with the reason.</summary>
    internal IEnumerable<(int Attacker, string Reason)> WhyNotOthers(Step step) => asksOthers && AnybodyLeft(step) ? Reasons(step) : [];

    private IEnumerable<(int Attacker, string Reason)> Reasons(Step step)
    {
        for (var a = 0; a < step.Before.Attackers.Count; a++)
        {
            if (!IsLeft(step, a))
            {
                continue;
            }

            var state = step.Before.Attackers[a];
            var lasting = state.Posture == Posture.Gripping ? WhyNotGripping(LineOf(state), a) : WhyNotHeld(state.Posture, a);
            if ((lasting ?? (step.Technique is null ? null : WhyNotBase(step.Row.Technique, a))) is { } reason)
            {
                yield return (a, reason);
            }
        }
    }

    /// <summary>Asked at every step of a search, where next to always nobody is.</summary>
    private static bool AnybodyLeft(Step step)
    {
        for (var a = 0; a < step.Before.Attackers.Count; a++)
        {
            if (IsLeft(step, a))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>They hold, or are held, and the move does not concern them.</summary>
    private static bool IsLeft(Step step, int attacker) => step.Before.Attackers[attacker].Posture.IsTied() && !step.Concerns(attacker) && !step.Before.IsWithOther(attacker);

    private static AttackLine LineOf(AttackerState state) => state.Grip ?? default;

    private static bool IsLimited(Performer person) => person.Limits.Count > 0 || person.Wardrobe.Count > 0;

    /// <summary>A grab along a line in words.</summary>
    private static string Grab(int line, Book book) => book.Attacks.FirstOrDefault(a => a.Line.Index == line) is { } grab ? Words.Low(grab.Name) : "a grab";

    private void Judge(int a, Performer person, Book book)
    {
        foreach (var posture in Held)
        {
            held[(int)posture, a] = Ability.Asked($"staying {Words.Of(posture)}", [], book.Holds.OfHeld(posture), person, book.Settle);
        }

        for (var i = 0; i < AttackLine.Count; i++)
        {
            gripping[i, a] = Ability.Asked($"keeping hold after {Grab(i, book)}", [], book.Holds.OfGrip(AttackLine.FromIndex(i)).Load, person, book.Settle);
        }

        for (var t = 0; t < book.Techniques.Count; t++)
        {
            support[t, a] = book.Techniques[t].SupportLoad.Anywhere == BodyParts.None ? null : Ability.Asked($"being the base of {Words.Low(book.Techniques[t].Name)}", [], book.Techniques[t].SupportLoad, person, book.Settle);
        }
    }
}
