using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>What can be wrong with a prop of a brief, however it is written: each with what to try.</summary>
internal static class PropFaults
{
    /// <summary>Nearer than this to the middle of a mark it lies under the hero's feet, in centimetres.</summary>
    private const int UnderTheHero = 40;

    /// <summary>It lies off the floor, in a thing, or under the hero; null where it lies well.</summary>
    public static (string Message, string Maybe)? Place(PropPart prop, Brief brief)
    {
        var floor = brief.Floor;
        if (prop.X.Value < 0 || prop.Y.Value < 0 || prop.X > floor.Width || prop.Y > floor.Depth)
        {
            return ($"{FieldText.Quote(prop.Name)} lies off the floor.", "Maybe x and y are swapped, or the floor is larger.");
        }

        if (floor.Obstacles.FirstOrDefault(o => o.X <= prop.X && prop.X <= o.X + o.Width && o.Y <= prop.Y && prop.Y <= o.Y + o.Depth) is { } thing)
        {
            return ($"{FieldText.Quote(prop.Name)} lies inside {FieldText.Quote(thing.Name)}.", "Maybe put it beside it.");
        }

        return brief.Marks.Select(m => (m.X, m.Y)).Append((floor.MarkX, floor.MarkY)).Any(m => Near(m.Item1, prop.X) && Near(m.Item2, prop.Y))
            ? ($"{FieldText.Quote(prop.Name)} lies under the hero's feet on a mark.", "Maybe put it half a metre aside.") : null;
    }

    /// <summary>The hand that is said does not hold such a thing.</summary>
    public static string? Hand(PropKind kind, PropHand? hand) => hand is { } held && held == PropHand.Both != (kind.Hands == 2)
        ? $"{char.ToUpperInvariant(kind.Name[0])}{kind.Name[1..]} is held in {(kind.Hands == 2 ? "both hands" : "one hand")}." : null;

    /// <summary>What is in the hand already; null for nothing.</summary>
    public static string? Full(PropPart prop, IEnumerable<PropPart> others, Brief brief) =>
        prop.With is { } who && others.FirstOrDefault(o => o.With == who && o.Hand.Meets(prop.Hand)) is { } other
            ? $"{(who < 0 ? brief.Hero.Name : brief.Attackers[who].Name)} has {FieldText.Quote(other.Name)} in that hand." : null;

    /// <summary>The library has no such kind.</summary>
    /// <param name="word">As it is written.</param>
    /// <param name="table">The kinds.</param>
    /// <param name="otherwise">What may be done where none of them is spelt nearly so.</param>
    public static (string Message, string Maybe) Unknown(string word, PropTable table, string otherwise = "") => (
        $"The library knows no kind of prop called {FieldText.Quote(word)}.",
        NearestWords.Maybe(word, [.. table.Kinds.SelectMany(k => k.Aliases.Prepend(k.Id))], $"Maybe one of these is meant: {string.Join(", ", table.Kinds.Select(k => k.Id))}{otherwise}."));

    private static bool Near(Centimetres one, Centimetres other) => Math.Abs(one.Value - other.Value) < UnderTheHero;
}
