using Generator.Figures.Posing;

namespace Generator.Paperwork.Following;

/// <summary>The hero in space: from contact to contact, and on the mark between them.</summary>
internal static class ActedHero
{
    public static IEnumerable<ActedKey> Of(PaperSource source, Course course, IReadOnlyList<ActedMove> moves, Cards cards)
    {
        var first = source.Steps.Count > 0 ? source.Steps[0].StanceFrom : source.Brief.Hero.OpeningStance;
        yield return Stands(first, course.From);
        var met = double.NegativeInfinity;
        for (var i = 0; i < source.Steps.Count; i++)
        {
            var step = source.Steps[i];
            var next = i + 1 < source.Steps.Count ? source.Steps[i + 1].Start : course.To;
            if (moves.FirstOrDefault(m => m.Step == step) is not { } move)
            {
                yield return Stands(step.StanceStart, Math.Max(step.Start, met + 0.25));
                if (step.Technique is { } alone && cards.Of(alone)?.Contact.Hero is { } figure)
                {
                    yield return new ActedKey((step.Start + step.End) / 2.0, Stage.Standing(figure, default, Stage.Facing(course.Hero.FacingAt(step.End))));
                }

                yield return Stands(step.After.Stance, step.End);
                continue;
            }

            // A move may start at the very moment at which the one before meets.
            var starts = Math.Max(Math.Min(step.Start, move.Contact - 0.5), met + 0.25);
            if (starts < move.Contact)
            {
                yield return move.Card.ShowsStart ? new ActedKey(starts, move.Placed(move.Card.Start.Hero!)) : Stands(step.StanceStart, starts);
            }

            met = move.Contact;
            yield return new ActedKey(move.Contact, move.Placed(move.Card.Contact.Hero!));
            if (next > move.Contact + 1)
            {
                yield return new ActedKey(move.Contact + 0.5, move.Placed(move.Card.Contact.Hero!));
                yield return Stands(step.After.Stance, Math.Min(next, move.Ends + 1));
            }
        }

        ActedKey Stands(Domain.Stance stance, double time) => new(time, Stage.Standing(cards.Of(stance), default, Stage.Facing(course.Hero.FacingAt((int)time))));
    }
}
