using Generator.Domain;
using Generator.Paperwork.Teaching;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;

namespace Generator.Paperwork;

/// <summary>What every paper of a pack is made from: a routine, what it was replayed to, and what the audit said of it.</summary>
public sealed record PaperSource
{
    /// <summary>Brief and library worked out.</summary>
    public required Scene Scene { get; init; }

    public required Routine Routine { get; init; }

    /// <summary>One step for each move.</summary>
    public required IReadOnlyList<Step> Steps { get; init; }

    public required Verdict Verdict { get; init; }

    /// <summary>The routine cut into teachable runs, each of which starts with the last move of the one before.</summary>
    public required IReadOnlyList<Phrase> Phrases { get; init; }

    /// <summary>What the user chose.</summary>
    public PaperOptions Options { get; init; } = PaperOptions.Default;

    public Brief Brief => Routine.Brief;

    /// <summary>Half counts from count 1 to the moment at which everything is over, 0 or more.</summary>
    public int End => EndOf(Steps);

    /// <inheritdoc cref="End"/>
    public static int EndOf(IEnumerable<Step> steps) => steps.Select(s => s.Over).Append(0).Max();

    /// <summary>Replays, audits and cuts a routine.</summary>
    public static PaperSource Of(Scene scene, Routine routine)
    {
        var steps = Replay.Of(scene, routine);
        return new PaperSource { Scene = scene, Routine = routine, Steps = steps, Verdict = Audit.Of(scene, routine), Phrases = PhraseCut.Of(steps) };
    }
}
