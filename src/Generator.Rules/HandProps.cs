using Generator.Domain;
using Generator.Library;
using Generator.Rules.Bodies;

namespace Generator.Rules;

/// <summary>
/// The props of a brief, worked out once: which of them serve a record, and how far they make it reach. Where several of different lengths serve, the near end is that of the longest and the far end that of
/// the shortest, so that the distance is right whichever is in the hand.
/// </summary>
public sealed class HandProps
{
    /// <summary>How far off the middle of the feet something on the floor can be taken up, in centimetres. Common practice, no source.</summary>
    public const int TakesUpWithin = 110;

    private readonly PropKind?[] kinds;
    private readonly Place[] places;

    public HandProps(Brief brief, Book book)
    {
        Parts = brief.Props;
        kinds = [.. brief.Props.Select(p => book.Props.Find(p.Kind))];
        places = [.. brief.Props.Select(p => p.With is null ? new Place(p.X.Value - brief.Floor.MarkX.Value, p.Y.Value - brief.Floor.MarkY.Value) : default)];
    }

    /// <summary>As the brief names them.</summary>
    public IReadOnlyList<PropPart> Parts { get; }

    /// <summary>The fight has props.</summary>
    public bool Any => Parts.Count > 0;

    /// <summary>The kind of a prop; null where the library no longer knows it.</summary>
    public PropKind? KindOf(int prop) => kinds[prop];

    /// <summary>Where a prop lies before the first count, from the first mark.</summary>
    public Place PlaceOf(int prop) => places[prop];

    /// <summary>A prop may be used so, and is held in as many hands.</summary>
    public bool Serves(int prop, PropNeed need) =>
        kinds[prop] is { } kind && kind.Uses.Contains(need.Use) && ((need.Hand ?? need.Into) is not { } hand || hand == PropHand.Both == (kind.Hands == 2));

    /// <summary>Props that serve a need, by number.</summary>
    public IEnumerable<int> Serving(PropNeed need) => Enumerable.Range(0, Parts.Count).Where(p => Serves(p, need));

    /// <summary>Why no prop of the brief serves a need, in whosever hand it is; null where one does, or for no need.</summary>
    public string? WhyNot(PropNeed? need, string name) =>
        need is null || Serving(need).Any() ? null : $"{Words.Cap(name)} needs {PropWords.Of(need.Use)}{PropWords.HeldIn(need.Hand ?? need.Into)}, and the brief has no such prop";

    /// <summary>How much a need adds to the near and the far end of a band, in centimetres.</summary>
    /// <param name="need">What a record is done with; null for nothing.</param>
    /// <param name="own">Where whoever reaches holds it.</param>
    public (int Near, int Far) Longer(PropNeed? need, PropHolder own)
    {
        if (need is null || need.Holder != own || !Any)
        {
            return (0, 0);
        }

        var lengths = Serving(need).Select(p => kinds[p]!.Length.Value).ToList();
        return lengths.Count == 0 ? (0, 0) : need.Reaches ? (lengths.Max(), lengths.Min()) : need.Use == PropUse.Cover ? (0, lengths.Min()) : (0, 0);
    }
}
