using Generator.Domain;
using Generator.Rules;
using Generator.Solver.Engine;
using Google.OrTools.Sat;

namespace Generator.Solver.Filling;

/// <summary>
/// Rows of a routine as a CP-SAT model, with every state in between: which technique on whom, which attack and reaction, when, and what it
/// makes of hero and attackers. The state parts only say what Replay says; what is allowed, and what it costs, comes from the rule modules.
/// </summary>
public sealed class MoveModel
{
    private readonly List<(string Rule, LinearExpr Points)> points = [];
    private readonly Dictionary<(int Row, char What, string Chosen), BoolVar> anys = [];

    public MoveModel(Scene scene, Vocabulary vocabulary, MoveModelOptions options)
    {
        Scene = scene;
        Vocabulary = vocabulary;
        Options = options;
        Cp = new Cp { InOneTable = options.InOneTable };
        Classes = new UseClasses(scene, vocabulary);
        Tables = new TransitionTables(this);
        LatestReady = Math.Max(options.Horizon * 2, ModelBounds.LatestReady(scene, options));
        LatestThreat = Math.Max(options.Horizon * 3, LatestReady + ModelBounds.LongestWalk(scene));
        Far = Math.Max(options.Horizon * 4, LatestThreat + options.Horizon);
        Start = OpeningPart.Build(this);
        var before = Start;
        var slots = new List<SlotVars>();
        for (var i = 0; i < options.Rows; i++)
        {
            var slot = ChoicePart.Build(this, i, before, slots.Count > 0 ? slots[^1] : null);
            StancePart.Build(this, slot);
            TargetPart.Build(this, slot);
            FacingPart.Build(this, slot);
            DistancePart.Build(this, slot);
            AfterPart.Build(this, slot);
            slots.Add(slot);
            before = slot.After;
        }

        Slots = slots;
        Hurts = HurtPart.Of(this);
        NoLeadIn();
        foreach (var module in options.Rules)
        {
            module.Post(this);
        }

        Numbers = Cp.PostColumns();
    }

    public Scene Scene { get; }

    public Vocabulary Vocabulary { get; }

    public MoveModelOptions Options { get; }

    public UseClasses Classes { get; }

    internal TransitionTables Tables { get; }

    /// <summary>With <see cref="MoveModelOptions.InOneTable"/>, literals of the choices of each row and the number of the true one; else empty.</summary>
    public IReadOnlyList<(IReadOnlyList<BoolVar> Literals, IntVar Number)> Numbers { get; }

    public Cp Cp { get; }

    /// <summary>No opening ends and nobody is ready again later than this, in half counts.</summary>
    internal int LatestReady { get; }

    /// <summary>No threat time lies later than this.</summary>
    internal int LatestThreat { get; }

    /// <summary>More than the time between any two moments of the model.</summary>
    internal int Far { get; }

    /// <summary>State before the first row.</summary>
    public BoundaryVars Start { get; }

    /// <summary>Half counts added to each attacker's return or entrance before the first row.</summary>
    public IReadOnlyList<IntVar> Delays { get; set; } = [];

    /// <summary>Moment of each attacker's entrance.</summary>
    public IReadOnlyList<IntVar> Entrances { get; set; } = [];

    public IReadOnlyList<SlotVars> Slots { get; }

    /// <summary>For each row what it hurts, mostly nothing.</summary>
    public IReadOnlyList<IReadOnlyList<HurtVars>> Hurts { get; }

    /// <summary>State after the last row.</summary>
    public BoundaryVars End => Slots.Count > 0 ? Slots[^1].After : Start;

    /// <summary>Somebody grips the hero at the start, or may come to: only setbacks let an attacker keep a grip.</summary>
    public bool GripsHappen => Vocabulary.Uses.Any(u => u.Technique is { Family: Family.Setback }) || Options.From?.Attackers.Any(a => a.Posture == Posture.Gripping) == true;

    /// <summary>Number of attackers; also stands for "nobody" where an attacker is chosen.</summary>
    public int Cast => Scene.Cast;

    /// <summary>What rules charge within these rows.</summary>
    public LinearExpr Points => points.Count == 0 ? LinearExpr.Constant(0) : LinearExpr.Sum(points.Select(p => p.Points));

    /// <summary>What each rule charges.</summary>
    public IEnumerable<(string Rule, LinearExpr Points)> PointsByRule => points;

    /// <summary>Solves this model, and again as long as a rule refutes the answer.</summary>
    public CpSession Session() => new(Cp.Model, Refute);

    /// <summary>A rule charges points.</summary>
    public void Charge(string rule, LinearExpr amount) => points.Add((rule, amount));

    /// <summary>Sum over the uses of a slot of a number that each has.</summary>
    public LinearExpr OverUses(SlotVars slot, Func<Use, long> number)
    {
        var chosen = Enumerable.Range(0, Vocabulary.Uses.Count).Select(u => (u, n: number(Vocabulary.Uses[u]))).Where(p => p.n != 0 && !Cp.IsFalse(slot.Uses[p.u])).ToList();
        return chosen.Count == 0 ? LinearExpr.Constant(0) : Cp.Sum(chosen.Select(p => slot.Uses[p.u]), chosen.Select(p => p.n));
    }

    /// <summary>Sum over the reactions of a slot of a number that each has.</summary>
    public LinearExpr OverReactions(SlotVars slot, Func<int, long> number)
    {
        var chosen = Enumerable.Range(0, Vocabulary.Reactions.Count).Select(r => (r, n: number(Vocabulary.Reactions[r]))).Where(p => p.n != 0 && !Cp.IsFalse(slot.Reactions[p.r])).ToList();
        return chosen.Count == 0 ? LinearExpr.Constant(0) : Cp.Sum(chosen.Select(p => slot.Reactions[p.r]), chosen.Select(p => p.n));
    }

    /// <summary>Sum over the attacks of a slot of a number that each has.</summary>
    public LinearExpr OverAttacks(SlotVars slot, Func<int, long> number)
    {
        var chosen = Enumerable.Range(0, Vocabulary.Attacks.Count).Select(k => (k, n: number(Vocabulary.Attacks[k]))).Where(p => p.n != 0 && !Cp.IsFalse(slot.Attacks[p.k])).ToList();
        return chosen.Count == 0 ? LinearExpr.Constant(0) : Cp.Sum(chosen.Select(p => slot.Attacks[p.k]), chosen.Select(p => p.n));
    }

    /// <summary>A literal that is true when one of the uses that fit is chosen.</summary>
    public BoolVar UseIs(SlotVars slot, Func<Use, bool> fits, string name) =>
        Any(slot, 'u', slot.Uses, Enumerable.Range(0, Vocabulary.Uses.Count).Where(u => fits(Vocabulary.Uses[u])), name);

    /// <summary>A literal that is true when one of the reactions that fit is chosen.</summary>
    public BoolVar ReactionIs(SlotVars slot, Func<Reaction, bool> fits, string name) =>
        Any(slot, 'r', slot.Reactions, Enumerable.Range(0, Vocabulary.Reactions.Count).Where(r => fits(Scene.Book.Reactions[Vocabulary.Reactions[r]])), name);

    /// <summary>A literal that is true where a blow is and nobody answers it.</summary>
    public BoolVar Unanswered(SlotVars slot, BoolVar blow, string name) => Cp.IsFalse(slot.Answered) ? blow : Cp.And(name, blow, slot.Answered.Not());

    /// <summary>A literal that is true when one of the attacks that fit is chosen.</summary>
    public BoolVar AttackIs(SlotVars slot, Func<Attack, bool> fits, string name) =>
        Any(slot, 'k', slot.Attacks, Enumerable.Range(0, Vocabulary.Attacks.Count).Where(k => fits(Scene.Book.Attacks[Vocabulary.Attacks[k]])), name);

    /// <summary>A value of the target; equal to <paramref name="none"/> in a row without one.</summary>
    public IntVar OfTarget(SlotVars slot, Func<AttackerVars, IntVar> what, long none, string name)
    {
        if (slot.FixedTarget >= 0 && slot.FixedTarget < Cast && Options.FewestRows > slot.Index)
        {
            return what(slot.Before.Attackers[slot.FixedTarget]);
        }

        var values = slot.Before.Attackers.Select(what).ToList();
        var low = Math.Min(none, values.Min(v => Cp.Range(v).Low));
        var high = Math.Max(none, values.Max(v => Cp.Range(v).High));
        var picked = Cp.Int(low, high, name);
        for (var a = 0; a < Cast; a++)
        {
            Cp.Model.Add(picked == values[a]).OnlyEnforceIf(slot.Targets[a]);
        }

        Cp.Model.Add(picked == none).OnlyEnforceIf(slot.NoTarget);
        return picked;
    }

    /// <summary>Half hours between two bearings, 0 to 12.</summary>
    public IntVar Apart(IntVar one, IntVar other, string name)
    {
        var way = Cp.Round(one - other, name + ".way");
        var apart = Cp.Int(0, Bearing.Circle / 2, name);
        Cp.Model.AddMinEquality(apart, [way, LinearExpr.Affine(way, -1, Bearing.Circle)]);
        return apart;
    }

    /// <summary>These rows start when their first attacker has come in; the constructive pass and routines written by hand may let everybody set off before count 1.</summary>
    private void NoLeadIn()
    {
        if (Options.From is { Moves: > 0 } || Slots.Count == 0)
        {
            return;
        }

        for (var a = 0; a < Cast; a++)
        {
            var fromTheStart = Cp.Is(Entrances[a], 0, $"fromthestart[{a}]");
            Cp.Model.Add(Slots[0].Start + Scene.Settle.ContactAfter.Value >= Start.Attackers[a].Threat).OnlyEnforceIf([Slots[0].Targets[a], fromTheStart]);
        }
    }

    /// <summary>Posts what rules say against an answer; false when they say nothing.</summary>
    private bool Refute(Func<IntVar, long> value)
    {
        var answer = new ModelAnswer(this, value);
        var said = Options.Rules.SelectMany(r => r.Refute(answer)).ToList();
        foreach (var clause in said)
        {
            Cp.Model.AddBoolOr(clause.Where(l => !Cp.IsFalse(l)));
        }

        return said.Count > 0;
    }

    private BoolVar Any(SlotVars slot, char what, BoolVar[] literals, IEnumerable<int> fitting, string name)
    {
        var chosen = fitting.Where(i => !Cp.IsFalse(literals[i])).ToArray();
        var some = chosen.Select(i => literals[i]).ToArray();
        if (some.Length == 0)
        {
            return Cp.False;
        }

        if (some.Length == 1)
        {
            return some[0];
        }

        var key = (slot.Index, what, new string([.. chosen.Select(i => (char)i)]));
        if (!anys.TryGetValue(key, out var any))
        {
            any = Cp.Bool(name);
            Cp.Model.AddExactlyOne([.. some, any.Not()]);
            anys[key] = any;
        }

        return any;
    }
}
