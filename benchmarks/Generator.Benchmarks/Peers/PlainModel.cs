using Generator.Benchmarks.Stored;
using Generator.Domain;
using Generator.Library;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver;
using Generator.Solver.Filling;
using Generator.Solver.Staging;
using Google.OrTools.Sat;
using RuleModules = Generator.Solver.Rules.RuleModules;

namespace Generator.Benchmarks.Peers;

/// <summary>
/// The plain formulation of a brief: one model over the whole length, in it one table a row of all uses of techniques and everything that
/// depends on which it is. All rules, the same points; save that nobody sets off before count 1, which the first move of a draft may ask of its attacker.
/// The number of rows lies within two of the family's size, or within the brief's limits.
/// </summary>
internal sealed class PlainModel
{
    private PlainModel(Scene scene, MoveModel model)
    {
        Scene = scene;
        Model = model;
    }

    public Scene Scene { get; }

    public MoveModel Model { get; }

    public static PlainModel Of(Brief brief, Book book, int moves) => Of(brief, book, moves, brief.Length is { Counts: null } length ? length.Tolerance : 2);

    /// <summary>The same with so many rows more or fewer at most.</summary>
    public static PlainModel Of(Brief brief, Book book, int moves, int around)
    {
        var scene = new Scene(DraftBrief.Complete(brief, book), book);
        var model = new MoveModel(scene, Vocabulary.Of(scene, seconds: true), new MoveModelOptions
        {
            Rules = RuleModules.All,
            Rows = moves + around,
            FewestRows = moves - around,
            Ends = true,
            Horizon = StagingBounds.Horizon(scene.Brief),
            MostWalkRound = 11,
            InOneTable = true,
        });
        model.Cp.Model.Minimize(model.Points);
        return new PlainModel(scene, model);
    }

    /// <summary>The routine that the values say, and what the audit says to it.</summary>
    public (Routine Routine, Verdict Verdict) Read(Func<IntVar, long> value)
    {
        var routine = new Routine
        {
            Brief = Scene.Brief,
            LibraryVersion = Scene.Book.Version,
            Placements = RowReader.Placements(Model, value),
            Moves = [.. RowReader.Rows(Model, value).Select(r => r.ToMove(Scene))],
        };
        return (routine, Audit.Of(Scene, routine));
    }
}
