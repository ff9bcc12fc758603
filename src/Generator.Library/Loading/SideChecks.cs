using Generator.Domain;

namespace Generator.Library.Loading;

/// <summary>Whether a record without a side is its own mirror.</summary>
internal static class SideChecks
{
    public static bool IsOwnMirror(Technique technique)
    {
        var other = Mirror.Of(technique);
        return technique.Starts == other.Starts
            && technique.EndStance == other.EndStance
            && (technique.LeftNeed, technique.LeftEnd) == (other.LeftNeed, other.LeftEnd)
            && SameArc(technique.Window, other.Window)
            && technique.Turn == other.Turn
            && technique.Carry == other.Carry
            && technique.Answers == other.Answers
            && SameDemands(technique.Demands, other.Demands)
            && technique.Load == other.Load
            && technique.PartnerLoad == other.PartnerLoad
            && technique.Prop == other.Prop;
    }

    public static bool IsOwnMirror(Attack attack)
    {
        var other = Mirror.Of(attack);
        return attack.Line == other.Line
            && attack.HeroStances == other.HeroStances
            && SameArc(attack.From, other.From)
            && attack.GripsLeft == other.GripsLeft
            && attack.GripsStance == other.GripsStance
            && SameDemands(attack.Demands, other.Demands)
            && attack.Load == other.Load
            && attack.Prop == other.Prop;
    }

    /// <summary>9 to 15 and −15 to −9 are the same arc behind the hero.</summary>
    private static bool SameArc(Window one, Window other) =>
        Enumerable.Range(0, Bearing.Circle).All(b => one.Contains(new Turn(b)) == other.Contains(new Turn(b)));

    private static bool SameDemands(IReadOnlyList<string> one, IReadOnlyList<string> other) =>
        one.Order(StringComparer.Ordinal).SequenceEqual(other.Order(StringComparer.Ordinal), StringComparer.Ordinal);
}
