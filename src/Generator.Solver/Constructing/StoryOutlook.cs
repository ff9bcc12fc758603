using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Memories;
using Generator.Rules.Replaying;

namespace Generator.Solver.Constructing;

/// <summary>
/// What the rules of a good fight that judge at the end will charge for, as it looks by now: the later, the more certain. In points.
/// </summary>
internal sealed class StoryOutlook(Aims aims)
{
    private static readonly int RhythmAt = RuleBook.IndexOf("rhythm");
    private static readonly int ThinningAt = RuleBook.IndexOf("thinning");
    private static readonly int MannerAt = RuleBook.IndexOf("manner");
    private static readonly int EchoAt = RuleBook.IndexOf("echo");

    /// <summary>Moves that make a part, and exchanges of five moves.</summary>
    private const int Part = 4;

    /// <summary>Flurries wanted.</summary>
    private const int Flurries = 2;

    private readonly Scene scene = aims.Scene;

    public bool LacksLong(Node node) => scene.Judges(FightRule.Rhythm) && !Rhythm(node).IsLong;

    public double Of(Node node, double progress)
    {
        var share = Math.Clamp(progress / aims.Total, 0, 1);
        var owed = 0.0;
        if (scene.Judges(FightRule.Rhythm))
        {
            var rhythm = Rhythm(node);
            owed += (rhythm.IsLong ? 0 : 2 * share * share) + Math.Max(0, (Flurries * share) - rhythm.Flurries - (rhythm.Beats > 2 ? 0.7 : 0));
        }

        if (scene.Judges(FightRule.Thinning))
        {
            owed += Parts(node, (ThinningMemory)node.Score.MemoryOf(ThinningAt)!, share);
        }

        if (scene.Likings.Favours > 0 && scene.Judges(FightRule.Manner))
        {
            owed += Generator.Rules.Rules.Manner.Missing * share * (scene.Likings.Favours - System.Numerics.BitOperations.PopCount(((MannerMemory)node.Score.MemoryOf(MannerAt)!).Seen));
        }

        if (Combining.SoFar(scene, node) is { } combined)
        {
            owed += Combinations(combined, share);
        }

        return owed + (scene.Judges(FightRule.Echo) ? Echo((EchoMemory)node.Score.MemoryOf(EchoAt)!, share) : 0) + Answers(node);
    }

    /// <summary>What got through and has not been beaten yet, and times that a signature lacks.</summary>
    private double Echo(EchoMemory so, double share) =>
        (so.Hit.Count > 0 && !so.IsBeaten ? 0.5 + (1.5 * share) : 0) + (scene.Brief.Signature is null ? 0 : 2 * share * Math.Max(0, 2 - so.Returns));

    /// <summary>Attackers who should throw a combination and have thrown none: a part of it where they are in the middle of one.</summary>
    private double Combinations(MannerMemory so, double share)
    {
        var owed = 0.0;
        for (var a = 0; a < scene.Cast; a++)
        {
            if (scene.Combinations.Wants(a) && (so.Combined & (1 << a)) == 0)
            {
                owed += (Generator.Rules.Rules.Manner.Single * share) + (so.Run.Attacker == a ? 0 : Begun);
            }
        }

        return owed;
    }

    /// <summary>What a combination that has begun is worth by itself.</summary>
    private const double Begun = 0.8;

    private static RhythmMemory Rhythm(Node node) => (RhythmMemory)node.Score.MemoryOf(RhythmAt)!;

    /// <summary>Moves that somebody lacks of a part: for certain who is out, by and by who is not.</summary>
    private double Parts(Node node, ThinningMemory so, double share)
    {
        var owed = 0.0;
        for (var a = 0; a < scene.Cast; a++)
        {
            owed += Math.Max(0, Part - so.Parts[a].Moves) * (node.State.Attackers[a].Posture == Posture.Out ? 1 : 0.5 * share);
        }

        return owed;
    }

    /// <summary>Blows that should have been answered by now: whoever blocks one is there again at once, which is never the easiest way on.</summary>
    private double Answers(Node node) => AnswerWorth * Math.Max(0, (node.Thrown * scene.UsuallyAnsweredPercent / 100.0) - node.Answered - 0.5);

    /// <summary>What one that is missing costs.</summary>
    private const double AnswerWorth = 1.2;
}
