using Generator.Domain;
using Generator.Library;
using Generator.Rules.Replaying;

namespace Generator.Rules.Connecting;

/// <summary>
/// What Replay makes of a move, without distances and bearings: which techniques work from a form after a gap, and how they leave it.
/// For a trained hero.
/// </summary>
/// <param name="book">The library.</param>
internal sealed class FormSteps(Book book)
{
    /// <summary>Longer than any change of stance.</summary>
    public const int LongGap = 40;

    /// <summary>At once, and with time for everything.</summary>
    public static readonly int[] Gaps = [0, LongGap];

    private static readonly Posture[] FreePostures =
    [
        Posture.Ready, Posture.Folded, Posture.HeadBack, Posture.Turned, Posture.OffBalance, Posture.Kneeling, Posture.FaceDown, Posture.OnBack,
    ];

    private readonly Attack[][] answered = [.. book.Techniques.Select(t => book.Attacks.Where(t.Meets).ToArray())];
    private readonly Reaction[][] reactions = [.. book.Techniques.Select(t => t.Reactions.Select(book.Reaction).ToArray())];

    public Book Book => book;

    /// <summary>
    /// Every move out of a form after a gap of so many half counts, done to anybody at all; of moves on somebody who is not tied, one for
    /// each technique, reaction and grip.
    /// </summary>
    public IEnumerable<FormMove> From(HeroForm form, int gap)
    {
        for (var technique = 0; technique < book.Techniques.Count; technique++)
        {
            var t = book.Techniques[technique];
            if (t.HasNoTarget)
            {
                if (StartOf(form, gap, t, -1, null) is { } start)
                {
                    yield return new FormMove(t, -1, null, null, After(form, start, t, -1, null, null, null), Posture.Ready);
                }

                continue;
            }

            for (var who = 0; who < HeroForm.MostTies && form[who].IsThere; who++)
            {
                foreach (var move in OnTied(form, gap, technique, who))
                {
                    yield return move;
                }
            }

            foreach (var move in OnFree(form, gap, technique))
            {
                yield return move;
            }
        }
    }

    /// <summary>A technique without a target works from a form after a gap.</summary>
    public bool Works(HeroForm form, int gap, Technique t) => StartOf(form, gap, t, -1, null) is not null;

    /// <summary>Moves on somebody who is tied to the hero.</summary>
    public IEnumerable<FormMove> OnTied(HeroForm form, int gap, int technique, int who)
    {
        var t = book.Techniques[technique];
        var tie = form[who];
        var opens = t.Family == Family.Escape && tie.Grip is { } grip && t.Answers.Contains(grip);
        if (t.HasNoTarget || !(opens || t.Needs.Contains(tie.Posture)) || StartOf(form, gap, t, who, null) is not { } start)
        {
            yield break;
        }

        foreach (var reaction in reactions[technique].Where(r => r.CanFollow(tie.Posture, seizes: false)))
        {
            yield return new FormMove(t, who, null, reaction, After(form, start, t, who, tie, reaction, null), reaction.Posture ?? tie.Posture);
        }
    }

    /// <summary>The stance, hands and bound in which an attack is answered after a gap; null when the technique does not work so.</summary>
    public FormStart? Answers(HeroForm form, int gap, Technique t, Attack attack)
    {
        var start = StartOf(form, gap, t, FormMove.Somebody, attack);
        var level = start is { Closes: true } ? form.Stance : start?.Stance;
        return level is { } stance && attack.HeroStances.Contains(stance) ? start : null;
    }

    /// <summary>Follow-ups on somebody who is not tied and is in this posture.</summary>
    public IEnumerable<FormMove> OnPosture(HeroForm form, int gap, int technique, Posture posture)
    {
        var t = book.Techniques[technique];
        if (!t.Needs.Contains(posture) || t.HasNoTarget || StartOf(form, gap, t, FormMove.Somebody, null) is not { } start)
        {
            yield break;
        }

        foreach (var reaction in reactions[technique].Where(r => r.CanFollow(posture, seizes: false)))
        {
            yield return new FormMove(t, FormMove.Somebody, null, reaction, After(form, start, t, FormMove.Somebody, new Tie(posture, null), reaction, null), reaction.Posture ?? posture);
        }
    }

    private IEnumerable<FormMove> OnFree(HeroForm form, int gap, int technique)
    {
        var t = book.Techniques[technique];
        if (StartOf(form, gap, t, FormMove.Somebody, null) is { } start)
        {
            foreach (var reaction in reactions[technique].Where(r => OnFeet(t, r) || Answered(t, technique, start, r)))
            {
                yield return new FormMove(t, FormMove.Somebody, null, reaction, After(form, start, t, FormMove.Somebody, Tie.None, reaction, null), reaction.Posture ?? Posture.Ready);
            }
        }

        if (t.Family is not (Family.Escape or Family.Setback))
        {
            yield break;
        }

        foreach (var grab in answered[technique])
        {
            if (Answers(form, gap, t, grab) is not { } closed)
            {
                continue;
            }

            foreach (var reaction in reactions[technique].Where(r => r.CanFollow(null, t.Seizes)))
            {
                yield return new FormMove(t, FormMove.Somebody, grab, reaction, After(form, closed, t, FormMove.Somebody, Tie.None, reaction, grab), reaction.Posture ?? Posture.Ready);
            }
        }
    }

    /// <summary>Some posture of one who is not tied lets the technique be sold so.</summary>
    private static bool OnFeet(Technique t, Reaction reaction) => Array.Exists(FreePostures, p => t.Needs.Contains(p) && reaction.CanFollow(p, seizes: false));

    /// <summary>Some attack that the technique answers at this level lets it be sold so; grabs that an escape or a setback lets close are apart.</summary>
    private bool Answered(Technique t, int technique, FormStart start, Reaction reaction) =>
        t.Family is not (Family.Escape or Family.Setback) && reaction.CanFollow(null, seizes: false) && Array.Exists(answered[technique], a => a.HeroStances.Contains(start.Stance));

    private FormStart? StartOf(HeroForm form, int gap, Technique t, int target, Attack? attack)
    {
        var closes = attack is { IsGrab: true } && t.Family == Family.Escape;
        var stance = closes ? StanceChoice.Pulled(form.Stance, attack!) : form.Stance;
        if (!t.Starts.Contains(stance))
        {
            var (to, time) = StanceChoice.For(book.Stances, stance, t.Starts, Skill.Trained, Side.Left);
            if (closes || form.Bound != Bound.Free || time > gap)
            {
                return null;
            }

            stance = to;
        }

        var longEnough = gap >= book.Settle.HandBack.Value;
        var (left, right) = (HandStates.Settled(form.Left, longEnough), HandStates.Settled(form.Right, longEnough));
        var (bound, boundBy) = (form.Bound, form.BoundBy);
        if (closes)
        {
            (left, right) = (HandStates.Seized(left, attack!.GripsLeft, target), HandStates.Seized(right, attack.GripsRight, target));
            (bound, boundBy) = bound == Bound.Free && attack.GripsBound is { } grips && grips != Bound.Free ? (grips, target) : (bound, boundBy);
        }

        if (Forgets(left, t.LeftEnd, target) || Forgets(right, t.RightEnd, target))
        {
            return null;
        }

        var works = (t.Bounds & (BoundSet)(1 << (int)bound)) != BoundSet.None && (bound == Bound.Free || target < 0 || boundBy == target || t.Supported);
        return works && HandFit.Accepts(left, t.LeftNeed, target) && HandFit.Accepts(right, t.RightNeed, target)
            ? new FormStart(stance, left, right, bound, boundBy, closes)
            : null;
    }

    /// <summary>The hand that holds somebody else, or is held by somebody else, would end otherwise.</summary>
    private static bool Forgets(Hand hand, HandEnd end, int target) => hand.Kind is HandKind.Holding or HandKind.Held && hand.Who != target && Effects.HandAfter(hand, end, target) != hand;

    private static HeroForm After(HeroForm form, FormStart start, Technique t, int target, Tie? was, Reaction? reaction, Attack? attack)
    {
        Span<Tie> ties = [form.First, form.Second, form.Third, Tie.None];
        var left = Effects.HandAfter(start.Left, t.LeftEnd, target);
        var right = Effects.HandAfter(start.Right, t.RightEnd, target);
        var bound = t.EndBound ?? start.Bound;
        var boundBy = t.EndBound is { } end ? (end == Bound.Free ? -1 : target) : start.BoundBy;
        if (target >= 0 && reaction is not null)
        {
            var now = reaction.Posture ?? was?.Posture ?? Posture.Ready;
            (left, right) = (Effects.Freed(left, target, now), Effects.Freed(right, target, now));
            if (boundBy == target && now != Posture.Gripping)
            {
                (bound, boundBy) = (Bound.Free, -1);
            }

            ties[target] = now == Posture.Gripping ? new Tie(now, attack is { IsGrab: true } grab ? grab.Line : was?.Grip ?? attack?.Line) : now.IsControlled() ? new Tie(now, null) : Tie.None;
        }

        return HeroForm.Of(t.EndStance ?? start.Stance, left, right, bound, boundBy, ties);
    }
}
