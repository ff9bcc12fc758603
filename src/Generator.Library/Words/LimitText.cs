using Generator.Domain;

namespace Generator.Library.Words;

/// <summary>A limit in words for papers: <c>no-back-fall</c> is "no fall on the back".</summary>
public static class LimitText
{
    private static readonly Dictionary<string, string> Short = new(StringComparer.Ordinal)
    {
        [Limit.On(Demand.LeftHand)] = "nothing with or on the left hand",
        [Limit.On(Demand.RightHand)] = "nothing with or on the right hand",
        [Limit.On(Demand.LeftLeg)] = "nothing with or on the left leg alone",
        [Limit.On(Demand.RightLeg)] = "nothing with or on the right leg alone",
        [Limit.On(Demand.Jump)] = "no jump",
        [Limit.On(Demand.Spin)] = "no spin",
        [Limit.On(Demand.Kneel)] = "no knee on the floor",
        [Limit.On(Demand.Floor)] = "no rolling, lying or hands on the floor",
        [Limit.On(Demand.HighKick)] = "no leg above the hip",
        [Limit.On(Demand.Fall)] = "no fall beyond a knee",
        [Limit.On(Demand.Overhead)] = "no arm above the shoulder",
        [Limit.On(FallClass.ToKnee)] = "no fall to a knee",
        [Limit.On(FallClass.Back)] = "no fall on the back",
        [Limit.On(FallClass.Side)] = "no fall on the side",
        [Limit.On(FallClass.Forward)] = "no fall forward",
        [Limit.On(FallClass.ThrownOver)] = "is not thrown over",
    };

    private static readonly Dictionary<string, string> Acts = new(StringComparer.Ordinal)
    {
        ["load"] = "puts no weight on",
        ["use"] = "does nothing with or on",
        ["carry"] = "carries no weight on",
        ["pivot"] = "does not pivot on",
        ["jump"] = "does not push off with",
        ["land"] = "does not land on",
        ["kneel"] = "does not kneel on",
        ["bend"] = "does not bend deep in",
        ["work"] = "does not swing, strike or twist",
        ["strain"] = "takes no force in",
    };

    /// <summary>All that limits somebody, what they wear last: "no jump", "wears heels".</summary>
    public static IReadOnlyList<string> Of(Performer performer) => [.. performer.Limits.Select(Of), .. performer.Wardrobe.Select(w => "wears " + w.Replace('-', ' '))];

    /// <summary>The limit as people say it; a text that is no limit stays as it is.</summary>
    public static string Of(string limit)
    {
        if (Short.TryGetValue(limit, out var words))
        {
            return words;
        }

        if (PartLimit.Find(limit) is { } part)
        {
            return string.Join(", ", part.Acts.Select(a => Acts[a])) + " the " + part.Part.Replace('-', ' ');
        }

        return Limit.Forbids(limit).Anywhere is not BodyParts.None and var injured ? $"{LoadText.Parts(injured)} is injured: nothing with it or on it" : limit;
    }
}
