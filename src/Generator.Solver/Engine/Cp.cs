using Google.OrTools.Sat;

namespace Generator.Solver.Engine;

/// <summary>A CP-SAT model with the few building blocks that ours are made of.</summary>
public sealed class Cp
{
    private readonly Dictionary<long, IntVar> constants = [];
    private readonly Dictionary<(int Variable, long Value), BoolVar> orders = [];
    private readonly Dictionary<int, (long Low, long High)> ranges = [];
    private readonly Dictionary<int, (IReadOnlyList<BoolVar> Literals, List<(IntVar Variable, long[] Values)> Columns)> columns = [];

    public CpModel Model { get; } = new();

    /// <summary>
    /// What depends on which literal of a row is true becomes a column of one table a row (<see cref="PostColumns"/>) instead of constraints of its own:
    /// the plain way, which benchmarks compare with.
    /// </summary>
    public bool InOneTable { get; init; }

    /// <summary>A literal that is always true.</summary>
    public BoolVar True => field ??= Fixed(true);

    /// <summary>A literal that is always false.</summary>
    public BoolVar False => field ??= Fixed(false);

    public IntVar Int(long low, long high, string name) => low == high ? Const(low) : Model.NewIntVar(low, high, name);

    public BoolVar Bool(string name) => Model.NewBoolVar(name);

    public BoolVar[] Bools(int count, string name) => [.. Enumerable.Range(0, count).Select(i => Bool($"{name}[{i}]"))];

    public IntVar Const(long value)
    {
        if (!constants.TryGetValue(value, out var constant))
        {
            constants[value] = constant = Model.NewConstant(value);
        }

        return constant;
    }

    /// <summary>The lowest and highest value a variable may take.</summary>
    public static (long Low, long High) Range(IntVar variable)
    {
        var domain = variable.Domain.FlattenedIntervals();
        return (domain[0], domain[^1]);
    }

    public static bool IsConst(IntVar variable) => Range(variable) is var (low, high) && low == high;

    /// <summary>The values in which at least one row fits every variable's range; a table of none makes the model infeasible.</summary>
    public void Table(IReadOnlyList<IntVar> variables, IEnumerable<long[]> rows)
    {
        var limits = variables.Select(v => v.Domain.FlattenedIntervals()).ToArray();
        var fitting = rows.Where(row => Fits(row, limits)).ToList();
        if (fitting.Count == 0)
        {
            Model.AddBoolOr([]);
            return;
        }

        var table = Model.AddAllowedAssignments(variables);
        foreach (var row in fitting)
        {
            table.AddTuple(row);
        }
    }

    /// <summary>Sum of coefficients over literals.</summary>
    public static LinearExpr Sum(IEnumerable<BoolVar> literals, IEnumerable<long> coefficients) =>
        LinearExpr.WeightedSum(literals.Select(l => (LinearExpr)l), coefficients);

    public static LinearExpr Sum(IEnumerable<BoolVar> literals) => LinearExpr.Sum(literals.Select(l => (LinearExpr)l));

    /// <summary>A variable equal to the sum of the coefficients of the one true literal.</summary>
    public IntVar Pick(IReadOnlyList<BoolVar> literals, Func<int, long> value, string name)
    {
        var values = Enumerable.Range(0, literals.Count).Select(value).ToArray();
        var picked = Int(values.Min(), values.Max(), name);
        if (InOneTable)
        {
            Column(literals, picked, values);
            return picked;
        }

        Model.Add(picked == Sum(literals, values));
        return picked;
    }

    /// <summary>
    /// A variable equal to the class of the one true literal; one-hot literals of the classes are kept so that tables over the class propagate well.
    /// </summary>
    public IntVar ClassOf(IReadOnlyList<BoolVar> literals, IReadOnlyList<int> classes, string name)
    {
        int[] live = [.. Enumerable.Range(0, literals.Count).Where(i => !IsFalse(literals[i]))];
        long[] kinds = [.. live.Select(i => (long)classes[i]).Distinct().Order()];
        if (kinds.Length <= 1)
        {
            return Const(kinds is [var only] ? only : classes[0]);
        }

        var picked = Model.NewIntVarFromDomain(Google.OrTools.Util.Domain.FromValues(kinds), name);
        if (InOneTable)
        {
            Column(literals, picked, [.. classes.Select(c => (long)c)]);
            return picked;
        }

        foreach (var group in live.GroupBy(i => classes[i]))
        {
            var isClass = Is(picked, group.Key, $"{name}={group.Key}");
            Model.AddExactlyOne([.. group.Select(i => literals[i]), isClass.Not()]);
        }

        return picked;
    }

    /// <summary>Posts the tables of <see cref="InOneTable"/>: number of the true literal, and every column. Gives the literals and number of each.</summary>
    public IReadOnlyList<(IReadOnlyList<BoolVar> Literals, IntVar Number)> PostColumns()
    {
        var numbers = new List<(IReadOnlyList<BoolVar> Literals, IntVar Number)>();
        foreach (var (literals, list) in columns.Values)
        {
            var number = Int(0, literals.Count - 1, "number");
            Model.Add(number == Sum(literals, Enumerable.Range(0, literals.Count).Select(i => (long)i)));
            Table([number, .. list.Select(c => c.Variable)], Enumerable.Range(0, literals.Count).Select(i => (long[])[i, .. list.Select(c => c.Values[i])]));
            numbers.Add((literals, number));
        }

        columns.Clear();
        return numbers;
    }

    /// <summary>A literal that is true exactly when the variable has the value.</summary>
    public BoolVar Is(IntVar variable, long value, string name)
    {
        var (low, high) = Range(variable);
        if (value < low || value > high)
        {
            return False;
        }

        if (low == high)
        {
            return True;
        }

        var literal = Bool(name);
        Model.Add(variable == value).OnlyEnforceIf(literal);
        Model.Add(variable != value).OnlyEnforceIf(literal.Not());
        return literal;
    }

    /// <summary>The literal that is true exactly when the variable is at most the value; one and the same for every asker.</summary>
    public BoolVar UpTo(IntVar variable, long value)
    {
        if (!ranges.TryGetValue(variable.Index, out var range))
        {
            ranges[variable.Index] = range = Range(variable);
        }

        if (value < range.Low || value >= range.High)
        {
            return value < range.Low ? False : True;
        }

        if (!orders.TryGetValue((variable.Index, value), out var literal))
        {
            orders[(variable.Index, value)] = literal = AtMost(variable, LinearExpr.Constant(value), "upto");
        }

        return literal;
    }

    /// <summary>The literal is the constant that always holds.</summary>
    public bool IsTrue(ILiteral literal) => literal.GetIndex() == True.GetIndex() || literal.GetIndex() == False.Not().GetIndex();

    /// <summary>The literal is the constant that never holds.</summary>
    public bool IsFalse(ILiteral literal) => literal.GetIndex() == False.GetIndex() || literal.GetIndex() == True.Not().GetIndex();

    /// <summary>A literal that is true exactly when <paramref name="left"/> is at most <paramref name="right"/>.</summary>
    public BoolVar AtMost(LinearExpr left, LinearExpr right, string name)
    {
        var literal = Bool(name);
        Model.Add(left <= right).OnlyEnforceIf(literal);
        Model.Add(left > right).OnlyEnforceIf(literal.Not());
        return literal;
    }

    /// <summary>A literal that is true exactly when all are.</summary>
    public BoolVar And(string name, params ILiteral[] literals)
    {
        var all = Bool(name);
        foreach (var literal in literals)
        {
            Model.AddImplication(all, literal);
        }

        Model.AddBoolOr([all, .. literals.Select(l => l.Not())]);
        return all;
    }

    /// <summary>A literal that is true exactly when at least one is.</summary>
    public BoolVar Or(string name, params ILiteral[] literals)
    {
        var any = Bool(name);
        foreach (var literal in literals)
        {
            Model.AddImplication(literal, any);
        }

        Model.AddBoolOr([any.Not(), .. literals]);
        return any;
    }

    /// <summary>The larger of 0 and the expression, up to a limit.</summary>
    public IntVar Positive(LinearExpr expression, long limit, string name)
    {
        var positive = Int(0, limit, name);
        Model.AddMaxEquality(positive, [LinearExpr.Constant(0), expression]);
        return positive;
    }

    /// <summary>A bearing 0 to 23 equal to the expression round the clock; the expression lies within ±72.</summary>
    public IntVar Round(LinearExpr expression, string name)
    {
        var wrapped = Int(0, 23, name);
        var circles = Int(-3, 3, name + ".circles");
        Model.Add(expression == LinearExpr.Affine(circles, 24, 0) + wrapped);
        return wrapped;
    }

    /// <summary>Lists of the same literals share a table; the last literal tells them apart.</summary>
    private void Column(IReadOnlyList<BoolVar> literals, IntVar variable, long[] values)
    {
        if (!columns.TryGetValue(literals[^1].Index, out var table))
        {
            columns[literals[^1].Index] = table = (literals, []);
        }

        table.Columns.Add((variable, values));
    }

    private static bool Fits(long[] row, long[][] limits)
    {
        for (var i = 0; i < row.Length; i++)
        {
            if (!Has(limits[i], row[i]))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>A value lies in one of the intervals, each given by its ends.</summary>
    private static bool Has(long[] intervals, long value)
    {
        for (var i = 0; i < intervals.Length; i += 2)
        {
            if (value <= intervals[i + 1])
            {
                return value >= intervals[i];
            }
        }

        return false;
    }

    private BoolVar Fixed(bool value)
    {
        var literal = Bool(value ? "true" : "false");
        Model.Add(literal == (value ? 1 : 0));
        return literal;
    }
}
