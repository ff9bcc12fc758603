using Generator.Domain;
using Generator.Rules.Bodies;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.Following;

/// <summary>The hero's way through a routine: on the mark of the moment, turning, and from mark to mark.</summary>
internal static class HeroTrail
{
    public static PerformerCourse Of(PaperSource source, int from, int to)
    {
        var cells = new Cells(from, to, Doing.Between);
        var turns = new List<TurnFrame>();
        var degrees = source.Steps.Count > 0 ? new Bearing(source.Steps[0].Before.Facing).Degrees : 0;
        turns.Add(new TurnFrame(from, degrees));
        foreach (var step in source.Steps)
        {
            var until = Math.Max(step.Start, turns[^1].Time);
            turns.Add(new TurnFrame(Math.Clamp(step.Before.Time, turns[^1].Time, until), degrees));
            degrees += step.TurnMade * Bearing.DegreesPerHalfHour;
            turns.Add(new TurnFrame(until, degrees));
            degrees += (step.Technique?.Turn.HalfHours ?? 0) * Bearing.DegreesPerHalfHour;
            turns.Add(new TurnFrame(Math.Max(step.End, until), degrees));
            if (step.Technique is { } technique)
            {
                cells.Fill(step.Start, step.End, Of(technique), step.Index + 1);
            }

            cells.Pose(step.Start, FigureOf(step.Technique?.HeroFall is not (null or FallClass.None) ? step.After.Stance : step.StanceStart));
            cells.Pose(step.End, FigureOf(step.After.Stance));
        }

        IReadOnlyList<Keyframe> ways = source.Steps.Count > 0 && source.Steps[^1].After.HeroWay is { } way ? Trail.Of(from, way) : [new Keyframe(from, Place.Mark)];
        return new PerformerCourse
        {
            Attacker = -1,
            Name = source.Brief.Hero.Name,
            From = from,
            Doings = cells.Doings,
            Moves = cells.Moves,
            Figures = cells.Figures,
            Ways = ways,
            Bodies = Bodies(cells, from, turns, source.Brief.Hero.Height, source.Steps),
            Turns = [.. turns.DistinctBy(t => (t.Time, t.Degrees))],
            Contacts = [.. source.Steps.Where(s => s.Throws).Select(s => new Contact(s.End, s.Index + 1, true, s.Row.Attacker, true))],
        };
    }

    /// <summary>When the blow of a move sounds: the hero's as it lands or is answered, else the attack, else the end of the move.</summary>
    public static int SoundsAt(Step step) => step.Attack is null || step.Throws ? step.End : step.Contact;

    private static Doing Of(Technique technique) => technique.Family switch
    {
        Family.Defence => Doing.Defends,
        Family.Strike or Family.Kick => Doing.Hits,
        Family.Finish => Doing.Finishes,
        Family.Setback => Doing.Setback,
        Family.Pause => Doing.Pauses,
        _ => Doing.Grapples,
    };

    /// <summary>On the floor the hero's feet are at the mark, the head away from where they face.</summary>
    private static List<LyingBody> Bodies(Cells cells, int from, List<TurnFrame> turns, Centimetres height, IReadOnlyList<Step> steps)
    {
        var bodies = new List<LyingBody>();
        for (var i = 0; i < cells.Figures.Count; i++)
        {
            if (cells.Figures[i] != Figure.Lying)
            {
                continue;
            }

            var facing = turns.LastOrDefault(t => t.Time <= from + i, turns[0]).Degrees;
            var mark = steps.LastOrDefault(s => s.Travels >= 0 && s.End <= from + i) is { } last ? last.Scene.Marks[last.Travels] : Place.Mark;
            var head = mark + Place.At((facing / Bearing.DegreesPerHalfHour) + (Bearing.Circle / 2), height.Value - 50);
            if (bodies.Count > 0 && bodies[^1].To == from + i && bodies[^1].Head == head)
            {
                bodies[^1] = bodies[^1] with { To = from + i + 1 };
            }
            else
            {
                bodies.Add(new LyingBody(from + i, from + i + 1, mark, head));
            }
        }

        return bodies;
    }

    private static Figure FigureOf(Stance stance) => stance switch
    {
        Stance.KneelingLeft or Stance.KneelingRight => Figure.Kneeling,
        Stance.FloorBack or Stance.FloorFront => Figure.Lying,
        _ => Figure.Standing,
    };
}
