using Generator.Figures.Bodies;
using Generator.Figures.Posing;

namespace Generator.Paperwork.Following;

/// <summary>
/// A routine in space: the places and times of the course, the bodies of the cards. It is a blocking picture: bodies are blended evenly from one instant to the next, and a
/// hero on their feet stands as near at each contact as the card has it.
/// </summary>
/// <param name="From">First half count.</param>
/// <param name="To">Last half count.</param>
/// <param name="Parts">The hero, then the attackers in the order of the brief.</param>
/// <param name="Meetings">Where they meet, in order of time.</param>
/// <param name="Props">What is held, thrown or lies about.</param>
public sealed record Acted(int From, int To, IReadOnlyList<ActedPart> Parts, IReadOnlyList<Meeting> Meetings, IReadOnlyList<ActedProp> Props)
{
    /// <summary>Longer than this somebody holds still, then goes on; half counts.</summary>
    private const double Blends = 1;

    public static Acted Of(PaperSource source, Cards cards)
    {
        var course = Course.Of(source);
        var hero = Metres(source.Brief.Hero);
        var own = source.Brief.Attackers.Select(a => cards.Of(hero, Metres(a))).ToList();
        var moves = source.Steps.Where(s => s.HasTarget)
            .Select(s => ActedMove.Of(source.Scene, s, own[s.Row.Attacker], course.Performers[s.Row.Attacker + 1])).OfType<ActedMove>().ToList();
        List<ActedPart> parts = [.. course.Performers.Select(Part)];
        return new Acted(course.From, course.To, parts, [.. moves.SelectMany(m => m.Meetings).OrderBy(m => m.Time)], [.. ActedProp.Of(course, parts, moves)])
        {
            Gaps = moves.Where(m => m.Card.Contact.Gap is not null).ToDictionary(m => m.Step.Index, m => m.Card.Contact.Gap!.Value),
        };

        ActedPart Part(PerformerCourse performer) => performer.IsHero
            ? new ActedPart(performer.Name, -1, hero, Held(ActedHero.Of(source, course, moves, cards.Of(hero, hero)), course.To))
            : new ActedPart(
                performer.Name,
                performer.Attacker,
                own[performer.Attacker].Statures.Attacker,
                Held(new ActedAttacker(performer, [.. moves.Where(m => m.Step.Row.Attacker == performer.Attacker)], own[performer.Attacker]).Keys(course.To), course.To));
    }

    /// <summary>By the number of a move, from 0: how far its planned miss is off with these two performers; metres.</summary>
    public IReadOnlyDictionary<int, double> Gaps { get; init; } = new Dictionary<int, double>();

    /// <summary>What is seen of props at a moment, with everybody as the last key before it has them.</summary>
    public IEnumerable<HeldProp> PropsAt(double time)
    {
        foreach (var prop in Props)
        {
            if (prop.Stays.FirstOrDefault(s => s.Holds(time)) is not { } stay)
            {
                continue;
            }

            var way = stay.Ways.LastOrDefault(w => w.Time <= time, stay.Ways[0]).Way;
            if (stay.Lies is { } lies)
            {
                yield return new HeldProp(prop.Kind, lies, lies + way);
                continue;
            }

            var (key, (_, _, wrist, tip)) = (Parts[stay.Holder + 1].KeyAt(time), Skeleton.Arm(stay.Hand));
            yield return new HeldProp(prop.Kind, key.Body[tip], key.Body[tip] + (Rig.InSpace(key.Rotations, wrist) * way));
        }
    }

    /// <summary>In order of time, what is said later covering what was said before; whoever holds still does so until just before they stir, and no key says what its neighbours say.</summary>
    private static List<ActedKey> Held(IEnumerable<ActedKey> keys, int to)
    {
        var (said, all) = (new List<ActedKey>(), new List<ActedKey>());
        foreach (var key in keys)
        {
            said.RemoveAll(k => k.Time >= key.Time);
            said.Add(key);
        }

        foreach (var key in said)
        {
            if (all.Count > 0 && key.Time - all[^1].Time > Blends)
            {
                all.Add(all[^1] with { Time = key.Time - Blends });
            }

            all.Add(key);
        }

        all.Add(all[^1] with { Time = Math.Max(to, all[^1].Time + Blends) });
        return [.. all.Where((k, i) => i == 0 || i == all.Count - 1 || !Stage.IsSame(k.Body, all[i - 1].Body) || !Stage.IsSame(k.Body, all[i + 1].Body))];
    }

    private static double Metres(Domain.Performer performer) => performer.Height.Value / 100.0;
}
