using Generator.Rules;
using Generator.Rules.Connecting;
using Generator.Rules.Replaying;
using Generator.Solver.Constructing;
using Generator.Solver.Repertoires;

namespace Generator.Solver.Completing;

/// <summary>From which stances, hands and grips what a sketch says can still be done, and with which moves one comes there: "gets up" wants somebody on the floor before.</summary>
internal sealed class SketchForms
{
    private readonly FormChain chain;
    private readonly bool[] isTight;
    private readonly Dictionary<(HeroForm Form, int Next), IReadOnlySet<(int Technique, int Reaction)>?> leading = [];

    public SketchForms(Scene scene, Repertoire repertoire, SketchStep[] steps)
    {
        var graph = FormGraph.Of(scene.Book);
        chain = new FormChain(graph, [.. steps.Select(s => s.Move.IsGap ? null : s.Link(repertoire.Doable))]);
        isTight = [.. Enumerable.Range(0, steps.Length + 1).Select(chain.IsTight)];
    }

    /// <summary>The moves from one on can still be done.</summary>
    public bool MayGoOn(FightState state, int next) => !isTight[next] || chain.Leads(HeroForm.Of(state), next);

    /// <summary>The choice with the reactions after which the moves from one on can be done; null without any.</summary>
    public Choice? Leading(FightState state, Choice choice, int next)
    {
        if (!isTight[next])
        {
            return choice;
        }

        var key = (HeroForm.Of(state), next);
        if (!leading.TryGetValue(key, out var moves))
        {
            leading[key] = moves = chain.Leading(key.Item1, next);
        }

        if (moves is null || choice.Reactions.Length == 0)
        {
            return moves?.Contains((choice.Technique, -1)) == false ? null : choice;
        }

        int[] left = [.. choice.Reactions.Where(r => moves.Contains((choice.Technique, r)))];
        return left.Length == 0 ? null : left.Length == choice.Reactions.Length ? choice : choice with { Reactions = left };
    }

    /// <summary>Not every form will do before a move.</summary>
    public bool IsTight(int next) => isTight[next];
}
