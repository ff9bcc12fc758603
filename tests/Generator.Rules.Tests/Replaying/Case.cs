using Generator.Domain;
using Generator.Library;
using Generator.Rules.Replaying;

namespace Generator.Rules.Tests.Replaying;

/// <summary>One hand-worked case: a cast at marks, a few records, and the moves. Attackers 0, 1, 2 are Bruno, Wanda and Piet.</summary>
internal sealed class Case
{
    private static readonly string[] Names = ["Bruno", "Wanda", "Piet"];

    private readonly List<Technique> techniques = [CaseBook.Hit, CaseBook.Wait];
    private readonly List<Attack> attacks = [CaseBook.Blow, CaseBook.Seize];
    private readonly List<Reaction> reactions = [CaseBook.Reels, CaseBook.Caught, CaseBook.Grips, CaseBook.Shakes, CaseBook.Drops];
    private readonly List<AttackerPart> cast = [];
    private readonly List<Placement> placements = [];
    private HeroPart hero = new() { Name = "Ines", Arm = new Centimetres(100), Leg = new Centimetres(100), Skill = Skill.Stunt };
    private Safety safety = Safety.Default with { Margin = HalfCounts.Zero };
    private Tempo tempo = new(60);
    private IReadOnlyList<HeroMark> marks = [];
    private FloorPlan floor = new Brief { Attackers = [] }.Floor;

    public Case Hero(Func<HeroPart, HeroPart> change) => Do(() => hero = change(hero));

    public Case Tempo(int countsPerMinute) => Do(() => tempo = new Tempo(countsPerMinute));

    public Case On(FloorPlan plan) => Do(() => floor = plan);

    /// <summary>Marks at so many centimetres from the first towards 3 and 12; that lies 10 m from the corner of a floor of 20 by 20.</summary>
    public Case Marks(params (int X, int Y)[] places) => Do(() =>
    {
        marks = [.. places.Prepend((0, 0)).Select((p, i) => new HeroMark($"mark {i}", new Centimetres(1000 + p.Item1), new Centimetres(1000 + p.Item2)))];
        floor = new FloorPlan { Width = new(2000), Depth = new(2000), MarkX = new(1000), MarkY = new(1000) };
    });

    public Case Margin(int halfCounts) => Do(() => safety = safety with { Margin = new HalfCounts(halfCounts) });

    public Case Knows(params Technique[] more) => Do(() => techniques.AddRange(more));

    public Case Knows(params Attack[] more) => Do(() => attacks.AddRange(more));

    public Case Knows(params Reaction[] more) => Do(() => reactions.AddRange(more));

    /// <summary>Adds the next attacker at a clock bearing and a distance in centimetres.</summary>
    public Case At(string clock, int distance, int entrance = 0, Func<AttackerPart, AttackerPart>? change = null) => Do(() =>
    {
        Assert.True(Bearing.TryParse(clock, out var bearing));
        var part = new AttackerPart { Name = Names[cast.Count], Arm = new Centimetres(100), Leg = new Centimetres(100), Speed = 100, Skill = Skill.Stunt };
        cast.Add(change is null ? part : change(part));
        placements.Add(new Placement(bearing, new Centimetres(distance), new HalfCounts(entrance)));
    });

    /// <summary>A row: start in half counts from count 1, attacker, technique, reaction, attack.</summary>
    public static Move Row(int start, int? who, string? technique, string? reaction = null, string? attack = null, string? from = null, int linger = 0) => new()
    {
        Start = new HalfCounts(start),
        Attacker = who,
        Technique = technique,
        Reaction = reaction,
        Attack = attack,
        From = Bearing.TryParse(from, out var bearing) ? bearing : null,
        Linger = new HalfCounts(linger),
    };

    public Scene Scene()
    {
        var brief = new Brief { Hero = hero, Attackers = [.. cast], Tempo = tempo, Safety = safety, Floor = floor, Marks = marks };
        return new Scene(brief, new Book("case", CaseBook.Stances(), new Settle(), techniques, attacks, reactions));
    }

    /// <summary>Every step.</summary>
    public IReadOnlyList<Step> PlayAll(params Move[] moves)
    {
        var scene = Scene();
        return Replay.Of(scene, new Routine { Brief = scene.Brief, Placements = [.. placements], Moves = moves });
    }

    /// <summary>The last step.</summary>
    public Step Play(params Move[] moves) => PlayAll(moves)[^1];

    private Case Do(Action change)
    {
        change();
        return this;
    }
}
