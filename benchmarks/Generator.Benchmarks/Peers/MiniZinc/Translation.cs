using System.Globalization;
using System.Text;
using Google.OrTools.Sat;
using static Google.OrTools.Sat.ConstraintProto;

namespace Generator.Benchmarks.Peers.MiniZinc;

/// <summary>
/// The plain model in MiniZinc, constraint by constraint: the same routines at the same points. Where hundreds of literals stand for one choice it
/// has one variable, sums over them become columns of a table, and clauses between two choices become tables of pairs, as somebody
/// would write it who models for a solver with whole domains.
/// </summary>
internal sealed class Translation
{
    private const int MostPairs = 100_000;

    private readonly PlainModel plain;
    private readonly ModelView view;
    private readonly Words words;
    private readonly StringBuilder constraints = new();
    private readonly Dictionary<(int One, int Other), Dictionary<long, Func<long, bool>>> pairs = [];

    public Translation(PlainModel plain)
    {
        this.plain = plain;
        view = new ModelView(plain);
        words = new Words(view);
        for (var c = 0; c < view.Proto.Constraints.Count; c++)
        {
            if (!view.IsDefinition(c))
            {
                Constraint(view.Proto.Constraints[c]);
            }
        }

        Pairs();
        Points = Objective();
        Asked = [.. Answers.Asked(plain).Where(v => view.GroupOf(v.Index) is null && v.Index != view.True && v.Index != view.False).Select(v => v.Index).Concat(view.Groups.Select(g => g.Number)).Distinct()];
        AskedText = [.. Asked.Select(words.Whole)];
        Columns();
    }

    /// <summary>Variables whose values tell the routine, in the order in which the answer gives them; after them come the points.</summary>
    public IReadOnlyList<int> Asked { get; }

    private IReadOnlyList<string> AskedText { get; }

    private string Points { get; }

    /// <summary>The model with a way to search.</summary>
    public string Text(SearchWay way) =>
        $"include \"table.mzn\";\n{words.Declarations}var 0..{MostPoints()}: points = {Points};\n{constraints}"
        + $"array[int] of var int: answer = [{string.Join(", ", AskedText)}, points];\n"
        + $"solve {way.Annotation([.. plain.Model.Slots.Select(Decisions)], [.. Opening()])} minimize points;\noutput [show(answer)];\n";

    /// <summary>Value of a variable of the model by the values of an answer.</summary>
    public Func<IntVar, long> Reader(IReadOnlyList<long> answer)
    {
        var values = Asked.Select((v, i) => (v, answer[i])).ToDictionary(p => p.v, p => p.Item2);
        return variable => variable.Index == view.True ? 1
            : variable.Index == view.False ? 0
            : view.GroupOf(variable.Index) is var (group, place) ? (values[group.Number] == place ? 1 : 0)
            : values[variable.Index];
    }

    private IReadOnlyList<string> Decisions(Solver.Filling.SlotVars slot)
    {
        var numbers = plain.Model.Numbers.ToDictionary(n => n.Literals[^1].Index, n => n.Number);
        IntVar[] order = [slot.Target, numbers[slot.Uses[^1].Index], numbers[slot.NoAttack.Index], numbers[slot.NoReaction.Index], slot.Gap, slot.Linger, slot.WalkRound];
        return [.. order.Select(v => words.Whole(v.Index))];
    }

    private IEnumerable<string> Opening() =>
        plain.Model.Start.Attackers.SelectMany(a => new[] { a.Bearing, a.Distance }).Concat(plain.Model.Entrances).Select(v => words.Whole(v.Index));

    private void Say(string constraint) => constraints.Append("constraint ").Append(constraint).Append(";\n");

    private void Constraint(ConstraintProto constraint)
    {
        switch (constraint.ConstraintCase)
        {
            case ConstraintOneofCase.Linear:
                Linear(constraint);
                break;
            case ConstraintOneofCase.BoolOr:
                Clause(constraint.BoolOr.Literals);
                break;
            case ConstraintOneofCase.ExactlyOne:
                ExactlyOne(constraint.ExactlyOne.Literals);
                break;
            case ConstraintOneofCase.Table:
                Table(constraint.Table);
                break;
            case ConstraintOneofCase.LinMax:
                Greatest(constraint.LinMax);
                break;
            case ConstraintOneofCase.Element:
                Element(constraint.Element);
                break;
            case ConstraintOneofCase.IntDiv:
                Say($"{Sum(constraint.IntDiv.Target)} = ({Sum(constraint.IntDiv.Exprs[0])}) div ({Sum(constraint.IntDiv.Exprs[1])})");
                break;
            default:
                throw new NotSupportedException($"No translation of a constraint {constraint.ConstraintCase}.");
        }
    }

    private void Linear(ConstraintProto constraint)
    {
        var linear = constraint.Linear;
        if (linear.Vars is [var only] && (only == view.True || only == view.False))
        {
            return;
        }

        var expression = words.Sum(linear.Vars, linear.Coeffs, 0);
        var range = linear.Vars is [var single] && linear.Coeffs[0] == 1 ? view.Range(single) : (long.MinValue, long.MaxValue);
        var says = Words.In(expression, linear.Domain, range);
        if (constraint.EnforcementLiteral.Count == 0)
        {
            Say(says);
            return;
        }

        var when = constraint.EnforcementLiteral.Select(words.Literal).Where(l => l != "true").Distinct(StringComparer.Ordinal).ToList();
        if (!when.Contains("false", StringComparer.Ordinal))
        {
            Say(when.Count == 0 ? says : $"({string.Join(" /\\ ", when)}) -> ({says})");
        }
    }

    private void Clause(IReadOnlyList<int> literals)
    {
        if (!Pair(literals))
        {
            var texts = literals.Select(words.Literal).Where(l => l != "false").ToList();
            if (!texts.Contains("true", StringComparer.Ordinal))
            {
                Say(texts.Count == 0 ? "false" : string.Join(" \\/ ", texts));
            }
        }
    }

    /// <summary>A choice of one group allows only some values of another variable: noted for a table of pairs.</summary>
    private bool Pair(IReadOnlyList<int> literals)
    {
        var not = literals.Where(l => l < 0).ToList();
        if (not is not [var one] || view.GroupOf(~one) is not var (group, place))
        {
            return false;
        }

        var meanings = literals.Where(l => l >= 0 && l != view.False).Select(view.MeaningOf).ToList();
        if (meanings.Count == 0 || meanings.Exists(m => m is null || m.Variable != meanings[0]!.Variable) || meanings[0]!.Variable == group.Number)
        {
            return false;
        }

        var other = meanings[0]!.Variable;
        var (low, high) = view.Range(other);
        if ((high - low + 1) * group.Literals.Count > MostPairs)
        {
            return false;
        }

        if (!pairs.TryGetValue((group.Number, other), out var rows))
        {
            pairs[(group.Number, other)] = rows = [];
        }

        var before = rows.GetValueOrDefault(place);
        rows[place] = v => before?.Invoke(v) != false && meanings.Exists(m => m!.Holds(v));
        return true;
    }

    private void Pairs()
    {
        foreach (var ((one, other), rows) in pairs)
        {
            var (first, second) = (view.Range(one), view.Range(other));
            var allowed = new List<long[]>();
            for (var v = first.Low; v <= first.High; v++)
            {
                for (var w = second.Low; w <= second.High; w++)
                {
                    if (!rows.TryGetValue(v, out var holds) || holds(w))
                    {
                        allowed.Add([v, w]);
                    }
                }
            }

            Table([words.Whole(one), words.Whole(other)], allowed);
        }
    }

    private void ExactlyOne(IReadOnlyList<int> literals)
    {
        var groups = literals.Where(l => l != view.False).Select(l => l < 0 ? null : view.GroupOf(l)?.Group).Distinct().ToList();
        if (groups is [{ } whole] && literals.Count(l => l != view.False) == whole.Literals.Count(l => l >= 0))
        {
            for (var i = 0; i < whole.Literals.Count; i++)
            {
                if (whole.Literals[i] < 0)
                {
                    Say($"{words.Whole(whole.Number)} != {Words.Text(i)}");
                }
            }

            return;
        }

        Say($"sum([{string.Join(", ", literals.Select(l => $"bool2int({words.Literal(l)})"))}]) = 1");
    }

    private void Table(TableConstraintProto table)
    {
        if (table.Negated || table.Exprs.Any(e => e.Vars.Count > 1))
        {
            throw new NotSupportedException("No translation of a negated table.");
        }

        var width = table.Exprs.Count;
        var names = table.Exprs.Select(e => Sum(e)).ToList();
        Table(names, Enumerable.Range(0, table.Values.Count / width).Select(r => Enumerable.Range(0, width).Select(c => table.Values[(r * width) + c]).ToArray()).ToList());
    }

    private void Table(List<string> names, List<long[]> rows)
    {
        var values = $"array2d(1..{rows.Count}, 1..{names.Count}, [{string.Join(',', rows.SelectMany(r => r).Select(Words.Text))}])";
        Say($"table([{string.Join(", ", names)}], {words.Parameter("array[int,int] of int", values)})");
    }

    private void Columns()
    {
        foreach (var (group, columns) in words.Columns)
        {
            var places = Enumerable.Range(0, group.Literals.Count).Where(i => group.Literals[i] >= 0);
            Table([words.Whole(group.Number), .. columns.Select(c => c.Name)], [.. places.Select(i => (long[])[i, .. columns.Select(c => c.Values[i])])]);
        }
    }

    private void Greatest(LinearArgumentProto greatest)
    {
        // The least of some expressions is written as the greatest of their contraries.
        var least = greatest.Target.Coeffs is [-1] && greatest.Target.Offset == 0;
        var sign = least ? -1 : 1;
        var list = string.Join(", ", greatest.Exprs.Select(e => Sum(e, sign)));
        Say($"{Sum(greatest.Target, sign)} = {(least ? "min" : "max")}([{list}])");
    }

    private void Element(ElementConstraintProto element)
    {
        var values = string.Create(CultureInfo.InvariantCulture, $"[{string.Join(',', element.Exprs.Select(e => Words.Text(e.Vars.Count == 0 ? e.Offset : throw new NotSupportedException("No translation of an element of variables."))))}]");
        Say($"{Sum(element.LinearTarget)} = {words.Parameter("array[int] of int", values)}[{Sum(element.LinearIndex)} + 1]");
    }

    /// <summary>No answer has more points.</summary>
    private long MostPoints() => (long)view.Proto.Objective.Offset
        + view.Proto.Objective.Vars.Zip(view.Proto.Objective.Coeffs, (v, c) => Math.Max(c * view.Range(v).Low, c * view.Range(v).High)).Sum();

    private string Objective()
    {
        var objective = view.Proto.Objective;
        return objective.ScalingFactor is 0 or 1 ? words.Sum(objective.Vars, objective.Coeffs, (long)objective.Offset) : throw new NotSupportedException("No translation of a scaled objective.");
    }

    private string Sum(LinearExpressionProto expression) => Sum(expression, 1);

    private string Sum(LinearExpressionProto expression, int sign) => words.Sum(expression.Vars, [.. expression.Coeffs.Select(c => sign * c)], sign * expression.Offset);
}
