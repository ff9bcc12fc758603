namespace Generator.Rules.Shapes;

/// <summary>
/// One whole number by which a rough rule judges a fight, and the band that is wanted. Each is counted move by move and closed at the end, so that a fold can
/// keep it; each is a count, the difference of two moments, the greatest or least of such, or so many of a hundred (which a model
/// says without dividing: 100 × part ≤ band × whole). Bands are common practice, no source, unless the rule's file says otherwise.
/// </summary>
/// <param name="Rule">Id of the rough rule: rhythm, story, climax, thinning, manner, momentum, echo or purpose.</param>
/// <param name="Id">Of the figure, unique: <c>equal-lengths</c>.</param>
/// <param name="Name">What is counted, in the trade's words.</param>
/// <param name="Unit">Of value and band: moves, half counts, % …</param>
/// <param name="Value">Null where the fight gives nothing to judge: too short, nobody goes out, nobody is held.</param>
/// <param name="Least">The band's lower end; null for none.</param>
/// <param name="Most">The upper end; null for none.</param>
/// <param name="Lift">What would bring it into the band; empty where it lies within, or there is nothing to judge.</param>
public sealed record Figure(string Rule, string Id, string Name, string Unit, int? Value, int? Least, int? Most, string Lift)
{
    /// <summary>Within the band; null where there is nothing to judge.</summary>
    public bool? IsMet => Value is not { } value ? null : value >= (Least ?? value) && value <= (Most ?? value);

    /// <summary>How far outside the band, 0 within: what a rule would count its points from.</summary>
    public int Off => Value is not { } value ? 0 : Math.Max(0, Math.Max((Least ?? value) - value, value - (Most ?? value)));

    /// <summary>The same, told what would lift it only where it does not lie within.</summary>
    internal static Figure Of(string rule, string id, string name, string unit, int? value, int? least, int? most, Func<string> lift)
    {
        var figure = new Figure(rule, id, name, unit, value, least, most, string.Empty);
        return figure.IsMet == false ? figure with { Lift = lift() } : figure;
    }

    /// <summary>Of a hundred, rounded against whoever wants few; null of nothing.</summary>
    internal static int? PercentUp(int part, int whole) => whole == 0 ? null : ((100 * part) + whole - 1) / whole;
}
