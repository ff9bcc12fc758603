using Generator.Domain;
using Generator.Rules;
using Generator.Solver.Constructing;
using Generator.Solver.Repertoires;

namespace Generator.Solver.Completing;

/// <summary>What the moves from one of a sketch on bring with them, whatever fills them.</summary>
internal sealed record SketchNeeds
{
    /// <summary>Fewest and most setbacks.</summary>
    public required int FewestSetbacks { get; init; }

    public required int MostSetbacks { get; init; }

    /// <summary>Fewest and most beats of the story.</summary>
    public required int FewestBeats { get; init; }

    public required int MostBeats { get; init; }

    /// <summary>For each attacker whether somebody says something of them.</summary>
    public required bool[] Wanted { get; init; }

    /// <summary>For each attacker how often they fall at least.</summary>
    public required int[] Falls { get; init; }

    /// <summary>For each attacker in how many moves they can go out.</summary>
    public required int[] Finishes { get; init; }

    /// <summary>Behind the last move.</summary>
    public static SketchNeeds None(int cast) => new()
    {
        FewestSetbacks = 0,
        MostSetbacks = 0,
        FewestBeats = 0,
        MostBeats = 0,
        Wanted = new bool[cast],
        Falls = new int[cast],
        Finishes = new int[cast],
    };

    /// <summary>With a place for further moves before.</summary>
    public SketchNeeds WithGap(int moves) => this with
    {
        MostSetbacks = MostSetbacks + moves,
        MostBeats = MostBeats + moves,
        Finishes = [.. Finishes.Select(f => f + moves)],
    };

    /// <summary>With one more move before.</summary>
    public SketchNeeds With(Scene scene, SketchStep step)
    {
        var (wanted, falls, finishes) = (Wanted.ToArray(), Falls.ToArray(), Finishes.ToArray());
        var (setback, other, beat, noBeat) = (false, false, false, false);
        void See(Choice choice)
        {
            var technique = scene.Book.Techniques[choice.Technique];
            (setback, other) = (setback || technique.Family == Family.Setback, other || technique.Family != Family.Setback);
            (beat, noBeat) = (beat || technique.IsStoryPause, noBeat || !technique.IsStoryPause);
        }

        var (both, travels) = (false, step.AllTravels(Giving.Nothing).ToList());
        for (var a = 0; a < scene.Cast; a++)
        {
            if (!step.Concerns(a, Giving.Nothing))
            {
                continue;
            }

            var choices = step.Menu(a, Giving.Nothing).All.Concat(travels.SelectMany(t => (Choice[])[.. t.Answers[a], .. t.Stalks[a]])).ToList();
            choices.ForEach(See);
            var reactions = choices.SelectMany(c => c.Reactions).Distinct().Select(r => scene.Book.Reactions[r]).ToList();
            var ends = reactions.Any(r => r.Posture == Posture.Out);
            finishes[a] += ends ? 1 : 0;
            both |= ends && choices.Any(c => scene.Book.Techniques[c.Technique].TakesTwo);
            if (step.Move.Attacker == a)
            {
                wanted[a] = true;
                falls[a] += reactions.Count > 0 && reactions.All(r => r.Fall != FallClass.None) ? 1 : 0;
            }
        }

        foreach (var choice in step.NoTargets(Giving.Nothing).Concat(travels.SelectMany(t => t.ByWill)))
        {
            See(choice);
        }

        // The attack may take hold first, which is a setback more.
        return this with
        {
            FewestSetbacks = FewestSetbacks + (setback && !other ? 1 : 0),
            MostSetbacks = MostSetbacks + (setback || step.TakesHoldFirst ? 1 : 0),
            FewestBeats = FewestBeats + (beat && !noBeat ? 1 : 0),
            MostBeats = MostBeats + (beat ? 1 : 0),
            Wanted = wanted,
            Falls = falls,
            Finishes = both ? [.. finishes.Select(f => f + 1)] : finishes,
        };
    }
}
