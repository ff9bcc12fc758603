using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>The routine lasts the counts, or has the moves, asked for. With counts given, the number of moves may be one off.</summary>
public sealed class Length : Rule
{
    public override string Id => "length";

    public override string Title => "The routine lasts the counts, or has the moves, asked for.";

    public override Severity Worst => Severity.Broken;

    public override Whose Looks => Whose.Both;

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally) => null;

    public override void Close(Scene scene, object? memory, FightState end, Tally tally)
    {
        if (scene.Brief.Length is not { } length)
        {
            return;
        }

        if (length.Counts is { } counts && Math.Abs(end.Time - (HalfCounts.PerCount * counts)) > HalfCounts.PerCount * length.Tolerance && tally.Count(Severity.Broken))
        {
            tally.Tell(Told(scene, end, end.Time / 2m, counts, length.Tolerance, "counts", $"The routine lasts {Words.Counts(end.Time)}"));
        }

        if (length.Moves is { } moves && Math.Abs(end.Moves - moves) > MovesTolerance(length) && tally.Count(Severity.Broken))
        {
            tally.Tell(Told(scene, end, end.Moves, moves, MovesTolerance(length), "moves", $"The routine has {end.Moves} moves"));
        }
    }

    /// <summary>By how many moves the routine may differ from the number asked for.</summary>
    public static int MovesTolerance(Domain.Length length) => length.Counts is null ? length.Tolerance : 1;

    private Finding Told(Scene scene, FightState end, decimal measured, int asked, int tolerance, string unit, string start) =>
        AtEnd(end, Severity.Broken, scene.Brief.Hero.Name, $"{start}; the brief asks for {asked}, give or take {tolerance}.") with
        {
            Measured = measured,
            Allowed = measured > asked ? asked + tolerance : asked - tolerance,
            Unit = unit,
            Advice = measured > asked ? "Take moves out, or ask for a longer routine." : "Add moves, or ask for a shorter routine.",
        };
}
