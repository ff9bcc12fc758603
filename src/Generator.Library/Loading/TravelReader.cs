using Generator.Domain;
using Generator.Library.Files;
using Generator.Library.Reading;

namespace Generator.Library.Loading;

/// <summary>Reads <c>travel</c>, which makes a technique a travel move.</summary>
internal static class TravelReader
{
    private static readonly Quantity Way = new("a way", 0.5m, 20m, "m", "Maybe it is in centimetres; write metres, such as 3.");

    private static readonly Quantity Speed = new("a speed", 0.2m, 7m, "m/s", "Maybe it is in km/h; a walk is about 1.4 m/s.");

    /// <summary>Null where the technique ends on the mark on which it began.</summary>
    public static Travel? Of(ObjectReader source)
    {
        if (source.Object("travel") is not { } travel)
        {
            return null;
        }

        var how = travel.RequiredWord<TravelKind>("how");
        var heads = travel.Window("heads");
        var least = travel.Metres("from", Way) ?? new Centimetres(100);
        var most = travel.Metres("to", Way) ?? new Centimetres(600);
        var speed = (int)(travel.RequiredNumber("speed", Speed) * 100);
        if (least > most)
        {
            travel.Refuse("to", "The longest way is shorter than the shortest.", "Maybe the two are swapped.");
        }

        var result = new Travel(how, heads, least, most, speed, travel.Flag("follows"));
        travel.Finish();
        return result;
    }

    /// <summary>What contradicts itself in a travel move.</summary>
    public static void Check(Technique technique, Settle settle, ObjectReader source)
    {
        if (technique.Travel is not { } travel)
        {
            return;
        }

        if (technique.HasNoTarget != (travel.How == TravelKind.ByWill))
        {
            source.Refuse("travel", technique.HasNoTarget ? "Nobody makes the hero go, and yet it is not by will." : "By will is done to nobody, and this has a partner.", "Maybe \"how\": \"by-will\" and no \"needs\" and \"answers\" are meant, or another way to go.");
        }

        if (travel.Follows && travel.Speed > settle.FastestSent.Value)
        {
            source.Refuse("travel", $"The partner would go {travel.Speed / 100m} m/s, and nobody who is sent or led goes faster than {settle.FastestSent.Value / 100m}.", "Maybe lower the speed.");
        }

        if (technique.CarriesHeld || technique.TakesTwo || technique.Supported)
        {
            source.Refuse("travel", "It concerns somebody beside the partner, whose way nobody knows.", "Maybe leave out carriesHeld, two and supported.");
        }
    }
}
