using Generator.Domain;
using Generator.Paperwork.Following;
using Generator.Paperwork.SafetyPapers;
using Generator.Paperwork.Teaching;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Rules.Shapes;

namespace Generator.Paperwork;

/// <summary>What every paper of a pack is made from: a routine, what it was replayed to, what the audit said of it, and what several papers draw on, worked out once.</summary>
public sealed class PaperSource
{
    private PaperSource(Scene scene, Routine routine, IReadOnlyList<Step> steps, Verdict verdict, IReadOnlyList<Phrase> phrases, PaperOptions options) =>
        (Scene, Routine, Steps, Verdict, Phrases, Options) = (scene, routine, steps, verdict, phrases, options);

    /// <summary>Brief and library worked out.</summary>
    public Scene Scene { get; }

    public Routine Routine { get; }

    /// <summary>One step for each move.</summary>
    public IReadOnlyList<Step> Steps { get; }

    public Verdict Verdict { get; }

    /// <summary>The routine cut into teachable runs, each of which starts with the last move of the one before.</summary>
    public IReadOnlyList<Phrase> Phrases { get; }

    /// <summary>What the user chose.</summary>
    public PaperOptions Options { get; }

    public Brief Brief => Routine.Brief;

    /// <summary>What every paper says of itself.</summary>
    public PaperHead Head => field ??= PaperHead.Of(Routine, Verdict, Options.From);

    public TeachingPlan Plan => field ??= TeachingPlan.Of(Scene, Steps, Phrases);

    public FightShape Shape => field ??= FightShape.Of(Scene, Steps);

    /// <summary>The fight in space; null where no figures are drawn.</summary>
    public Acted? Acted => acted ??= Options.Cards is { } cards ? Acted.Of(this, cards) : null;

    private Acted? acted;

    /// <summary>The worst first.</summary>
    public IReadOnlyList<Hazard> Hazards => field ??= SafetyPapers.Hazards.Of(this);

    /// <summary>Half counts from count 1 to the moment at which everything is over, 0 or more.</summary>
    public int End => EndOf(Steps);

    /// <inheritdoc cref="End"/>
    public static int EndOf(IEnumerable<Step> steps) => steps.Select(s => s.Over).Append(0).Max();

    /// <summary>Replays, audits and cuts a routine.</summary>
    public static PaperSource Of(Scene scene, Routine routine)
    {
        var steps = Replay.Of(scene, routine);
        return new PaperSource(scene, routine, steps, Audit.Of(scene, routine), PhraseCut.Of(steps), PaperOptions.Default);
    }

    /// <summary>The same routine for papers of another choice.</summary>
    public PaperSource With(PaperOptions options) => new(Scene, Routine, Steps, Verdict, Phrases, options) { acted = options.Cards == Options.Cards ? acted : null };
}
