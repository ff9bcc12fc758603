using Generator.Domain;
using Generator.Library;
using Generator.Rules;
using Generator.Rules.Replaying;

namespace Generator.Solver.Tests.Twin;

/// <summary>Two attackers within reach and a block of half a count: a second attack can land half a count after the first.</summary>
internal sealed class QuickWorld
{
    private static readonly StanceSet Standing = StanceSet.Of(Stance.LeftLead, Stance.RightLead, Stance.Square, Stance.Low);

    /// <param name="second">Who throws the second attack: 0 the same attacker, 1 the other.</param>
    public QuickWorld(int second)
    {
        var tiny = new TinyWorld(1);
        var line = new AttackLine(LineKind.HighRound, LineSide.Left);
        var block = new Technique
        {
            Id = "block",
            BaseId = "block",
            Name = "block",
            Family = Family.Defence,
            Starts = Standing,
            Window = Window.Anywhere,
            Band = new Band(Limb.Arm, 0, 9, default, default, false),
            Length = new HalfCounts(1),
            FewestSeconds = 0.2m,
            Answers = LineSet.Of([line]),
            Reactions = ["stopped"],
            Weight = 1,
        };
        var swing = tiny.Book.Attacks[0] with { From = Window.Anywhere, Line = line, FewestSeconds = 0.2m, Length = new HalfCounts(2) };
        var stopped = new Reaction { Id = "stopped", Name = "stopped", Posture = Posture.OffBalance, OpenSeconds = 0, ReadySeconds = 0, NoviceReadySeconds = 0 };
        var brief = new Brief
        {
            Length = new Length(null, 2, 0),
            Attackers =
            [
                new AttackerPart { Name = "Ash", Bearing = new Bearing(0), Distance = new Centimetres(90), Entrance = HalfCounts.Zero },
                new AttackerPart { Name = "Birch", Bearing = new Bearing(12), Distance = new Centimetres(90), Entrance = HalfCounts.Zero },
            ],
        };
        Scene = new Scene(brief, new Book("quick", tiny.Book.Stances, new Settle(), [block], [swing], [stopped]));
        Placements = [.. brief.Attackers.Select(a => new Placement(a.Bearing!.Value, a.Distance!.Value, a.Entrance!.Value))];
        Rows = [new Row(0, 0, -1, Cue.Voice, 0, 0, 0, 0), new Row(1, second, -1, Cue.Voice, 0, 0, 0, 0)];
    }

    public Scene Scene { get; }

    public IReadOnlyList<Placement> Placements { get; }

    public IReadOnlyList<Row> Rows { get; }
}
