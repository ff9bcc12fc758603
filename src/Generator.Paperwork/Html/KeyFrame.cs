using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.Html;

/// <summary>One of the moves that say what the fight is, as the first screen shows it.</summary>
/// <param name="Move">The move.</param>
/// <param name="Contact">The two at its contact.</param>
/// <param name="End">How it is sold; null where that shows nothing more.</param>
public sealed record KeyFrame(MoveView Move, FigureView Contact, FigureView? End)
{
    /// <summary>So many are shown at most: two rows on a wide screen.</summary>
    public const int Most = 8;

    private const int Unseen = 4;

    /// <summary>The move of most moment in each of eight stretches with as many moves, rather one that looks like none before it.</summary>
    public static IReadOnlyList<KeyFrame> Of(PaperSource source, IReadOnlyList<MoveView> moves, FigureSet figures)
    {
        var outs = source.Shape.Outs.Select(o => o.Move).ToHashSet();
        var (seen, frames) = (new HashSet<string>(StringComparer.Ordinal), new List<KeyFrame>());
        var stretches = Math.Min(Most, moves.Count);
        for (var stretch = 0; stretch < stretches; stretch++)
        {
            var some = source.Steps.Skip(stretch * moves.Count / stretches).Take(((stretch + 1) * moves.Count / stretches) - (stretch * moves.Count / stretches));
            if (some.Where(s => moves[s.Index].Picture is not null).MaxBy(s => Moment(s) + (seen.Contains(Looks(s)) ? 0 : Unseen)) is { } step)
            {
                seen.Add(Looks(step));
                frames.Add(new KeyFrame(moves[step.Index], moves[step.Index].Picture!, figures.End(step)));
            }
        }

        return frames;

        int Moment(Step step) => (step.Technique?.Weight ?? 1) + (outs.Contains(step.Index + 1) ? 6 : 0) + (step.Technique?.Family switch
        {
            Family.Setback => 5,
            Family.Throw => 3,
            Family.Lock => 1,
            _ => 0,
        }) + (step.Falls.Any() ? 2 : 0);
    }

    private static string Looks(Step step) => step.Technique?.BaseId ?? step.Attack?.BaseId ?? string.Empty;
}
