using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Engine;
using Generator.Solver.Filling;
using Generator.Solver.Staging;
using Google.OrTools.Sat;
using RuleModules = Generator.Solver.Rules.RuleModules;

namespace Generator.Solver.Completing;

/// <summary>
/// Proves that no routine gives up less of a sketch than one that was found, or comes upon one that does: all rows as one CP-SAT model, in which what is said and must not give at that price is fixed, so that its tables hold
/// little else. What it cannot look at in whole it says nothing of: more rows than a few, gaps, counts, opening distances that nobody said, several marks.
/// </summary>
internal sealed class LeastProof
{
    /// <summary>Most rows that are looked at, and most of them that nobody wrote.</summary>
    private const int MostRows = 24, MostMore = 4;

    /// <summary>Most ways in which rows fill the moves that are asked one by one.</summary>
    private const int MostShapes = 40;

    /// <summary>Uses of techniques in all rows together that are few: the model is made in some hundredths of a second.</summary>
    private const int FewChoices = 400;

    /// <summary>As wide as it gets round the mark, in half hours.</summary>
    private const int AllRound = 12;

    /// <summary>No "impossible" on the word of one configuration alone.</summary>
    private static readonly SearchSettings[] Configurations =
    [
        new() { Seed = 1, Linear = false, Time = TimeSpan.FromHours(1) },
        new() { Seed = 2, Linear = false, Bare = true, Time = TimeSpan.FromHours(1) },
    ];

    /// <summary>Rules that only charge points forbid nothing.</summary>
    private static readonly IReadOnlyList<RuleModule> Firm = [.. RuleModules.All.Where(m => RuleBook.All[RuleBook.IndexOf(m.Id)].Worst >= Severity.Broken)];

    private readonly Sketch sketch;
    private readonly Scene scene, timeless;
    private readonly IReadOnlyList<SketchStep> steps;
    private readonly Func<Routine, LeastFound?> read;
    private readonly IReadOnlyList<HalfCounts?> entrances;

    /// <param name="sketch">What is said.</param>
    /// <param name="steps">Its moves.</param>
    /// <param name="scene">The scene of the search, with the opening places that are said.</param>
    /// <param name="read">A routine as a filling of the sketch; null where something forbids it.</param>
    public LeastProof(Sketch sketch, IReadOnlyList<SketchStep> steps, Scene scene, Func<Routine, LeastFound?> read)
    {
        (this.sketch, this.steps, this.read) = (sketch, steps, read);
        entrances = [.. scene.Brief.Attackers.Select(a => a.Entrance)];
        this.scene = scene;
        timeless = new Scene(Timeless(scene.Brief with { Length = sketch.Brief.Length }), scene.Book);
    }

    /// <summary>The question can be put so that an answer holds for every routine.</summary>
    public bool CanAsk => !sketch.Brief.Travels && sketch.Moves.All(m => !m.IsGap) && scene.Brief.Attackers.All(a => a.Distance is not null);

    /// <summary>Whether no routine of the brief costs less than so much, and else, where one was come upon, that.</summary>
    /// <param name="price">Of a routine that is known.</param>
    /// <param name="stop">Ends it with neither.</param>
    public LeastAnswer Below(long price, CancellationToken stop)
    {
        if (Rows(price) is not var (fewest, most))
        {
            return LeastAnswer.Unknown;
        }

        var shapes = Shapes(price, fewest, most);
        return Configurations.Select(c => Ask(price, fewest, most, shapes, c, null, stop)).FirstOrDefault(a => !a.IsLeast) ?? LeastAnswer.Least;
    }

    /// <summary>A routine that costs less, where the question is small; null where none was come upon.</summary>
    /// <param name="price">Of a routine that is known; more than any costs where none is.</param>
    /// <param name="effort">What it may take, in the solver's own unit, and takes.</param>
    public LeastFound? Less(long price, ProofEffort effort) =>
        CanAsk && Rows(price) is var (fewest, most) && most * Vocabulary.Of(scene, seconds: true).Uses.Count <= FewChoices
            ? Ask(price, fewest, most, Shapes(price, fewest, most), Configurations[0], effort, CancellationToken.None).Less : null;

    private LeastAnswer Ask(long price, int fewest, int most, LeastShape?[] shapes, SearchSettings settings, ProofEffort? effort, CancellationToken stop)
    {
        var isLeast = true;
        foreach (var shape in shapes)
        {
            var answer = stop.IsCancellationRequested || effort?.IsSpent == true ? LeastAnswer.Unknown : Ask(price, fewest, most, shape, settings, effort, stop);
            if (stop.IsCancellationRequested || answer.Less is not null)
            {
                return answer with { IsLeast = false };
            }

            isLeast &= answer.IsLeast;
        }

        return isLeast ? LeastAnswer.Least : LeastAnswer.Unknown;
    }

    /// <summary>
    /// The model lets nobody set off before count 1. A fight in which somebody does is the same as one that begins so much later, with all that is fixed: entrances and counts that are said, see <see cref="LeastModel"/>. What else the brief fixes is left out, which only allows more.
    /// </summary>
    private static Brief Timeless(Brief brief) => brief with
    {
        Length = brief.Length is { Counts: not null } length ? length.Moves is { } moves ? new Length(null, moves, Generator.Rules.Rules.Length.MovesTolerance(length)) : null : brief.Length,
        Attackers = [.. brief.Attackers.Select(a => a.Entrance is { Value: > 0 } ? a with { Entrance = null } : a)],
        Moments = [.. brief.Moments.Select(m => m with { Earliest = null, Latest = null })],
    };

    /// <summary>How many rows a cheaper routine can have; null where that is too many to look at.</summary>
    private (int Fewest, int Most)? Rows(long price)
    {
        var said = steps.Count;
        var opened = steps.Count(s => LeastModel.MayOpen(scene, s));
        var asked = sketch.Brief.Length is { Moves: { } moves } length ? (Moves: moves, Tolerance: Generator.Rules.Rules.Length.MovesTolerance(length)) : (Moves: MostRows, Tolerance: MostRows);
        var most = Math.Min(said + MostAdded(price) + opened, asked.Moves + asked.Tolerance);
        var fewest = Math.Max(steps.Any(s => LeastModel.MayGo(s, price)) ? 1 : said, asked.Moves - asked.Tolerance);
        return most <= Math.Min(MostRows, said + MostMore) ? (fewest, most) : null;
    }

    private static int MostAdded(long price) => (int)Math.Min((price - 1) / SketchPart.Added.Price(), MostRows);

    /// <summary>Where nothing may be left out and the ways in which rows fill the moves are few, each of them is a question of its own, in which most is known of each row; else all are one.</summary>
    private LeastShape?[] Shapes(long price, int fewest, int most)
    {
        int[] holds = [.. Enumerable.Range(0, steps.Count).Where(i => LeastModel.MayOpen(scene, steps[i]))];
        var few = steps.Any(s => LeastModel.MayGo(s, price)) ? null : LeastShape.All(steps.Count, holds, fewest, most, MostAdded(price), MostShapes);
        return few is null ? new LeastShape?[1] : [.. few];
    }

    /// <summary>First without what brief and lead-in fix, so that a no holds for every routine; where that allows something which is no routine of the brief, with it.</summary>
    private LeastAnswer Ask(long price, int fewest, int most, LeastShape? shape, SearchSettings settings, ProofEffort? effort, CancellationToken stop)
    {
        if (most < fewest)
        {
            return LeastAnswer.Least;
        }

        var (answer, less) = Solve(timeless, cp => cp.Int(0, timeless.Settle.LeadInMost.Value, "before"), price, fewest, most, shape, settings, effort, stop);
        less = answer is CpAnswer.Infeasible or CpAnswer.Unknown || less is not null ? less : Solve(scene, cp => cp.Const(0), price, fewest, most, shape, settings, effort, stop).Less;
        return new LeastAnswer(answer == CpAnswer.Infeasible, less);
    }

    private (CpAnswer Answer, LeastFound? Less) Solve(Scene asked, Func<Cp, IntVar> before, long price, int fewest, int most, LeastShape? shape, SearchSettings settings, ProofEffort? effort, CancellationToken stop)
    {
        var bounds = new StagingBounds(asked);
        var words = shape is null ? null : new LeastWords(asked, steps, shape, price);
        var vocabulary = Vocabulary.Of(asked, words is null ? null : words.MayDo, seconds: true);
        var rows = shape?.Rows.Count ?? most;
        var model = new MoveModel(asked, vocabulary, new MoveModelOptions
        {
            Rules = Firm,
            Rows = rows,
            FewestRows = shape is null ? fewest : rows,
            Ends = true,
            Targets = words?.Targets,
            Words = words?.Of(vocabulary),
            MostWalkRound = AllRound,
            LeavesHurtsOut = true,
            Horizon = ((rows + 1) * bounds.LongestMove) + ModelBounds.LongestWalk(asked),
        });
        var ahead = before(model.Cp);
        for (var a = 0; a < entrances.Count; a++)
        {
            if (entrances[a] is { Value: > 0 } entrance)
            {
                model.Cp.Model.Add(model.Entrances[a] == ahead + entrance.Value);
            }
        }

        new LeastModel(model, steps, price, shape, ahead).Post();
        using var session = model.Session();
        var answer = session.Solve(settings with { Work = effort?.Left }, null, stop);
        effort?.Add(session.Work);
        return (answer, session.HasSolution && KnowsAll ? Read(model, session, price) : null);
    }

    /// <summary>The model knows nothing of hurt parts: its yes holds only where there are none.</summary>
    private bool KnowsAll => sketch.Moves.All(m => m.Hurts is null) && sketch.Brief.Acts?.Any(a => a.Hurts is not null) != true;

    /// <summary>The answer as a routine that costs less: its times are the model's but for what somebody may set off before count 1. Null where none of those is one that nothing forbids.</summary>
    private LeastFound? Read(MoveModel model, CpSession session, long price)
    {
        var (rows, placements) = (RowReader.Rows(model, session), RowReader.Placements(model, session));
        return Enumerable.Range(0, scene.Settle.LeadInMost.Value + 1)
            .Select(sooner => read(new Routine
            {
                Brief = scene.Brief,
                LibraryVersion = scene.Book.Version,
                Placements = [.. placements.Select(p => p with { Entrance = new HalfCounts(Math.Max(0, p.Entrance.Value - sooner)) })],
                Moves = [.. rows.Select(r => (r with { Start = r.Start - sooner }).ToMove(scene))],
            }))
            .Where(f => f?.Whole.Price < price)
            .MinBy(f => f!.Whole.Price);
    }
}
