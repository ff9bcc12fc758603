using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Library;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Solver.Constructing;
using Generator.Solver.Refuting;

namespace Generator.Solver.Completing;

/// <summary>
/// Fills a sketch so that the audit finds nothing unsafe or broken in it and the least of what was said gives: first with nothing given up, then
/// with something round the moves at which that stuck, then with less round what gave.
/// </summary>
public sealed class Complete
{
    private static readonly int[] Widths = [12, 24, 48, 96];

    /// <summary>Moves before something that gave from which it is tried with less, and behind it.</summary>
    private const int FarBefore = 6, FarBehind = 3;

    /// <summary>Moves tried in the first strict attempt for each move of the sketch (with less it hardly comes to the end), in one for a first answer, in the one before it that gives up one thing at a time and in the first like that for a better one, in the first of the other kind for a better one and in one from before something that gave.</summary>
    private const long StrictWork = 8_000, FirstWork = 2_000_000, SoonWork = 50_000, LeastWork = 200_000, BetterWork = 200_000, LessWork = 80_000;

    /// <summary>What an attempt costs before it tries anything.</summary>
    private const long SetUpWork = 1_000;

    private const int MostDoublings = 6;

    /// <summary>Moves tried for which questions to the solver, at the end, may take one unit of its work.</summary>
    private const double WorkPerProof = 20_000;

    /// <summary>More than any filling costs.</summary>
    private const long Dear = 1L << 60;

    /// <summary>Attempts in which something gives that a first answer may take, however little work is wanted: one thing at a time, then whatever is near.</summary>
    private const int FirstTurns = 2;

    /// <summary>Beginnings taken at once by the first attempt in which something gives, and of how many attempts at better answers one begins at the opening.</summary>
    private const int Quick = 4, Kinds = 4;

    private readonly Sketch sketch;
    private readonly Scene scene;
    private readonly Scene given;
    private readonly Ground ground;
    private readonly SketchStep[] steps;
    private readonly SketchForms forms;
    private readonly CancellationToken stop;
    private Completed? best;
    private Beginning? whole;
    private SketchSearch? farthest;
    private long strictWork;
    private long givingWork;
    private int strictTurns;
    private int givingTurns;

    internal Complete(Sketch sketch, Book book, CancellationToken stop)
    {
        (this.sketch, this.stop) = (sketch, stop);
        (scene, given) = (new Scene(Searched(sketch), book), new Scene(sketch.Brief, book));
        ground = new Ground(scene, [.. Enumerable.Repeat(true, scene.Cast)]);
        steps = [.. sketch.Moves.Select(m => new SketchStep(scene, ground.Repertoire, m))];
        forms = new SketchForms(scene, ground.Repertoire, steps);
    }

    /// <summary>The best filling that was found; null when there is none.</summary>
    /// <param name="sketch">What is said and what is open.</param>
    /// <param name="book">The library.</param>
    /// <param name="options">Seed and time.</param>
    /// <param name="better">Told of every better filling.</param>
    /// <param name="stop">Ends the search; the best so far is returned.</param>
    public static Completed? Of(Sketch sketch, Book book, CompleteOptions options, Action<Completed>? better = null, CancellationToken stop = default)
    {
        using var ends = CancellationTokenSource.CreateLinkedTokenSource(stop);
        ends.CancelAfter(options.Time);
        var complete = new Complete(sketch, book, ends.Token) { Better = better, GivesFirst = options.GivesFirst };
        using var proving = new Proving(complete.Proof, ends.Token);
        var completed = complete.Run(options.Seed, () => !ends.IsCancellationRequested && !proving.IsLeast(complete.best?.Price), () => proving.Less(complete.Below));
        return completed is null ? null : completed with { IsLeast = proving.IsLeast(completed.Price) };
    }

    /// <summary>The best filling that so much work finds, the same on every machine; null when there is none.</summary>
    /// <param name="sketch">What is said and what is open.</param>
    /// <param name="book">The library.</param>
    /// <param name="work">Moves tried at most, about, once there is a first answer.</param>
    /// <param name="enough">Ends sooner with a filling of this price or less.</param>
    public static Completed? Soon(Sketch sketch, Book book, long work, long enough = 0)
    {
        var complete = new Complete(sketch, book, CancellationToken.None);
        _ = complete.Run(new CompleteOptions().Seed, () => complete.best is null && complete.givingTurns < FirstTurns || (complete.strictWork + complete.givingWork < work && complete.Below > enough), () => null);
        var (proof, effort) = (complete.Proof, new ProofEffort(work / WorkPerProof));
        while (complete.Below > enough && !effort.IsSpent && proof.Less(Math.Min(complete.Below, Dear), effort) is { } less)
        {
            complete.Take((less.Whole, less.Finish));
        }

        return complete.best;
    }

    /// <summary>What speaks against any filling before one is searched for, such as an opening place that is off the floor, in words; empty where nothing does.</summary>
    public static IReadOnlyList<string> Clash(Sketch sketch, Book book) => Refutations.Plainly(new Scene(Searched(sketch), book))?.Reasons ?? [];

    /// <summary>Moves that the best attempt in which nothing gives has filled.</summary>
    internal int Farthest => farthest?.Deepest ?? 0;

    internal LeastProof Proof => new(sketch, steps, scene, Read);

    private Action<Completed>? Better { get; init; }

    private bool GivesFirst { get; init; }

    private long Below => best?.Price ?? long.MaxValue;

    /// <param name="seed">Of its chance.</param>
    /// <param name="goesOn">Asked before every turn.</param>
    /// <param name="handed">A filling that was come upon elsewhere; null for none.</param>
    private Completed? Run(int seed, Func<bool> goesOn, Func<LeastFound?> handed)
    {
        for (var turn = 0; goesOn() && best?.Price is not 0; turn++)
        {
            if (handed() is { } less)
            {
                Take((less.Whole, less.Finish));
            }
            else
            {
                Turn(new Dice(Dice.SeedOf(seed, 0, turn)));
            }
        }

        return best;
    }

    /// <summary>Half of the work goes into fillings in which nothing gives, half into a first answer and then into better ones.</summary>
    private void Turn(Dice dice)
    {
        if ((GivesFirst ? strictTurns < givingTurns / FirstTurns : strictWork <= givingWork) && Array.TrueForAll(steps, s => s.MustGive == Giving.Nothing))
        {
            strictWork += SetUpWork + Strictly(strictTurns, dice, (StrictWork * steps.Length) << Math.Min(strictTurns++ / 2, MostDoublings));
        }
        else
        {
            givingWork += SetUpWork + GiveWay(givingTurns++, dice);
        }
    }

    /// <summary>An attempt in which nothing gives, the longer the later; returns the moves tried. Every other one goes on from some moves before the place to which the best of them came: most of a long sketch may stand there.</summary>
    internal long Strictly(int turn, Dice dice, long work)
    {
        var effort = new Effort(work);

        // The chain of forms is worked out for a trained hero, so now and then it is left aside.
        var search = Search(dice, WidthOf(turn), effort, leavesForms: turn % 4 == 3);
        if (turn % 2 == 1 && farthest is { } known)
        {
            search.Inherit(known, Math.Max(0, known.Deepest - dice.Next(FarBefore + 1)));
        }

        Take(search.Run(Roots(dice, gives: false), Below, int.MaxValue, gives: false));
        farthest = farthest is null || search.Deepest >= farthest.Deepest ? search : farthest;
        return effort.Spent;
    }

    /// <summary>An attempt in which something gives: at any answer soon, then at one in which less does; returns the moves tried.</summary>
    private long GiveWay(int turn, Dice dice)
    {
        // Whatever is near gives first where some answer is wanted soon: culprits one by one take long to find.
        var (again, kind) = (turn / Kinds, (turn + (GivesFirst ? 1 : 0)) % Kinds);
        var effort = new Effort(kind switch
        {
            0 or 2 => (best is null ? SoonWork : LeastWork) << Math.Min(again, MostDoublings),
            _ when best is null => FirstWork << Math.Min(turn, MostDoublings),
            1 => BetterWork << Math.Min(again, MostDoublings),
            _ => LessWork,
        });
        Take((best, kind) switch
        {
            (_, 0 or 2) => new Culprits(e => Search(dice, WidthOf(again), e, leavesForms: kind == 0, doubts: true), () => Roots(dice, gives: true), steps, again).Find(Below, effort),
            (null, _) => GiveNear(patience: 0),
            (_, 1) => GiveNear(patience: 1 + (again % 3)),
            _ => Lessen(dice, WidthOf(turn), effort),
        });
        return effort.Spent;

        // From the opening; near where it sticks something gives.
        (Beginning, Finish)? GiveNear(int patience) =>
            Search(dice, Quick << Math.Min(3, again), effort, patience: patience).Run(Roots(dice, gives: true), Below, 2, gives: true);
    }

    private static int WidthOf(int turn) => Widths[Math.Min(turn / 2, Widths.Length - 1)];

    internal SketchSearch Search(Dice dice, int width, Effort effort, bool leavesForms = false, int patience = 0, bool doubts = false) =>
        new(ground, steps, leavesForms ? null : forms, dice, width, effort, stop) { Patience = patience, Doubts = doubts };

    /// <summary>Goes on from a few moves before something that gave, where only less may give.</summary>
    private (Beginning, Finish)? Lessen(Dice dice, int width, Effort effort)
    {
        var gave = best!.Gave;
        var dearest = gave.Where(g => g.Price == gave.Max(d => d.Price)).ToList();
        var less = dice.Percent(60) ? dearest[dice.Next(dearest.Count)] : gave[dice.Next(gave.Count)];
        var from = Math.Max(0, less.Move - dice.Next(FarBefore + 1));
        var search = Search(dice, width, effort);
        foreach (var other in gave.Where(g => g.Move >= from && g != less))
        {
            search.MayGive[other.Move] |= other.Row < 0 ? Giving.LeftOut : Giving.Only(other.Part);
        }

        for (var i = from; i <= Math.Min(steps.Length, less.Move + dice.Next(FarBehind + 1)); i++)
        {
            search.MayGive[i] |= Giving.Only(less.Part) - 1;
        }

        var path = whole!.Path();
        var roots = from == 0 ? Roots(dice, gives: true) : [path.First(b => b.Next == from)];
        return search.Run(roots, best.Price, 4, gives: false);
    }

    /// <summary>The brief as the search takes it: as long as what is written and what was left room for, and nobody has to go out.</summary>
    private static Brief Searched(Sketch sketch)
    {
        var said = sketch.Moves.Count(m => !m.IsGap);
        var room = sketch.Moves.Sum(m => m.Open);
        var brief = sketch.Brief;
        return brief with
        {
            Length = brief.Length ?? new Length(null, Math.Clamp(said + (room / 2), 1, 500), 4 + (said / 2) + room),
            Ending = brief.Ending ?? new Ending([], null),
            Attackers = [.. brief.Attackers.Select((a, i) => sketch.Placements[i] is { } place
                ? a with { Bearing = place.Bearing, Distance = place.Distance, Entrance = place.Entrance > HalfCounts.Zero ? place.Entrance : a.Entrance } : a)],
        };
    }

    internal List<Beginning> Roots(Dice dice, bool gives)
    {
        var first = sketch.Moves.FirstOrDefault(m => !m.IsGap);
        var roots = new List<Beginning>();
        for (var i = 0; i < 3 && (i == 0 || sketch.Placements.Any(p => p is null)); i++)
        {
            if (OpeningPlaces.Choose(ground, dice) is { } placements)
            {
                roots.AddRange(Openings(placements, first, gives).Select(n => new Beginning(null, n, 0)));
            }
        }

        return roots;
    }

    private IEnumerable<Node> Openings(IReadOnlyList<Placement> placements, SketchMove? first, bool gives)
    {
        var any = gives || sketch.Moves[0].IsGap || first?.Attacker is null;
        if (first?.Count is null || gives)
        {
            foreach (var root in ground.Openings(placements).Where(r => any || r.First == first!.Attacker))
            {
                yield return root;
            }
        }

        if (first?.Count is not { } count)
        {
            yield break;
        }

        for (var who = -1; who < scene.Cast; who++)
        {
            for (var start = count.First.Value; (any || who == first.Attacker) && start <= Math.Min(count.Last.Value, count.First.Value + 4); start++)
            {
                yield return ground.Opening(placements, who, start);
            }
        }
    }

    private void Take((Beginning Whole, Finish Finish)? found)
    {
        if (found is { } better && better.Whole.Price < Below)
        {
            (whole, best) = (better.Whole, Told(better));
            Better?.Invoke(best);
        }
    }

    /// <summary>A whole routine as a filling; null where the brief or a rule forbids it.</summary>
    private LeastFound? Read(Routine routine) =>
        RoutinePath.Of(ground, routine) is var path && path.Count == routine.Moves.Count + 1 && path[^1] is var last && last.Score.Close(scene, last.State) is { Forbidden: 0 } score && new Laying(scene, steps).Over(path) is { } whole
            ? new LeastFound(whole, new Finish(last, [], score.Points, score.Points)) : null;

    /// <summary>Audited with the brief as it was given.</summary>
    private Completed Told((Beginning Whole, Finish Finish) found)
    {
        var routine = Draftsman.RoutineOf(scene, found.Finish) with { Brief = sketch.Brief };
        var verdict = Audit.Of(given, routine);
        return verdict.IsClean ? Departures.Of(sketch, steps, found.Whole, routine, verdict)
            : throw new DisagreementException($"A completed sketch is not clean: {verdict.Grave[0].Message}");
    }
}
