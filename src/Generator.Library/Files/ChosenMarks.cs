using System.Globalization;
using Generator.Domain;
using Generator.Library.Marking;
using Generator.Library.Reading;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Files;

/// <summary>
/// Marks of a brief that says how many there are, or the way on which they lie: what is read is then plain marks, with a remark that says which, so that nobody else need know of it.
/// </summary>
internal static class ChosenMarks
{
    /// <summary>The field.</summary>
    public const string Field = "marks";

    private static readonly Quantity Count = new("a number of marks", 2, HeroMark.Most, string.Empty, $"Maybe leave \"marks\" out for a fight on one mark, or write 2 to {HeroMark.Most.ToString(CultureInfo.InvariantCulture)}.");

    /// <summary>How near a prop on the floor a mark may be, and a way from mark to mark, in centimetres. Common practice, no source.</summary>
    private const int ClearOfProp = 60, PassesProp = 45;

    /// <summary>The brief says something of its marks, but not where they lie.</summary>
    public static bool IsAsked(ObjectReader root) => root.Token(Field) is not (null or JArray);

    /// <summary>The marks; none after a problem.</summary>
    /// <param name="root">The brief.</param>
    /// <param name="floor">Its floor, with the mark that it says, or the middle.</param>
    /// <param name="cameras">Its cameras.</param>
    /// <param name="book">The library.</param>
    /// <param name="choice">By what they are chosen.</param>
    public static IReadOnlyList<HeroMark> Of(ObjectReader root, FloorPlan floor, IReadOnlyList<Camera> cameras, Book book, MarkChoice choice)
    {
        if (root.Token(Field) is JObject)
        {
            return OnAWay(root, root.Object(Field)!, floor, cameras, book, choice);
        }

        if (root.Token(Field) is { Type: not (JTokenType.Integer or JTokenType.Float) } word)
        {
            root.Refuse(Field, $"{FieldText.Of(word)} is neither a list of places, nor a number of marks, nor a way.", "Maybe write \"marks\": 3, or { \"from\": \"door\", \"to\": \"window\" }, or [ { \"name\": \"door\", \"x\": 2, \"y\": 3 }, … ].");
            return [];
        }

        return root.Whole(Field, Count) is { } count ? Spread(root, count, floor, cameras, book, choice) : [];
    }

    private static IReadOnlyList<HeroMark> Spread(ObjectReader root, int count, FloorPlan floor, IReadOnlyList<Camera> cameras, Book book, MarkChoice choice)
    {
        Spot? first = MarkView.IsFixed(root) ? new Spot(floor.MarkX.Value, floor.MarkY.Value) : null;
        if (first is { } given)
        {
            var begins = new HeroMark(string.Empty, floor.MarkX, floor.MarkY);
            if (MarkRule.WhyNotA(begins, floor) is var (what, _))
            {
                root.Refuse(Field, $"The fight begins at {new Centimetres(given.X)}, {new Centimetres(given.Y)}, and a mark there {what}.", "Maybe say with \"mark\" in the floor where it begins.");
                return [];
            }
        }

        if (Keeps(choice.Kept, floor, cameras, k => k.Count == count && (first is null || first == new Spot(k[0].X.Value, k[0].Y.Value))))
        {
            return Told(root, choice.Kept, isKept: true);
        }

        var open = Open(root, floor, cameras, book, first ?? default);
        var legs = new Legs(book);
        if (new MarkSpread(open, legs, [.. floor.Obstacles.Where(o => IsOfUse(o, book.Things))], choice.Seed).Choose(count, first) is { } spots)
        {
            return Told(root, MarkNames.Of(spots, floor, cameras));
        }

        var near = new Centimetres(legs.Least);
        root.Refuse(Field, $"No room was found for {count.ToString(CultureInfo.InvariantCulture)} marks on this floor: at least {near} from one another, {new Centimetres(MarkRule.Room)} from its edge and from what stands there, with a straight clear way from each to the next.", "Maybe ask for fewer, clear something away, or make the floor larger.");
        return [];
    }

    private static IReadOnlyList<HeroMark> OnAWay(ObjectReader root, ObjectReader way, FloorPlan floor, IReadOnlyList<Camera> cameras, Book book, MarkChoice choice)
    {
        var (from, to) = (WayEnds.Of(way, "from", floor), WayEnds.Of(way, "to", floor));
        var count = way.Whole("count", Count);
        way.Finish();
        if (root.Token("floor") is JObject said && said["mark"] is { Type: not JTokenType.Null })
        {
            root.Refuse(Field, "The fight begins where the way does, and the floor names a mark as well.", "Maybe leave out \"mark\" in the floor.");
            return [];
        }

        if (from is null || to is null || (way.Has("count") && count is null))
        {
            return [];
        }

        if (from.Thing == to.Thing && (from.X, from.Y, from.IsExact) == (to.X, to.Y, to.IsExact))
        {
            way.Refuse("to", $"The way begins and ends at {to.Text}.", "Maybe it leads elsewhere; a way there and back is two fights, or a list of marks.");
            return [];
        }

        if (Keeps(choice.Kept, floor, cameras, k => k.Count > 1 && (count ?? k.Count) == k.Count && from.IsAt(new Spot(k[0].X.Value, k[0].Y.Value)) && to.IsAt(new Spot(k[^1].X.Value, k[^1].Y.Value))))
        {
            return Told(root, choice.Kept, isKept: true);
        }

        var legs = new Legs(book);
        var (spots, fault) = MarkWay.Choose(first => Open(root, floor, cameras, book, first), legs, from, to, count, HeroMark.Most, choice.Seed);
        if (spots is not null)
        {
            return Told(root, MarkNames.Of(spots, floor, cameras));
        }

        var (what, maybe) = WayEnds.Why(fault!, from, to, count, new Centimetres(legs.Least));
        way.Refuse(count is not null && fault!.Counts.Count > 0 ? "count" : "to", what, maybe);
        return [];
    }

    /// <summary>The floor as the hero finds it; cameras are seen from the first mark.</summary>
    private static OpenFloor Open(ObjectReader root, FloorPlan floor, IReadOnlyList<Camera> cameras, Book book, Spot first)
    {
        var clearance = book.Settle.EdgeClearance.Value;
        var room = Math.Max(MarkRule.OnTheMark.Value, Camera.Around.Value + clearance);
        return new OpenFloor(floor, clearance, [
            .. cameras.Where(c => c.IsOnTheGround).Select(c => MarkRule.Stands(c, first.X, first.Y)).Select(c => new KeptOff(c.X, c.Y, room, room)),
            .. MarkView.Props(root, first.X, first.Y).Select(p => new KeptOff(p.X, p.Y, ClearOfProp, PassesProp)),
        ]);
    }

    private static bool Keeps(IReadOnlyList<HeroMark> kept, FloorPlan floor, IReadOnlyList<Camera> cameras, Func<IReadOnlyList<HeroMark>, bool> isAsked) =>
        kept.Count > 0 && isAsked(kept) && floor with { MarkX = kept[0].X, MarkY = kept[0].Y } is var there
        && kept.All(k => MarkRule.WhyNotA(k, there) is null && MarkRule.On(k, cameras, there) is null);

    private static bool IsOfUse(Obstacle thing, ThingTable table) =>
        thing.Kind is { } kind && table.Find(kind)?.Uses.Any(u => table.Allows(thing, u)) == true;

    private static IReadOnlyList<HeroMark> Told(ObjectReader root, IReadOnlyList<HeroMark> marks, bool isKept = false)
    {
        var list = string.Join("; ", marks.Select(m => $"{m.Name} ({m.X.Metres.ToString("0.00", CultureInfo.InvariantCulture)}, {m.Y.Metres.ToString("0.00", CultureInfo.InvariantCulture)})"));
        root.Remark(Field, isKept ? $"The marks of the routine are kept: {list}." : $"{marks.Count.ToString(CultureInfo.InvariantCulture)} marks were chosen, in this order: {list}.", isKept ? "Maybe name others, each with x and y, if they are to be elsewhere." : "Maybe another --seed is liked better; or name them, each with x and y.");
        return marks;
    }
}
