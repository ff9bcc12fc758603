using Generator.Domain;
using Generator.Solver.Tests.Constructing;

namespace Generator.Solver.Tests.Travelling;

/// <summary>Briefs in which the hero travels, and clean routines of them, each drafted once.</summary>
internal static class Fights
{
    public static readonly Brief TwoMarks = new()
    {
        Length = new Length(32, null, 4),
        Floor = new FloorPlan { MarkX = new(300), MarkY = new(400) },
        Marks = [new HeroMark("stove", new(300), new(400)), new HeroMark("sink", new(550), new(400))],
        Attackers = [new AttackerPart { Name = "Bruno" }, new AttackerPart { Name = "Wanda" }],
    };

    /// <summary>A way on from the sink, too long for one from the stove, and half a fight more.</summary>
    public static readonly Brief ThreeMarks = TwoMarks with
    {
        Length = new Length(44, null, 6),
        Floor = new FloorPlan { Width = new(1400), Depth = new(800), MarkX = new(300), MarkY = new(400) },
        Marks = [.. TwoMarks.Marks, new HeroMark("door", new(1150), new(400))],
    };

    private static readonly Lazy<IReadOnlyList<Routine>> Drafted = new(() => [.. Enumerable.Range(1, 2).SelectMany(s => (Routine?[])[Drafts.Rounds(TwoMarks, s, 3).Routine, Drafts.Rounds(ThreeMarks, s, 3).Routine]).OfType<Routine>()]);

    /// <summary>Four of them.</summary>
    public static IReadOnlyList<Routine> All
    {
        get
        {
            Assert.Equal(4, Drafted.Value.Count);
            return Drafted.Value;
        }
    }

    /// <summary>The marks to which a routine goes, in order.</summary>
    public static IEnumerable<int> Marks(Routine routine) => routine.Moves.Select(m => m.To).OfType<int>();
}
