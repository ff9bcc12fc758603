using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Engine;
using Generator.Solver.Filling;
using Generator.Solver.Rules;
using Generator.Solver.Tests.Constructing;

namespace Generator.Solver.Tests.Twin;

/// <summary>What the model says of a fight that was written down by hand.</summary>
internal static class Pinned
{
    private static readonly SearchSettings Settings = new() { Time = Drafts.Hang, Bare = true, Linear = false };

    /// <summary>Whether it is allowed.</summary>
    /// <param name="scene">The brief.</param>
    /// <param name="routine">The fight.</param>
    /// <param name="without">Rules that are not posted.</param>
    public static CpAnswer Solve(Scene scene, Routine routine, string[] without)
    {
        var techniques = routine.Moves.Select(m => m.Technique).ToHashSet(StringComparer.Ordinal);
        var model = new MoveModel(scene, Vocabulary.Of(scene, t => techniques.Contains(t.Id), keepUnfit: true, seconds: true), new MoveModelOptions
        {
            Rules = RuleModules.Without(without),
            Rows = routine.Moves.Count,
            FewestRows = routine.Moves.Count,
            Ends = true,
            Hurts = [.. routine.Moves.Select(m => RowHurt.Of(m, scene.Book))],
            Horizon = 200,
            Total = true,
            MostWalkRound = 6,
        });
        Pin.Placements(model, routine.Placements);
        Pin.Rows(model, [.. routine.Moves.Select(m => Row.Of(m, scene))]);
        using var session = model.Session();
        return session.Solve(Settings);
    }
}
