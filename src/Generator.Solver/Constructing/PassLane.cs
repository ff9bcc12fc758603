namespace Generator.Solver.Constructing;

/// <summary>
/// One lane of the constructive pass. Until there is a routine it draws beams from the opening; then it mends the routine in hand, and one of the
/// lanes also begins again now and then, from before its first point or afresh. It works in turns of equal effort, between which it learns what the other lane has found.
/// </summary>
internal sealed class PassLane(Ground ground, int seed, int lane)
{
    /// <summary>Moves tried in a turn.</summary>
    private const int Turn = 16_000;

    /// <summary>Nodes kept in a layer of time (<see cref="Aims.Width"/>), by beam.</summary>
    private static readonly int[] Widths = [6, 10, 16, 8, 24];

    /// <summary>Of the effort that goes into bettering a routine the part, in percent, that mends it: the first lane does nothing else.</summary>
    private readonly int mendingShare = lane == 0 ? 100 : 80;

    /// <summary>Every so many beams one begins afresh although there is a routine to better.</summary>
    private const int AfreshEvery = 4;

    /// <summary>Moves before the first point from which a beam begins again at most.</summary>
    private const int Back = 12;

    private readonly Mending mending = new(ground, new Dice(Dice.SeedOf(seed, lane, -1)));
    private Finish? mine;
    private Beam? beam;
    private int beams;
    private long drawn;
    private long mended;

    /// <summary>One turn: the lane's routine after it, null while there is none.</summary>
    /// <param name="best">The best routine of all lanes.</param>
    /// <param name="found">Told of every better routine that a beam finds, as soon as it is there.</param>
    /// <param name="stop">Ends the turn early.</param>
    public Finish? Take(Finish? best, Action<Finish> found, CancellationToken stop)
    {
        if (best is not null && (mine is null || best.Toll < mine.Toll))
        {
            mine = best;
            beam?.Want(best.Toll);
        }

        var effort = new Effort(Turn);
        while (!effort.IsSpent && !stop.IsCancellationRequested && (mine is null || mine.Points > ground.Least))
        {
            if (beam is not null)
            {
                Draw(beam, effort, found, stop);
            }
            else if (mine is null || IsFarOff(mine) || mended * (100 - mendingShare) > drawn * mendingShare)
            {
                beam = Next();
                effort.Add(1);
            }
            else
            {
                Mend(mine, effort, stop);
            }
        }

        return mine;
    }

    /// <summary>More points than moves: what is wrong is wrong throughout, and mending move by move takes longer than another beginning does, a narrow one as the sooner done. The first lane mends all the same.</summary>
    private bool IsFarOff(Finish routine) => lane > 0 && routine.Points > routine.Node.Depth;

    private void Draw(Beam running, Effort effort, Action<Finish> found, CancellationToken stop)
    {
        var before = effort.Spent;
        beam = running.GoOn(effort, Told, stop) ? null : running;
        drawn += mine is null ? 0 : effort.Spent - before;

        void Told(Finish finish)
        {
            mine = finish;
            found(finish);
        }
    }

    private void Mend(Finish routine, Effort effort, CancellationToken stop)
    {
        var before = effort.Spent;
        mine = mending.GoOn(routine, effort, stop);
        mended += effort.Spent - before;
    }

    /// <summary>A new beam: afresh from an opening, or from before the first point of the routine in hand; null when nobody can be placed.</summary>
    private Beam? Next()
    {
        var chance = Dice.SeedOf(seed, lane, beams);
        var dice = new Dice(chance);
        var isFarOff = mine is not null && IsFarOff(mine);
        var width = ground.Aims.Width(isFarOff ? Widths[0] : Widths[(beams + lane) % Widths.Length]);
        var noise = Beam.Noise(dice);
        var routine = ++beams % AfreshEvery == 0 || isFarOff ? null : mine;
        var wishes = routine is null ? Wishes.Drawn(ground.Repertoire, new Dice(chance ^ ground.Mark)) : null;
        var roots = routine is not null ? [Cut(routine, dice)] : OpeningPlaces.Choose(ground, dice) is { } placements ? ground.Openings(placements) : null;
        if (roots is null)
        {
            return null;
        }

        var next = new Beam(ground, dice, width, noise, mine?.Points ?? int.MaxValue, null, wishes);
        next.Begin(roots);
        return next;
    }

    /// <summary>A node of the routine some moves before its first point, or anywhere when the points are of the whole.</summary>
    private Node Cut(Finish routine, Dice dice)
    {
        var path = routine.Node.Path();
        var first = CostlyMoves.Costing(path, ground.Needed(routine), 0);
        return path[first > 0 ? first - 1 - dice.Next(Math.Min(Back, first)) : dice.Next(path.Count - 1)];
    }
}
