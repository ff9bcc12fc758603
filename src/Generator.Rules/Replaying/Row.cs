using Generator.Domain;

namespace Generator.Rules.Replaying;

/// <summary>A move with its ids looked up: positions in the book, −1 where there is none.</summary>
public readonly record struct Row(int Start, int Attacker, int From, Cue Cue, int Attack, int Technique, int Reaction, int Linger)
{
    /// <summary>The stance that the row says the hero changes to before the technique; null where it says none.</summary>
    public Stance? Stance { get; init; }

    /// <summary>The ally does it.</summary>
    public bool ByAlly { get; init; }

    /// <summary>Number of the mark to which the row leads; −1 for none.</summary>
    public int To { get; init; } = -1;

    /// <summary>What the row hurts, and whose that is; null for nothing.</summary>
    public RowHurt? Hurt { get; init; }

    public static Row Of(Move move, Scene scene) => new(
        move.Start.Value,
        move.Attacker is { } a && a >= 0 && a < scene.Cast ? a : -1,
        move.From?.HalfHours ?? -1,
        move.Cue,
        move.Attack is null ? -1 : scene.Book.AttackIndex(move.Attack),
        move.Technique is null ? -1 : scene.Book.TechniqueIndex(move.Technique),
        move.Reaction is null ? -1 : scene.Book.ReactionIndex(move.Reaction),
        move.Linger.Value)
    {
        ByAlly = move.ByAlly,
        Stance = move.Stance,
        Hurt = RowHurt.Of(move, scene.Book),
        To = move.To is { } to && to >= 0 && to < scene.Marks.Count ? to : -1,
    };

    /// <summary>The row as a move of a routine.</summary>
    public Move ToMove(Scene scene) => new()
    {
        Start = new HalfCounts(Start),
        ByAlly = ByAlly,
        Attacker = Attacker < 0 ? null : Attacker,
        From = From < 0 ? null : new Bearing(From),
        Cue = Cue,
        Attack = Attack < 0 ? null : scene.Book.Attacks[Attack].Id,
        Technique = Technique < 0 ? null : scene.Book.Techniques[Technique].Id,
        Reaction = Reaction < 0 ? null : scene.Book.Reactions[Reaction].Id,
        Hurts = Hurt?.By(this, scene.Book) is null ? null : Hurt.What,
        Stance = Stance,
        Linger = new HalfCounts(Linger),
        To = To < 0 ? null : To,
    };
}
