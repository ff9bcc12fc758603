namespace Generator.Paperwork.Html;

/// <summary>One move as the pages show it.</summary>
public sealed record MoveView
{
    /// <summary>From 1.</summary>
    public required int Number { get; init; }

    /// <summary>"count 12&amp;", or "click 3 of the count-in".</summary>
    public required string AtCount { get; init; }

    /// <summary>Number of the attacker in the brief, from 0; −1 for the hero alone.</summary>
    public required int Attacker { get; init; }

    public required string Who { get; init; }

    /// <summary>"12 o'clock"; empty without a target.</summary>
    public required string From { get; init; }

    public required string Attack { get; init; }

    public required string Technique { get; init; }

    public required string Reaction { get; init; }

    /// <summary>The two at its contact; null where no figures are drawn.</summary>
    public required FigureView? Picture { get; init; }

    /// <summary>How the reaction is sold.</summary>
    public required string Sell { get; init; }

    /// <summary>What stands under it: cue, turn, opening, falls.</summary>
    public required IReadOnlyList<string> Details { get; init; }

    /// <summary>When the attacker is back, at the end of an exchange.</summary>
    public required IReadOnlyList<string> Fates { get; init; }

    public required IReadOnlyList<FindingView> Findings { get; init; }

    /// <summary>Stance, hands and facing as the technique starts, and after it.</summary>
    public required IReadOnlyList<(string What, string Before, string After)> Body { get; init; }

    /// <summary>How it is kept safe, attack and technique.</summary>
    public required IReadOnlyList<string> Safety { get; init; }
}
