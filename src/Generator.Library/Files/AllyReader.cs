using Generator.Domain;
using Generator.Library.Marking;
using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>Reads the second hero of a brief.</summary>
internal static class AllyReader
{
    /// <summary>The ally; null where there is none.</summary>
    /// <param name="root">The brief.</param>
    /// <param name="hero">The hero beside whom they fight.</param>
    /// <param name="floor">The floor, with the hero's mark.</param>
    /// <param name="book">The library.</param>
    public static Ally? Of(ObjectReader root, HeroPart hero, FloorPlan floor, Book book)
    {
        if (root.Object(Ally.Word) is not { } reader)
        {
            return null;
        }

        var name = reader.Name("name");
        if (!reader.Has("name"))
        {
            reader.Missing("name", "\"name\": \"Mira\"");
        }
        else if (string.Equals(name, hero.Name, StringComparison.OrdinalIgnoreCase))
        {
            reader.Refuse("name", $"Two performers are called {FieldText.Quote(name!)}.", "Maybe add a letter or number to one of them.");
        }
        else if (name is not null && Enumerable.Range(0, Cast.Most).Any(i => string.Equals(Cast.Label(i), name, StringComparison.OrdinalIgnoreCase)))
        {
            reader.Refuse("name", $"{FieldText.Quote(name)} would be taken for an attacker.", "Maybe give the ally another name.");
        }

        var bearing = reader.Clock("bearing") ?? Ally.Behind;
        var ally = new Ally(
            PerformerReader.Hero(reader, new HeroPart { Name = name ?? "Ally", Skill = Skill.Stunt }, book),
            bearing,
            reader.Metres("distance", Measures.AllyDistance) ?? Ally.UsualDistance,
            reader.Clock("facing") ?? bearing);
        if (MarkRule.WhyNotA(MarkOf(ally, floor), floor) is var (what, maybe))
        {
            reader.Refuse("distance", $"The mark of {ally.Part.Name} {what}.", maybe);
        }

        reader.Finish();
        return ally;
    }

    /// <summary>What a fight with an ally must not have: nobody is judged beside the other on the way from mark to mark, or with a prop in the hand.</summary>
    public static void Check(ObjectReader root, Brief brief)
    {
        if (brief.Ally is not { } ally)
        {
            return;
        }

        if (brief.Travels)
        {
            root.Refuse("marks", $"A fight with an ally is judged with the hero on one mark and {ally.Part.Name} on another; nobody goes from mark to mark.", "Maybe leave out the marks, or cut the fight where the hero travels.");
        }

        if (brief.Props.Count > 0)
        {
            root.Refuse("props", "Hand props are not judged yet in a fight with an ally.", "Maybe leave out the props, or the ally.");
        }
    }

    private static HeroMark MarkOf(Ally ally, FloorPlan floor)
    {
        var (x, y) = ally.Mark;
        return new HeroMark(ally.Part.Name, new(floor.MarkX.Value + x), new(floor.MarkY.Value + y));
    }
}
