using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Paperwork.Text;
using Generator.Rules;
using Generator.Solver.Completing;

namespace Generator.Cli.Changes;

/// <summary>One thing of a sketch that gave: what was said, what it became, and what spoke against it.</summary>
/// <param name="Line">Line of the sketch.</param>
/// <param name="Move">Number of the move in the sketch, from 1.</param>
/// <param name="Cell">What gave, as a word: attack, technique …</param>
/// <param name="Was">As it was written; empty for a move that was put in, and where nothing was.</param>
/// <param name="Is">What it became; empty where it was left out.</param>
/// <param name="Why">What the audit says of it put back; null where it has nothing against it.</param>
internal sealed record GaveText(int Line, int Move, string Cell, string Was, string Is, Finding? Why)
{
    /// <summary>All that gave, in the order of the sketch.</summary>
    public static IReadOnlyList<GaveText> All(Completed completed, Scene scene) => [.. completed.Gave.Select(g => Of(completed, g, scene))];

    private static GaveText Of(Completed completed, Departure gave, Scene scene)
    {
        var moves = completed.Sketch.Moves;
        var said = moves[Math.Min(gave.Move, moves.Count - 1)];
        var now = gave.Row < 0 ? null : completed.Routine.Moves[gave.Row];
        return new GaveText(said.Line, Number(moves, Math.Min(gave.Move, moves.Count - 1)), Word(gave), Before(said, gave, scene), now is null ? string.Empty : After(scene, now, gave), WhyGave.Of(completed, gave, scene));
    }

    /// <summary>Gaps have no number.</summary>
    public static int Number(IReadOnlyList<SketchMove> moves, int index) => moves.Take(index + 1).Count(m => !m.IsGap);

    private static string Word(Departure gave) => gave switch
    {
        { Row: < 0 } => "move",
        { Part: SketchPart.Added } => "put in",
        { Part: SketchPart.Wish } => "wish",
        _ => gave.Part.ToString().ToLowerInvariant(),
    };

    private static string Before(SketchMove said, Departure gave, Scene scene) => gave.Part switch
    {
        SketchPart.Added => string.Empty,
        SketchPart.Attack => said.Attack?.Text ?? string.Empty,
        SketchPart.Reaction => said.Reaction?.Text ?? string.Empty,
        SketchPart.Count => said.Count is { } c ? c.First == c.Last ? c.First.ToCountText() : $"{c.First.ToCountText()} to {c.Last.ToCountText()}" : string.Empty,
        SketchPart.Place => said.From?.ToClockText() ?? string.Empty,
        SketchPart.Attacker => said.Attacker is { } a ? scene.Brief.Attackers[a].Name : string.Empty,
        _ => MoveText.Led(said.Technique?.Text ?? (said.To is null ? said.Attack?.Text : null), said.To, scene),
    };

    private static string After(Scene scene, Move now, Departure gave) => gave.Part switch
    {
        SketchPart.Added => MoveText.Of(scene, now),
        SketchPart.Attack => now.Attack is { } attack ? scene.Book.Attack(attack).Name : "a follow-up without an attack",
        SketchPart.Reaction => now.Reaction is { } reaction ? scene.Book.Reaction(reaction).Name : string.Empty,
        SketchPart.Count => now.Start.ToCountText(),
        SketchPart.Place => now.From?.ToClockText() ?? "where they are",
        SketchPart.Attacker => MoveText.Who(scene, now),
        _ => MoveText.Led(now.Technique is { } technique ? scene.Book.Technique(technique).Name : null, now.To, scene),
    };
}
