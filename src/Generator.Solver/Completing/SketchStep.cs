using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Rules;
using Generator.Rules.Connecting;
using Generator.Rules.Replaying;
using Generator.Solver.Constructing;
using Generator.Solver.Repertoires;

namespace Generator.Solver.Completing;

/// <summary>One move of a sketch as the search takes it: what may stand in it, as it is said or with something given up, and what of it a row of a routine breaks.</summary>
internal sealed class SketchStep
{
    /// <summary>What may give without anything else standing in the move: its count, from where somebody comes, moves put in.</summary>
    private static readonly int Aside = Giving.Only(SketchPart.Count) | Giving.Only(SketchPart.Place) | Giving.Only(SketchPart.Added);

    private static readonly SketchPart[] Parts = Enum.GetValues<SketchPart>();

    /// <summary>What must give where nobody can do what is said: one part if that will do, the cheapest first.</summary>
    private static readonly int[] Givings =
    [
        Giving.Nothing, Giving.Only(SketchPart.Wish), Giving.Only(SketchPart.Reaction), Giving.Only(SketchPart.Side), Giving.Little,
        Giving.Only(SketchPart.Attacker), Giving.Only(SketchPart.Attack), Giving.Only(SketchPart.Technique), Giving.Everything,
    ];

    private readonly Scene scene;
    private readonly Repertoire repertoire;
    private readonly bool[]? attacks;
    private readonly bool[]? techniques;
    private readonly bool[]? mirrored;
    private readonly bool[]? reactions;
    private readonly Dictionary<(int Attacker, int Giving), Menu> menus = [];
    private readonly Dictionary<int, Choice[]> noTargets = [];
    private readonly Dictionary<(int From, int To, int Giving), TravelMenu> travels = [];

    public SketchStep(Scene scene, Repertoire repertoire, SketchMove move)
    {
        (this.scene, this.repertoire, Move) = (scene, repertoire, move);
        var book = scene.Book;
        attacks = move.Attack is { } attack ? Flags(attack.Ids.Select(id => book.AttackIndex(id) + 1), book.Attacks.Count + 1)
            : move.FollowsUp ? Flags([0], book.Attacks.Count + 1) : null;
        techniques = move.Technique is { } technique ? Flags(technique.Ids.Select(book.TechniqueIndex), book.Techniques.Count)
            : move.IsSuffered ? [.. book.Techniques.Select(t => t.Family == Family.Setback)] : null;
        mirrored = move.Technique is { } sided ? Flags(sided.Ids.Select(book.TechniqueIndex).Where(t => t >= 0).Select(OtherSide), book.Techniques.Count) : null;
        reactions = move.Reaction is { } reaction ? Flags(reaction.Ids.Select(book.ReactionIndex), book.Reactions.Count) : null;
        TakesHoldFirst = move is { Attack: not null, Technique: not null };
        MustGive = move.IsGap ? Giving.Nothing : Array.Find(Givings, CanBeDone);
    }

    public SketchMove Move { get; }

    /// <summary>What the move hurts with a technique: of the hero, if a setback is said, of the target, if something else is; whose it is does not give.</summary>
    public RowHurt? HurtBy(int technique) => Move.Hurts is not { } hurts ? null : new RowHurt(hurts, Move switch
    {
        { IsSuffered: true } => true,
        { Technique.Ids: { } ids } when ids.All(IsSetback) => true,
        { Technique.Ids: { } ids } when !ids.Any(IsSetback) => false,
        _ => scene.Book.Techniques[technique].Family == Family.Setback,
    });

    /// <summary>What the attack does to the hero was left open: it may take hold before the technique does something about it.</summary>
    public bool TakesHoldFirst { get; }

    /// <summary>What must give whatever stands before and behind the move, since nobody can do what is said: a reaction that no such technique has, say. Nothing for most.</summary>
    public int MustGive { get; }

    /// <summary>Nothing is said but, it may be, when.</summary>
    public bool IsOpen => Move.Attacker is null && attacks is null && techniques is null && reactions is null && Move.To is null;

    /// <summary>It says a travel move, or to which mark it leads.</summary>
    public bool SaysTravel => Move.To is not null || (Move.Technique is not null && techniques!.Where((t, i) => t && scene.Book.Techniques[i].Travel is not null).Any());

    /// <summary>Nothing that it says keeps the hero on the mark.</summary>
    public bool MayTravel => Move.IsGap || techniques is null || SaysTravel;

    /// <summary>Who does what is said, in one meaning or two.</summary>
    public bool IsNarrow => Move is { Attacker: not null, Technique.Ids.Count: <= 2, Reaction: not null } && (Move.FollowsUp || Move.Attack is { Ids.Count: <= 2 });

    /// <summary>It may concern somebody whom it does not name: whoever it likes, or a second one who is met on the way.</summary>
    public bool MayMeetTwo => Move.Attacker is not { } who || Menu(who, Giving.Nothing).All.Any(c => scene.Book.Techniques[c.Technique].TakesTwo || c.Reactions.Any(r => scene.Book.Reactions[r].HitsSecond));

    /// <summary>Something of it may be left out altogether: nothing in it must stand.</summary>
    public bool MayGo => !IsFixed(Move.Technique) && !IsFixed(Move.Attack) && !IsFixed(Move.Reaction);

    /// <summary>What can be done with an attacker in this move.</summary>
    public Menu Menu(int attacker, int giving)
    {
        var key = (attacker, Matters(giving));
        if (!menus.TryGetValue(key, out var menu))
        {
            menus[key] = menu = repertoire.Menus[attacker].Only(c => Keep(c, giving));
        }

        return menu;
    }

    /// <summary>The travel moves from one mark to another that may stand in it.</summary>
    public TravelMenu Travels(int from, int to, int giving)
    {
        var key = (from, to, Matters(giving));
        if (!travels.TryGetValue(key, out var menu))
        {
            var leg = repertoire.Leg(from, to);
            Choice[] Kept(Choice[] some, int attacker) => Concerns(attacker, giving) ? [.. some.Select(c => Keep(c, giving)).OfType<Choice>()] : [];
            travels[key] = menu = leg with
            {
                ByWill = Move.Attacker is not null && !Giving.Has(giving, SketchPart.Attacker) ? [] : Kept(leg.ByWill, Move.Attacker ?? 0),
                Answers = [.. leg.Answers.Select(Kept)],
                Stalks = [.. leg.Stalks.Select(Kept)],
            };
        }

        return menu;
    }

    /// <summary>The same whatever the mark on which the hero stands; none in a fight on one mark.</summary>
    public IEnumerable<TravelMenu> AllTravels(int giving) => MayTravel || Giving.Has(giving, SketchPart.Technique)
        ? from m in Enumerable.Range(0, scene.Marks.Count) from n in Enumerable.Range(0, scene.Marks.Count) where m != n select Travels(m, n, giving)
        : [];

    /// <summary>What can be done in it without a target.</summary>
    public Choice[] NoTargets(int giving)
    {
        var key = Matters(giving);
        if (!noTargets.TryGetValue(key, out var choices))
        {
            noTargets[key] = choices = Move.Attacker is not null && !Giving.Has(giving, SketchPart.Attacker) ? []
                : [.. repertoire.Recoveries.Concat(repertoire.Breaths).Select(c => Keep(c, giving)).OfType<Choice>()];
        }

        return choices;
    }

    /// <summary>Attacks of this move that take hold of the hero.</summary>
    public IEnumerable<Choice> Holds(int attacker) => repertoire.Menus[attacker].Setbacks.Where(c => (attacks?[c.Attack + 1] ?? true) && scene.Book.Techniques[c.Technique].Seizes);

    /// <summary>What the hero does once hold has been taken.</summary>
    public Choice? Afterwards(Choice choice) => choice.Attack < 0 && (techniques?[choice.Technique] ?? true) ? WithReactions(choice, gives: false) : null;

    /// <summary>The move as a link of a chain of forms, as it is said.</summary>
    /// <param name="possible">What the hero can do here, one flag for each technique.</param>
    public FormLink Link(bool[] possible) => new(
        (t, r) => possible[t] && (MustGive != Giving.Nothing || ((Move.To is null || scene.Book.Techniques[t].Travel is not null) && (techniques is null || techniques[t]) && (reactions is null || (r >= 0 && reactions[r])))),
        TakesHoldFirst && Enumerable.Range(0, scene.Cast).SelectMany(a => Holds(a).Select(c => c.Technique)).ToHashSet() is var holds ? (t, _) => possible[t] && holds.Contains(t) : null);

    /// <summary>What of it makes a difference to what may stand in the move.</summary>
    private int Matters(int giving) => giving & ~(Move.To is null ? Aside : Aside & ~Giving.Only(SketchPart.Place));

    private bool CanBeDone(int giving) => giving == Giving.Everything || NoTargets(giving).Length > 0 || AllTravels(giving).Any(t => t.All.Any())
        || Enumerable.Range(0, scene.Cast).Any(a => Concerns(a, giving) && (!Menu(a, giving).IsEmpty || (TakesHoldFirst && Holds(a).Any())));

    /// <summary>Whether an attacker may be the one of this move.</summary>
    public bool Concerns(int attacker, int giving) => Move.Attacker is not { } said || said == attacker || Giving.Has(giving, SketchPart.Attacker);

    /// <summary>Price of what a row breaks of this move, its count apart.</summary>
    /// <param name="before">The fight before the row.</param>
    /// <param name="row">The row.</param>
    /// <param name="hasOpened">The attack has been thrown by the row before.</param>
    public long Price(Node before, in Row row, bool hasOpened)
    {
        var price = 0L;
        foreach (var part in Parts)
        {
            price += Breaks(part, before, row, hasOpened) ? PartOf(part).Price() : 0;
        }

        return price;
    }

    /// <summary>Nothing of it that must not give is broken by a row, and the row is no second attack where hold has been taken.</summary>
    public bool MayBe(Node before, in Row row, bool hasOpened)
    {
        foreach (var part in Parts)
        {
            if (IsFixed(CellOf(part)) && Breaks(part, before, row, hasOpened))
            {
                return false;
            }
        }

        return !hasOpened || row.Attack < 0;
    }

    /// <summary>What it costs that a row starts then, and by how much everything from then on may be later or sooner for nothing. Before anything said has come everything may be moved.</summary>
    /// <param name="begun">What came before.</param>
    /// <param name="start">Its start, in half counts.</param>
    public (long Price, int Shift) Late(Beginning begun, int start)
    {
        if (Move.Count is not { } count || begun.HasOpened || Within(0) || Within(begun.Shift))
        {
            return (0, begun.Shift);
        }

        return (begun.HasSaid ? SketchPart.Count.Price() : 0, start < count.First.Value ? start - count.First.Value : start - count.Last.Value);

        bool Within(int shift) => start >= count.First.Value + shift && start <= count.Last.Value + shift;
    }

    /// <summary>The parts that a row breaks, its count apart, each at what it costs.</summary>
    public IEnumerable<SketchPart> Broken(Node before, Row row, bool hasOpened) =>
        Parts.Where(p => Breaks(p, before, row, hasOpened)).Select(PartOf);

    /// <summary>The parts that it says and that may give, cheapest first; that something is put in before it is one.</summary>
    public IEnumerable<SketchPart> Said => Parts.Where(p => p switch
    {
        SketchPart.Wish => Parts.Any(w => CellOf(w) is { Firmness: Firmness.Wish }),
        SketchPart.Count => Move.Count is not null,
        SketchPart.Place => Move.From is not null || Move.To is not null,
        SketchPart.Attacker => Move.Attacker is not null,
        SketchPart.Attack => attacks is not null && !IsFixed(Move.Attack),
        SketchPart.Added => true,
        _ => CellOf(p) is { Firmness: not Firmness.Fixed } || (p == SketchPart.Technique && Move is { Technique: null, To: not null }),
    });

    /// <summary>What the whole move costs when it is left out: the dearest thing that it says.</summary>
    public SketchPart WhenLeftOut => techniques is not null || Move.To is not null ? PartOf(SketchPart.Technique) : attacks is not null ? PartOf(SketchPart.Attack) : SketchPart.Added;

    private bool Breaks(SketchPart part, Node before, in Row row, bool hasOpened) => part switch
    {
        SketchPart.Attacker => Move.Attacker is { } attacker && row.Attacker != attacker,
        SketchPart.Attack => !hasOpened && attacks is not null && !attacks[row.Attack + 1],
        SketchPart.Technique => (techniques is not null && !techniques[row.Technique] && mirrored?[row.Technique] != true) || (Move.To is { } to && row.To != to),
        SketchPart.Side => techniques is not null && (!techniques[row.Technique] ? mirrored?[row.Technique] == true : !SuitsFoot(before, row)),
        SketchPart.Reaction => reactions is not null && (row.Reaction < 0 || !reactions[row.Reaction]),
        SketchPart.Place => Move.From is { } from && row.From != from.HalfHours && !(row.From < 0 && row.Attacker >= 0 && before.State.Attackers[row.Attacker].Bearing == from.HalfHours),
        _ => false,
    };

    /// <summary>What a broken part counts as: a wish where its cell is one.</summary>
    private SketchPart PartOf(SketchPart part) => CellOf(part) is { Firmness: Firmness.Wish } ? SketchPart.Wish : part;

    private SketchCell? CellOf(SketchPart part) => part switch
    {
        SketchPart.Attack => Move.Attack,
        SketchPart.Technique or SketchPart.Side => Move.Technique,
        SketchPart.Reaction => Move.Reaction,
        _ => null,
    };

    private bool May(SketchPart part, int giving) => !IsFixed(CellOf(part)) && Giving.Has(giving, PartOf(part));

    private static bool IsFixed(SketchCell? cell) => cell is { Firmness: Firmness.Fixed };

    private Choice? Keep(Choice choice, int giving)
    {
        // Another technique goes where this one did, and this one elsewhere; both at once only where much may give.
        var may = May(SketchPart.Technique, giving);
        var elsewhere = Giving.Has(giving, SketchPart.Place) && !IsFixed(Move.Technique);
        var fits = (attacks is null || attacks[choice.Attack + 1] || May(SketchPart.Attack, giving))
            && (techniques is null || techniques[choice.Technique] || (May(SketchPart.Side, giving) && mirrored?[choice.Technique] == true) || may)
            && (Move.To is not { } to || choice.To == to || (elsewhere && (choice.To >= 0 || may)));
        return fits ? WithReactions(choice, May(SketchPart.Reaction, giving)) : null;
    }

    private Choice? WithReactions(Choice choice, bool gives)
    {
        if (gives || (reactions is null && choice.Reactions.Length == 0))
        {
            return choice;
        }

        // Who writes nothing of the reaction wants the blow to hit.
        int[] left = [.. choice.Reactions.Where(r => reactions?[r] ?? !scene.Book.Reactions[r].AnswersBlow)];
        return left.Length == 0 ? null : left.Length == choice.Reactions.Length ? choice : choice with { Reactions = left };
    }

    /// <summary>"Lead hook" is done with the limb that leads in the stance in which it starts, "near" and "far" by where the attacker is.</summary>
    private bool SuitsFoot(Node before, in Row row) =>
        Move.Technique?.Foot is not { } foot || scene.Book.Techniques[row.Technique].Side is not { } side
            || (foot is SketchFoot.Same or SketchFoot.Other ? ActingSide.Suits(foot, side, before.Depth > 0 ? scene.Book.Techniques[before.Row.Technique].Side : null) : ActingSide.Suits(foot, side, Replay.Step(scene, before.State, row)));

    /// <summary>The same technique on the other side; null where it has none.</summary>
    public string? OtherSideOf(string technique) => scene.Book.TechniqueIndex(technique) is >= 0 and var t && OtherSide(t) is >= 0 and var other ? scene.Book.Techniques[other].Id : null;

    private int OtherSide(int technique) => scene.Book.Techniques[technique] is { Side: { } side, BaseId: var id }
        ? scene.Book.TechniqueIndex(Mirror.Id(id, side == Side.Left ? Side.Right : Side.Left)) : -1;

    private bool IsSetback(string technique) => scene.Book.Technique(technique).Family == Family.Setback;

    private static bool[] Flags(IEnumerable<int> positions, int count)
    {
        var flags = new bool[count];
        foreach (var position in positions)
        {
            if (position >= 0)
            {
                flags[position] = true;
            }
        }

        return flags;
    }
}
