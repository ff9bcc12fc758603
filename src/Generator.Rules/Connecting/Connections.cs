using Generator.Domain;
using Generator.Library;
using Generator.Rules.Replaying;

namespace Generator.Rules.Connecting;

/// <summary>
/// Whether the library hangs together. Of every form that a move can end in: a free hero answers every attack that suits the level, from every
/// side that it comes from, within two half counts; a hero who holds somebody or is gripped has, within two half counts, a move that leads,
/// at once or over others, to being free. And in every free form each posture of an attacker has a follow-up. Setbacks are no answers.
/// For a trained hero; distances are left to the rules.
/// </summary>
public sealed class Connections
{
    /// <summary>The longest gap that counts as flowing on.</summary>
    public const int Gap = 2;

    /// <summary>Half hours to either side of the facing within which a follow-up finds its target.</summary>
    private const int Ahead = 6;

    private static readonly Posture[] OpenPostures =
    [
        Posture.Folded, Posture.HeadBack, Posture.Turned, Posture.OffBalance, Posture.Kneeling, Posture.FaceDown, Posture.OnBack,
    ];

    private static readonly int[] Gaps = [Gap, 0];

    private readonly FormSteps steps;
    private readonly Book book;
    private readonly FormWalk walk;
    private readonly int[][] answers;
    private readonly Dictionary<AttackLine, int> gripBearings = [];

    private Connections(Book book)
    {
        this.book = book;
        steps = new FormSteps(book);
        walk = FormWalk.Of(book);
        answers = [.. book.Attacks.Select(a => Enumerable.Range(0, book.Techniques.Count).Where(t => book.Techniques[t].Family != Family.Setback && book.Techniques[t].Answers.Contains(a.Line)).ToArray())];
        foreach (var attack in book.Attacks)
        {
            foreach (var seizes in book.Techniques.Where(t => t.Answers.Contains(attack.Line) && t.EndBound is { } end && end != Bound.Free))
            {
                gripBearings[attack.Line] = gripBearings.GetValueOrDefault(attack.Line) | Bearings.After(seizes.Window, attack.From, seizes.Turn);
            }
        }

        var free = walk.Forms.Where(f => f.IsFree).ToList();
        var tied = walk.Forms.Where(f => !f.IsFree).ToList();
        FreeForms = free.Count;
        TiedForms = tied.Count;
        DeadEnds = [.. free.SelectMany(Unanswered), .. free.SelectMany(NoFollowUp), .. Stuck(tied)];
        AnsweredTied = tied.Count(f => !Unanswered(f).Any());
    }

    /// <summary>Forms in which nobody is tied to the hero.</summary>
    public int FreeForms { get; }

    /// <summary>Forms in which the hero holds somebody or is gripped.</summary>
    public int TiedForms { get; }

    /// <summary>Of those, the ones in which every attack that suits is answered without letting go or escaping first.</summary>
    public int AnsweredTied { get; }

    /// <summary>Situations without a way on; none in a library that hangs together.</summary>
    public IReadOnlyList<DeadEnd> DeadEnds { get; }

    /// <summary>Checks a library.</summary>
    public static Connections Of(Book book) => new(book);

    /// <summary>Attacks that nothing answers from a form.</summary>
    private IEnumerable<DeadEnd> Unanswered(HeroForm form)
    {
        for (var k = 0; k < book.Attacks.Count; k++)
        {
            var attack = book.Attacks[k];
            if (attack.IsWalkIn || !attack.HeroStances.Contains(form.Stance))
            {
                continue;
            }

            var open = Bearings.In(attack.From);
            foreach (var t in answers[k])
            {
                open &= open == 0 ? 0 : ~Covered(form, book.Techniques[t], attack);
            }

            if (open != 0)
            {
                yield return new DeadEnd(form, $"an answer to {attack.Id} from {Bearings.Words(open)}", walk.WaysTo(form));
            }
        }
    }

    private int Covered(HeroForm form, Technique technique, Attack attack)
    {
        var covered = 0;
        foreach (var gap in Gaps)
        {
            if (steps.Answers(form, gap, technique, attack) is not null)
            {
                covered |= Bearings.Within(technique.Window, TurnIn(form, gap), attack.From);
            }
        }

        return covered;
    }

    private int TurnIn(HeroForm form, int gap)
    {
        if (form.Bound != Bound.Free)
        {
            return 0;
        }

        var held = form.Left.Kind == HandKind.Held || form.Right.Kind == HandKind.Held;
        return held ? Math.Min(book.Settle.TurnFor(gap), book.Settle.TurnWhileHeld) : book.Settle.TurnFor(gap);
    }

    private IEnumerable<DeadEnd> NoFollowUp(HeroForm form)
    {
        var ahead = Bearings.In(new Window(-Ahead, Ahead));
        foreach (var posture in OpenPostures)
        {
            var open = ahead;
            for (var t = 0; t < book.Techniques.Count && open != 0; t++)
            {
                foreach (var gap in Gaps)
                {
                    open &= steps.OnPosture(form, gap, t, posture).Any() ? ~Bearings.Within(book.Techniques[t].Window, TurnIn(form, gap), Window.Anywhere) : open;
                }
            }

            if (open != 0)
            {
                yield return new DeadEnd(form, $"a follow-up on somebody {Words.Of(posture)} at {Bearings.Words(open)}", walk.WaysTo(form));
            }
        }
    }

    /// <summary>Tied forms from which no chain of moves on the tied ones, each within two half counts, leads to a form with fewer ties.</summary>
    private IEnumerable<DeadEnd> Stuck(List<HeroForm> tied)
    {
        var loose = new HashSet<HeroForm>();
        var ways = tied.ToDictionary(f => f, f => WaysOut(f).ToList());
        for (var grown = true; grown;)
        {
            grown = false;
            foreach (var form in tied.Where(f => !loose.Contains(f)))
            {
                var covered = new int[HeroForm.MostTies];
                foreach (var (move, from) in ways[form])
                {
                    covered[move.Target] |= move.After.Ties < form.Ties || loose.Contains(move.After) ? from : 0;
                }

                if (Enumerable.Range(0, HeroForm.MostTies).Any(who => form[who].IsThere && (Places(form, who) & ~covered[who]) == 0))
                {
                    grown |= loose.Add(form);
                }
            }
        }

        return tied.Where(f => !loose.Contains(f)).Select(f => new DeadEnd(f, "a way to let go or to escape", walk.WaysTo(f)));
    }

    /// <summary>Moves on the tied ones within two half counts, and the bearings of the tied one from which they work.</summary>
    private IEnumerable<(FormMove Move, int From)> WaysOut(HeroForm form)
    {
        foreach (var gap in Gaps)
        {
            for (var who = 0; who < HeroForm.MostTies; who++)
            {
                for (var t = 0; t < book.Techniques.Count && form[who].IsThere; t++)
                {
                    foreach (var move in steps.OnTied(form, gap, t, who))
                    {
                        yield return (move, Bearings.Within(move.Technique.Window, TurnIn(form, gap), Window.Anywhere));
                    }
                }
            }
        }
    }

    /// <summary>Where a tied one can stand: a gripper who binds the body where that begins, anybody else all round.</summary>
    private int Places(HeroForm form, int who) =>
        form.BoundBy == who && form[who].Grip is { } grip && gripBearings.TryGetValue(grip, out var places) ? places : Bearings.All;
}
