using Generator.Domain;
using Generator.Library;

namespace Generator.Testing;

/// <summary>Briefs that make sense, each from its seed; every field takes its default and other values.</summary>
public static class RandomBrief
{
    private static readonly string[] FirstNames = ["Bruno", "Wanda", "Piet", "Ama", "O'Dell", "Jürgen \"Jo\"", "Le, Mai", "Zoë; twin", "小林", "Ned 2"];

    /// <summary>The same seed and library give the same brief.</summary>
    public static Brief Of(int seed, Book book)
    {
        var chance = new Chance(seed);
        var floor = Floor(chance);
        var names = FirstNames.OrderBy(_ => chance.Whole(0, 1000)).Take(chance.Whole(1, 8)).ToList();
        var counts = chance.Maybe(() => chance.Whole(40, 2000));
        var ending = chance.Some(names, 60);
        var acts = Acts(seed);
        return Played(seed, counts ?? 200, Liking(seed, book, new Brief
        {
            Title = chance.One(["Night ferry, car deck", "Yard", "Line \\ \"two\"", "Café №3"]),
            Tempo = new Tempo(chance.Whole(40, 200)),
            Length = new Length(counts, counts is null || chance.Percent(30) ? chance.Whole(1, 500) : null, chance.Whole(0, 20)),
            Floor = floor,
            Hero = (HeroPart)Dress(chance, new HeroPart { Name = chance.One(["Ines", "Hero"]), Lead = chance.Maybe(() => chance.Any<Side>()) }, book),
            Attackers = [.. names.Select(n => Attacker(chance, n, names.Count, floor, book))],
            Cameras = chance.List(0, 3, i => new Camera("cam " + (char)('A' + i), Clock(chance), Cm(chance, 75, 20000), Cm(chance, 0, 2000))),
            Moments = chance.List(0, 3, _ => Moment(chance, names, book)),
            Arc = chance.Any<Arc>(),
            Acts = acts,
            Judged = acts is null ? null : new Chance(seed ^ 0x1D1D).Some(Enum.GetValues<FightRule>(), 50),
            Setbacks = acts is { Length: > 0 } ? null : chance.Maybe(() => chance.Whole(0, 50)),
            Pauses = chance.Maybe(() => chance.Whole(0, 50)),
            Pace = new Pace(Span(chance), Span(chance), Span(chance)),
            Safety = new Safety(Span(chance), chance.Whole(1, 50), chance.Whole(0, 1000), chance.Whole(0, 5000)),
            Ending = chance.Percent(50) ? new Ending(ending, ending.Count > 0 && chance.Percent(50) ? chance.One(ending) : null) : null,
        }));
    }

    /// <summary>Music, by chance of its own as well.</summary>
    private static Brief Played(int seed, int counts, Brief brief)
    {
        var chance = new Chance(seed ^ 0x55AA55);
        if (chance.Percent(60))
        {
            return brief;
        }

        var passages = chance.Percent(40) ? [] : new[] { 1, counts / 3, counts / 2 }
            .Select((c, i) => new Passage(HalfCounts.FromCounts(c - 1), new Tempo(chance.Whole(40, 200)), new HalfCounts(i == 0 ? 0 : chance.Whole(0, 4)))).ToArray();
        var tempo = passages.Length == 0 ? brief.Tempo : passages.MaxBy(p => p.Tempo.CountsPerMinute)!.Tempo;
        var accents = chance.List(0, 5, _ => new HalfCounts(chance.Whole(0, 2 * counts))).Distinct().Order().ToList();
        var holds = Enumerable.Range(0, chance.Whole(0, 2)).Select(i => new MusicHold(HalfCounts.FromCounts((i * counts / 2) + chance.Whole(0, 9)), i == 0 ? chance.Whole(1, 600) / 10m : null, i == 0 ? null : chance.Whole(1, 64))).ToList();
        var music = new Music { Passages = passages, Holds = holds, Accents = accents };
        return brief with { Tempo = tempo, Music = music.IsEmpty ? null : music };
    }

    /// <summary>Manners and wishes, by chance of their own as well.</summary>
    private static Brief Liking(int seed, Book book, Brief brief)
    {
        var chance = new Chance(seed ^ 0x33CC33);
        if (book.Manners.Count == 0 || chance.Percent(40))
        {
            return brief;
        }

        string? Manner() => chance.Percent(50) ? chance.One(book.Manners).Id : null;
        string[] words = ["kick", "grab", chance.One(book.Techniques).BaseId, chance.One(book.Techniques).BaseId, chance.One(book.Attacks).BaseId];
        var avoid = chance.Some([.. words.Distinct(StringComparer.Ordinal)], 30);
        return brief with
        {
            Hero = brief.Hero with { Manner = Manner() },
            Attackers = [.. brief.Attackers.Select(a => a with { Manner = Manner() })],
            Signature = chance.Percent(50) ? words[^1] : null,
            Avoid = avoid,
            Favour = chance.Some([.. words.Distinct(StringComparer.Ordinal).Except(avoid, StringComparer.Ordinal)], 30),
        };
    }

    /// <summary>By chance of their own, so that a brief with acts is otherwise the one that it would be without.</summary>
    private static Act[]? Acts(int seed)
    {
        var chance = new Chance(~seed);
        var first = chance.Whole(1, 99);
        return chance.Percent(60) ? seed % 2 == 0 ? [] : null : [new Act(first, chance.Any<HeroStanding>()), new Act(100 - first, chance.Any<HeroStanding>(), chance.Maybe(() => chance.Whole(0, 5))) is var last && last.MostSetbacks > 0 && chance.Percent(50) ? last with { Hurts = new Hurt(chance.One(BodyPartWords.All), new HalfCounts(chance.Whole(0, 120))) } : last];
    }

    internal static Bearing Clock(Chance chance) => new(chance.Whole(0, 23));

    private static Centimetres Cm(Chance chance, int least, int most) => new(chance.Whole(least, most));

    private static HalfCounts Span(Chance chance) => new(chance.Whole(0, 120));

    private static FloorPlan Floor(Chance chance)
    {
        if (chance.Percent(20))
        {
            return new FloorPlan();
        }

        var (width, depth) = (Cm(chance, 300, 10000), Cm(chance, 300, 10000));
        var (markX, markY) = (Cm(chance, 200, width.Value), Cm(chance, 200, depth.Value));
        return new FloorPlan
        {
            Width = width,
            Depth = depth,
            MarkX = markX,
            MarkY = markY,
            Surface = chance.Any<Surface>(),
            Obstacles = chance.List(0, 2, i => new Obstacle("bollard " + (char)('a' + i), Cm(chance, 0, 100), Cm(chance, 0, 100), Cm(chance, 1, 99), Cm(chance, 1, 900))),
            Mats = [.. Enumerable.Range(0, width.Value % 3).Select(i => new Mat("mat " + (char)('a' + i), new Centimetres(width.Value % 100), new Centimetres(depth.Value % 100), new Centimetres(5 + (markX.Value % 190)), new Centimetres(5 + (markY.Value % 190))))],
            WaysIn = chance.List(0, 2, i => new WayIn("door " + (char)('a' + i), Cm(chance, 200, width.Value), new Centimetres(depth.Value + chance.Whole(0, 300)))),
        };
    }

    private static Performer Dress(Chance chance, Performer performer, Book book) => performer with
    {
        Height = Cm(chance, 140, 210),
        Arm = chance.Maybe(() => Cm(chance, 40, 100)),
        Leg = chance.Maybe(() => Cm(chance, 50, 130)),
        Skill = chance.Any<Skill>(),
        Limits = chance.Some(Limit.All, 10),
        Wardrobe = chance.Some([.. book.Settle.Wardrobe.Keys], 20),
        FallsPerRun = chance.Maybe(() => chance.Whole(0, 20)),
    };

    private static AttackerPart Attacker(Chance chance, string name, int cast, FloorPlan floor, Book book)
    {
        var bearing = chance.Maybe(() => Clock(chance));
        var distance = chance.Maybe(() => Cm(chance, 100, 2000));
        if (bearing is { } b && distance is { } d && !IsOn(floor, b, d))
        {
            distance = null;
        }

        return (AttackerPart)Dress(
            chance,
            new AttackerPart
            {
                Name = name,
                Bearing = bearing,
                Distance = distance,
                Speed = chance.Whole(50, 700),
                SharePercent = chance.Maybe(() => chance.Whole(0, 100 / cast)),
                Entrance = chance.Maybe(() => new HalfCounts(chance.Whole(0, 70))),
            },
            book);
    }

    /// <summary>With a centimetre to spare, so that rounding does not matter.</summary>
    private static bool IsOn(FloorPlan floor, Bearing bearing, Centimetres distance)
    {
        var (sin, cos) = Math.SinCos(bearing.Degrees * Math.PI / 180);
        var (x, y) = (floor.MarkX.Value + (distance.Value * sin), floor.MarkY.Value + (distance.Value * cos));
        return x >= 1 && y >= 1 && x <= floor.Width.Value - 1 && y <= floor.Depth.Value - 1;
    }

    private static Moment Moment(Chance chance, IReadOnlyList<string> names, Book book)
    {
        var earliest = chance.Maybe(() => new HalfCounts(chance.Whole(0, 30)));
        var latest = chance.Maybe(() => new HalfCounts(chance.Whole(30, 60)));
        return new Moment(chance.List(1, 3, _ => MomentMove(chance, names, book)), earliest, latest);
    }

    private static MomentMove MomentMove(Chance chance, IReadOnlyList<string> names, Book book)
    {
        var technique = chance.One(book.Techniques);
        var attack = chance.One(book.Attacks);
        return new MomentMove(
            chance.Percent(50) ? technique.Id : technique.BaseId,
            chance.Percent(50) ? chance.One(names) : null,
            chance.Percent(50) ? null : technique.Family is Family.Strike ? Domain.MomentMove.NoAttack : chance.Percent(50) ? attack.Id : attack.BaseId,
            technique.Reactions.Count > 0 && chance.Percent(50) ? chance.One(technique.Reactions) : null);
    }
}
