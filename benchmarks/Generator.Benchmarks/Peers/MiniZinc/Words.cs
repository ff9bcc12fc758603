using System.Globalization;
using System.Text;

namespace Generator.Benchmarks.Peers.MiniZinc;

/// <summary>Variables, literals and sums of a model in MiniZinc's words; declares each when it is first spoken of.</summary>
internal sealed class Words(ModelView view)
{
    private readonly HashSet<int> declared = [];
    private readonly HashSet<int> literals = [];
    private readonly Dictionary<string, string> parameters = new(StringComparer.Ordinal);
    private readonly Dictionary<Group, List<(string Name, long[] Values)>> columns = [];

    /// <summary>Declarations of parameters and variables so far.</summary>
    public StringBuilder Declarations { get; } = new();

    /// <summary>Variables whose values are a number of a group each, and what depends on it.</summary>
    public IEnumerable<(Group Group, IReadOnlyList<(string Name, long[] Values)> Columns)> Columns => columns.Select(c => (c.Key, (IReadOnlyList<(string, long[])>)c.Value));

    /// <summary>An integer variable; a literal as 0 or 1.</summary>
    public string Whole(int variable)
    {
        if (variable == view.True || variable == view.False)
        {
            return variable == view.True ? "1" : "0";
        }

        if (view.IsLiteral(variable))
        {
            return $"bool2int({Literal(variable)})";
        }

        if (declared.Add(variable))
        {
            Declarations.Append(CultureInfo.InvariantCulture, $"var {Set(view.Proto.Variables[variable].Domain)}: x{variable};\n");
        }

        return Name('x', variable);
    }

    /// <summary>A literal, negated or not.</summary>
    public string Literal(int literal)
    {
        var variable = ModelView.VariableOf(literal);
        if (variable == view.True || variable == view.False)
        {
            return (variable == view.True) == (literal >= 0) ? "true" : "false";
        }

        if (literals.Add(variable))
        {
            var meaning = view.MeaningOf(variable);
            var says = meaning is null ? string.Empty : $" = ({In(Whole(meaning.Variable), meaning.Values, view.Range(meaning.Variable))})";
            Declarations.Append(CultureInfo.InvariantCulture, $"var bool: b{variable}{says};\n");
        }

        return literal < 0 ? $"not {Name('b', variable)}" : Name('b', variable);
    }

    /// <summary>A sum; what a group contributes is looked up by its number.</summary>
    public string Sum(IReadOnlyList<int> variables, IReadOnlyList<long> coefficients, long offset)
    {
        var terms = new List<string>();
        var byGroup = new Dictionary<Group, long[]>();
        for (var i = 0; i < variables.Count; i++)
        {
            if (variables[i] == view.False)
            {
                continue;
            }

            if (view.GroupOf(variables[i]) is var (group, place))
            {
                if (!byGroup.TryGetValue(group, out var values))
                {
                    byGroup[group] = values = new long[group.Literals.Count];
                }

                values[place] += coefficients[i];
            }
            else
            {
                terms.Add(string.Create(CultureInfo.InvariantCulture, $"{coefficients[i]}*{Whole(variables[i])}"));
            }
        }

        terms.AddRange(byGroup.Select(g => Column(g.Key, g.Value)));
        if (offset != 0 || terms.Count == 0)
        {
            terms.Add(offset.ToString(CultureInfo.InvariantCulture));
        }

        return string.Join(" + ", terms);
    }

    /// <summary>An expression lies in a domain as the solver writes it.</summary>
    public static string In(string expression, IReadOnlyList<long> domain, (long Low, long High) range)
    {
        if (domain.Count == 2)
        {
            var (low, high) = (domain[0], domain[1]);
            return low == high ? $"{expression} = {Text(low)}"
                : low <= range.Low ? $"{expression} <= {Text(high)}"
                : high >= range.High ? $"{expression} >= {Text(low)}"
                : $"{expression} in {Text(low)}..{Text(high)}";
        }

        if (domain.Count == 4 && domain[1] + 2 == domain[2] && domain[0] <= range.Low && domain[3] >= range.High)
        {
            return $"{expression} != {Text(domain[1] + 1)}";
        }

        var clipped = Enumerable.Range(0, domain.Count / 2).Select(i => (Low: Math.Max(domain[2 * i], range.Low), High: Math.Min(domain[(2 * i) + 1], range.High))).Where(d => d.Low <= d.High).SelectMany(d => new[] { d.Low, d.High }).ToList();
        return clipped.Count == 0 ? "false" : $"{expression} in {Set(clipped)}";
    }

    /// <summary>A parameter of that text, one and the same for equal texts.</summary>
    public string Parameter(string type, string value)
    {
        if (!parameters.TryGetValue(value, out var name))
        {
            parameters[value] = name = string.Create(CultureInfo.InvariantCulture, $"p{parameters.Count}");
            Declarations.Insert(0, $"{type}: {name} = {value};\n");
        }

        return name;
    }

    public static string Text(long number) => number.ToString(CultureInfo.InvariantCulture);

    private string Column(Group group, long[] values)
    {
        if (values.Select((v, i) => v == i || group.Literals[i] < 0).All(same => same))
        {
            return Whole(group.Number);
        }

        if (!columns.TryGetValue(group, out var list))
        {
            columns[group] = list = [];
        }

        var known = list.FirstOrDefault(c => c.Values.AsSpan().SequenceEqual(values)).Name;
        if (known is null)
        {
            known = string.Create(CultureInfo.InvariantCulture, $"c{group.Number}_{list.Count}");
            Declarations.Append(CultureInfo.InvariantCulture, $"var {values.Min()}..{values.Max()}: {known};\n");
            list.Add((known, values));
        }

        return known;
    }

    private static string Name(char kind, int variable) => string.Create(CultureInfo.InvariantCulture, $"{kind}{variable}");

    private static string Set(IReadOnlyList<long> domain) =>
        string.Join(" union ", Enumerable.Range(0, domain.Count / 2).Select(i => domain[2 * i] == domain[(2 * i) + 1] ? $"{{{Text(domain[2 * i])}}}" : $"{Text(domain[2 * i])}..{Text(domain[(2 * i) + 1])}"));
}
