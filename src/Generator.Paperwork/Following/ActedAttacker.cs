using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Figures.Posing;
using Body = Generator.Figures.Bodies.Figure;

namespace Generator.Paperwork.Following;

/// <summary>An attacker in space: what the cards of their moves say, and between them as the course has it, on their feet, on the way, kneeling or lying.</summary>
/// <param name="course">Their way through the routine.</param>
/// <param name="moves">Those of their moves of which there is a card.</param>
/// <param name="cards">For their stature and the hero's.</param>
internal sealed class ActedAttacker(PerformerCourse course, IReadOnlyList<ActedMove> moves, Cards cards)
{
    /// <summary>So far in a half count is a stride; centimetres.</summary>
    private const double Stride = 8;

    /// <summary>Half counts that getting up takes at most.</summary>
    private const int Rises = 3;

    public IEnumerable<ActedKey> Keys(int to)
    {
        var taken = course.From;
        foreach (var move in moves)
        {
            foreach (var key in Between(taken, move.Begins))
            {
                yield return key;
            }

            if (move.Step.Attack is { IsGrab: false } attack && cards.Of(attack) is { Start.Attacker: { } ready })
            {
                yield return new ActedKey(move.Begins, Stage.Standing(ready, Stage.Of(course.PlaceAt(move.Begins)), move.Turned));
            }

            yield return new ActedKey(move.Contact, Laid(move, move.Card.Contact.Attacker!, move.Contact) ?? move.Placed(move.Card.Contact.Attacker!));
            var ends = course.Bodies.Where(b => b.From > move.Contact && b.From <= move.Ends + HalfCounts.PerCount).Select(b => (int)Math.Ceiling(b.From)).FirstOrDefault(move.Ends);
            var sold = move.Card.End.Attacker!;
            yield return new ActedKey(ends, Laid(move, sold, ends) ?? Stage.Standing(sold, move.On(Stage.Of(course.PlaceAt(ends))), move.Turned));
            taken = ends + 1;
            if (move.Onto is not null && course.BodyAt(ends) is null && ends + HalfCounts.PerCount <= to)
            {
                // Who is thrown onto something comes off it where the course has them.
                taken += HalfCounts.PerCount;
                yield return new ActedKey(taken - 1, Upright(cards.Of(course.FigureAt(taken - 1) == Figure.Kneeling ? Posture.Kneeling : Posture.Ready), taken - 1));
            }
        }

        foreach (var key in Between(taken, to))
        {
            yield return key;
        }
    }

    private Body? Laid(ActedMove move, Body figure, double time) =>
        course.BodyAt(time) is { } body && (time > move.Contact || course.BodyAt(move.Begins) is not null) ? Stage.Lying(figure, body).Moved(new Vec(0, time > move.Contact ? move.Onto?.Y ?? 0 : 0, 0)) : null;

    /// <summary>What the course says of every half count; whoever is held, reacts or lies stays as the last move left them.</summary>
    private IEnumerable<ActedKey> Between(int from, int until)
    {
        for (var time = from; time < until; time++)
        {
            if (course.BodyAt(time) is { } body)
            {
                if (time == from && time == course.From)
                {
                    yield return new ActedKey(time, Stage.Lying(cards.Of(Posture.OnBack), body));
                }

                continue;
            }

            if (time > from && course.BodyAt(time - 1) is not null && time - Rises >= from)
            {
                yield return new ActedKey(time - 1, Upright(cards.Of(Posture.Kneeling), time - 1));
            }

            switch (course.DoingAt(time))
            {
                case Doing.Held or Doing.Grips or Doing.Out or Doing.Reaction or Doing.Fall:
                    break;
                case var _ when course.FigureAt(time) == Figure.Kneeling:
                    yield return new ActedKey(time, Upright(cards.Of(Posture.Kneeling), time));
                    break;
                case var _ when course.PlaceAt(time - 0.5).To(course.PlaceAt(time + 0.5)) > Stride:
                    yield return new ActedKey(time, Upright(cards.Walking(time % 2 == 0 ? Side.Right : Side.Left), time));
                    break;
                default:
                    yield return new ActedKey(time, Upright(cards.Of(Posture.Ready), time));
                    break;
            }
        }
    }

    private Body Upright(Body figure, double time)
    {
        var at = Stage.Of(course.PlaceAt(time));
        return Stage.Standing(figure, at, Stage.Towards(at, course.Marks.Count == 0 ? default : Stage.Of(course.MarkAt(time))));
    }
}
