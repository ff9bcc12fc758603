namespace Generator.Solver.Repertoires;

/// <summary>Everything that could be done with one attacker, by situation. What does not depend on the moment has been sifted already.</summary>
internal sealed record Menu
{
    /// <summary>Attacks, each with a technique that suits it; setbacks apart.</summary>
    public required Choice[] Answers { get; init; }

    /// <summary>Those of <see cref="Answers"/> against which no manner and no wish of the brief speaks; none where that is all or none of them.</summary>
    public Choice[] Suiting { get; init; } = [];

    /// <summary>Attacks that get through.</summary>
    public required Choice[] Setbacks { get; init; }

    /// <summary>Techniques by the posture that they find.</summary>
    public required Choice[][] FollowUps { get; init; }

    /// <summary>Ways out of a grip, by its line.</summary>
    public required Choice[][] Escapes { get; init; }

    /// <summary>Beats of the story with this attacker, by posture.</summary>
    public required Choice[][] Beats { get; init; }

    /// <summary>Those of <see cref="Answers"/> in which the attacker comes with a prop; none where the brief has none.</summary>
    public Choice[] Armed { get; init; } = [];

    /// <summary>Those of <see cref="FollowUps"/> that are done with a prop, by posture; none where the brief has none.</summary>
    public Choice[][] WithProps { get; init; } = [];

    /// <summary>Whatever can be done, in any situation; some of it more than once.</summary>
    public IEnumerable<Choice> All => [.. Answers, .. Setbacks, .. FollowUps.Concat(Escapes).Concat(Beats).SelectMany(c => c)];

    /// <summary>Nothing can be done.</summary>
    public bool IsEmpty => !All.Any();

    /// <summary>The choices for which <paramref name="keep"/> leaves at least one reaction (or that need none).</summary>
    public Menu Only(Func<Choice, Choice?> keep) => new()
    {
        Answers = Sift(Answers, keep),
        Setbacks = Sift(Setbacks, keep),
        FollowUps = [.. FollowUps.Select(c => Sift(c, keep))],
        Escapes = [.. Escapes.Select(c => Sift(c, keep))],
        Beats = [.. Beats.Select(c => Sift(c, keep))],
    };

    private static Choice[] Sift(Choice[] choices, Func<Choice, Choice?> keep) => [.. choices.Select(keep).OfType<Choice>()];
}
