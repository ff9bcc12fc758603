using Google.OrTools.Sat;

namespace Generator.Benchmarks.Peers.MiniZinc;

/// <summary>A CP-SAT model as a translator sees it: which variables are literals, which of them stand for "a variable has such a value", and which belong together.</summary>
internal sealed class ModelView
{
    private readonly Dictionary<int, (Group Group, int Place)> grouped = [];
    private readonly Dictionary<int, Meaning> meanings = [];
    private readonly HashSet<int> defining = [];
    private readonly HashSet<int> literals = [];

    public ModelView(PlainModel plain)
    {
        var cp = plain.Model.Cp;
        Proto = cp.Model.Model;
        (True, False) = (cp.True.Index, cp.False.Index);
        var lists = plain.Model.Numbers.Select(n => (n.Literals, n.Number)).Concat(plain.Model.Slots.Select(s => ((IReadOnlyList<BoolVar>)[.. s.Targets, s.NoTarget], s.Target)));
        Groups = [.. lists.Select(l => new Group(l.Item2.Index, [.. l.Item1.Select(b => b.Index == False ? -1 : b.Index)]))];
        foreach (var group in Groups)
        {
            for (var i = 0; i < group.Literals.Count; i++)
            {
                if (group.Literals[i] >= 0)
                {
                    grouped[group.Literals[i]] = (group, i);
                    meanings[group.Literals[i]] = new Meaning(group.Number, [i, i]);
                }
            }
        }

        FindLiterals();
        FindSubsets();
        FindReified();
    }

    public CpModelProto Proto { get; }

    public IReadOnlyList<Group> Groups { get; }

    /// <summary>Variable of the literal that always holds.</summary>
    public int True { get; }

    /// <summary>Variable of the literal that never holds.</summary>
    public int False { get; }

    /// <summary>Occurs as a literal somewhere.</summary>
    public bool IsLiteral(int variable) => literals.Contains(variable);

    public Meaning? MeaningOf(int variable) => meanings.GetValueOrDefault(variable);

    public (Group Group, int Place)? GroupOf(int variable) => grouped.TryGetValue(variable, out var found) ? found : null;

    /// <summary>The constraint only says what a literal means, which the translation says at the literal.</summary>
    public bool IsDefinition(int constraint) => defining.Contains(constraint);

    /// <summary>Least and greatest value of a variable.</summary>
    public (long Low, long High) Range(int variable) => (Proto.Variables[variable].Domain[0], Proto.Variables[variable].Domain[^1]);

    /// <summary>Number of the variable of a literal as the solver writes them, negated or not.</summary>
    public static int VariableOf(int literal) => literal < 0 ? ~literal : literal;

    private void FindLiterals()
    {
        foreach (var constraint in Proto.Constraints)
        {
            literals.UnionWith(constraint.EnforcementLiteral.Select(VariableOf));
            literals.UnionWith(constraint.ConstraintCase switch
            {
                ConstraintProto.ConstraintOneofCase.BoolOr => constraint.BoolOr.Literals.Select(VariableOf),
                ConstraintProto.ConstraintOneofCase.ExactlyOne => constraint.ExactlyOne.Literals.Select(VariableOf),
                _ => [],
            });
        }
    }

    /// <summary>Exactly one of some literals of a group and the contrary of another literal: that one says that the group's number is among them.</summary>
    private void FindSubsets()
    {
        for (var c = 0; c < Proto.Constraints.Count; c++)
        {
            var constraint = Proto.Constraints[c];
            if (constraint.ConstraintCase != ConstraintProto.ConstraintOneofCase.ExactlyOne)
            {
                continue;
            }

            var inside = constraint.ExactlyOne.Literals.Where(l => l >= 0 && l != False).ToList();
            var outside = constraint.ExactlyOne.Literals.Where(l => l < 0).ToList();
            if (inside.Count > 0 && inside.TrueForAll(grouped.ContainsKey) && inside.Select(l => grouped[l].Group).Distinct().Take(2).Count() == 1
                && outside is [var only] && !meanings.ContainsKey(~only))
            {
                var places = inside.Select(l => (long)grouped[l].Place).Order();
                meanings[~only] = new Meaning(grouped[inside[0]].Group.Number, Joined(places));
                defining.Add(c);
            }
        }
    }

    /// <summary>A literal with one variable's values where it holds, and the other values where it does not.</summary>
    private void FindReified()
    {
        var halves = new Dictionary<(int Literal, int Variable), int>();
        for (var c = 0; c < Proto.Constraints.Count; c++)
        {
            if (Proto.Constraints[c] is not { ConstraintCase: ConstraintProto.ConstraintOneofCase.Linear, EnforcementLiteral: [var literal], Linear: { Vars: [var variable], Coeffs: [1] } linear })
            {
                continue;
            }

            if (halves.TryGetValue((~literal, variable), out var other) && !meanings.ContainsKey(VariableOf(literal)))
            {
                var (holds, not) = literal >= 0 ? (linear, Proto.Constraints[other].Linear) : (Proto.Constraints[other].Linear, linear);
                var meaning = new Meaning(variable, [.. holds.Domain]);
                var contrary = new Meaning(variable, [.. not.Domain]);
                if (Contrary(meaning, contrary, Range(variable)))
                {
                    meanings[VariableOf(literal)] = meaning;
                    defining.UnionWith([c, other]);
                }
            }

            halves[(literal, variable)] = c;
        }
    }

    private static bool Contrary(Meaning one, Meaning other, (long Low, long High) range)
    {
        for (var v = range.Low; v <= range.High; v++)
        {
            if (one.Holds(v) == other.Holds(v))
            {
                return false;
            }
        }

        return true;
    }

    private static List<long> Joined(IEnumerable<long> sorted)
    {
        var intervals = new List<long>();
        foreach (var value in sorted)
        {
            if (intervals.Count > 0 && intervals[^1] == value - 1)
            {
                intervals[^1] = value;
            }
            else
            {
                intervals.AddRange([value, value]);
            }
        }

        return intervals;
    }
}
