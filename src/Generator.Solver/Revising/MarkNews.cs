using Generator.Domain;
using Generator.Library;
using Generator.Rules;
using Generator.Rules.Bodies;
using Generator.Rules.Replaying;
using Generator.Solver.Reworking;

namespace Generator.Solver.Revising;

/// <summary>
/// What marks that have moved, come or gone make different in moves that stay: a routine is told from mark to mark, so nothing that is written in it changes when a mark
/// does, though people go elsewhere.
/// </summary>
/// <param name="Marks">Marks that are elsewhere on the floor.</param>
/// <param name="Ways">Ways that are longer, shorter or lead elsewhere, in the order of the new routine.</param>
public sealed record MarkNews(IReadOnlyList<MovedMark> Marks, IReadOnlyList<OtherWay> Ways)
{
    /// <summary>Everything is where it was.</summary>
    public static readonly MarkNews None = new([], []);

    public bool IsNothing => Marks.Count == 0 && Ways.Count == 0;

    /// <summary>How many ways of somebody are others: of an attacker by number, or −1 for the hero.</summary>
    public int WaysOf(int who) => Ways.Count(w => w.Who.Contains(who));

    /// <summary>Works it out for one change after the other.</summary>
    /// <param name="taught">The routine as taught, with the brief that it was made for.</param>
    /// <param name="brief">The new brief.</param>
    /// <param name="book">The library.</param>
    /// <param name="taken">Positions in the taught routine of the moves that were taken over.</param>
    internal static Func<Reworked, MarkNews> For(Routine taught, Brief brief, Book book, IReadOnlyList<int> taken)
    {
        var (before, now) = (Of(taught.Brief), Of(brief));

        // One mark on a floor of another size is where it was only by name: it mostly stands in the middle of both.
        var isOther = !taught.Brief.Travels && !brief.Travels && (taught.Brief.Floor.Width, taught.Brief.Floor.Depth) != (brief.Floor.Width, brief.Floor.Depth);
        if (isOther || before.SequenceEqual(now))
        {
            return _ => None;
        }

        var scene = new Scene(taught.Brief, book);
        var steps = Replay.Of(scene, taught);
        return reworked => Between(steps, Replay.Of(reworked.Scene, reworked.Routine), reworked.Change, taken, before, now);
    }

    private static MarkNews Between(IReadOnlyList<Step> old, IReadOnlyList<Step> steps, RoutineChange change, IReadOnlyList<int> taken, IReadOnlyList<HeroMark> before, IReadOnlyList<HeroMark> now)
    {
        var ways = change.Moves.Where(m => m.Kind <= ChangeKind.Shifted)
            .Select(m => Way(old[taken[m.Old]], steps[m.Now], taken[m.Old], m.Now))
            .OfType<OtherWay>().ToList();
        var moved = now.SelectMany((mark, i) => before
            .Where(b => b.IsCalled(mark.Name) && (b.X, b.Y) != (mark.X, mark.Y))
            .Select(b => new MovedMark(b, mark, [.. steps.Where(s => s.Before.Mark == i).Select(s => s.Index)])));
        return new MarkNews([.. moved], ways);
    }

    private static OtherWay? Way(Step old, Step step, int taught, int now)
    {
        var (row, attacker) = (step.Row, step.Row.Attacker);
        if (step.Travels >= 0 && old.Travels >= 0)
        {
            int[] who = attacker >= 0 && step.Technique!.Travel!.Follows ? [-1, attacker] : [-1];
            return Vector(old) == Vector(step) ? null : Other(who, Leads(old), Leads(step));
        }

        if (row.Attack < 0 || attacker < 0)
        {
            return null;
        }

        var (stood, stands) = (Stands(old), Stands(step));
        return stood == stands ? null : Other([attacker], stood, stands);

        OtherWay Other(IReadOnlyList<int> who, (int Bearing, int Distance) then, (int Bearing, int Distance) after) =>
            new(taught, now, who, (new Bearing(then.Bearing), new Centimetres(then.Distance)), (new Bearing(after.Bearing), new Centimetres(after.Distance)));
    }

    private static Place Vector(Step step) => step.Scene.Marks[step.Travels] - step.Mark;

    private static (int Bearing, int Distance) Leads(Step step) => (step.Scene.Marks.Heading(step.Before.Mark, step.Travels), step.Way);

    private static (int Bearing, int Distance) Stands(Step step)
    {
        var attacker = step.Before.Attackers[step.Row.Attacker];
        return (attacker.Bearing, attacker.Distance);
    }

    /// <summary>The marks of a brief; one mark has no name.</summary>
    private static IReadOnlyList<HeroMark> Of(Brief brief) => brief.Travels ? brief.Marks : [new HeroMark(string.Empty, brief.Floor.MarkX, brief.Floor.MarkY)];
}
