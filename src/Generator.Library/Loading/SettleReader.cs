using Generator.Domain;
using Generator.Library.Reading;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Loading;

/// <summary>Reads <c>settle.json</c>. What it leaves out has the default of <see cref="Settle"/>.</summary>
internal static class SettleReader
{
    private static readonly Settle Default = new();

    private static readonly Quantity Turn = new("a turn", 0m, 12m, "half hours");

    private static readonly Quantity Time = new("a time", 0m, 20m, "half counts");

    private static readonly Quantity Distance = new("a distance", 0m, 500m, "cm", "Maybe it is in metres; write centimetres.");

    /// <summary>The settings, and the version that the files give themselves.</summary>
    public static (Settle Settle, string Version) Read(ObjectReader root)
    {
        var version = root.RequiredText("version", "\"version\": \"2026.1\"");
        if (version.Length > 0 && !version.Split('.').All(part => part.Length > 0 && part.All(char.IsAsciiDigit)))
        {
            root.Refuse("version", $"{FieldText.Quote(version)} is no version: figures with points between.", "Maybe write one such as 2026.1.");
        }

        var settle = new Settle
        {
            TurnByGap = ReadTurns(root),
            TurnWhileHeld = root.Whole("turnWhileHeld", Turn) ?? Default.TurnWhileHeld,
            TurnDegreesPerSecond = root.Whole("turnDegreesPerSecond", new Quantity("a speed of turning", 30m, 720m, "degrees a second")) ?? Default.TurnDegreesPerSecond,
            FewestHalfCount = root.Number("fewestHalfCount", new Quantity("a time", 0m, 1m, "s")) ?? Default.FewestHalfCount,
            HandBack = Half("handBack", Default.HandBack),
            ContactAfter = Half("contactAfter", Default.ContactAfter),
            WalkRoundPerHalfHour = Half("walkRoundPerHalfHour", Default.WalkRoundPerHalfHour),
            LeadInMost = Half("leadInMost", Default.LeadInMost),
            LingerUnhurt = Half("lingerUnhurt", Default.LingerUnhurt),
            FollowMost = Length("followMost", Default.FollowMost),
            StrikingDistance = Length("strikingDistance", Default.StrikingDistance),
            Spacing = Length("spacing", Default.Spacing),
            LaneBeside = Length("laneBeside", Default.LaneBeside),
            LaneBesideFall = Length("laneBesideFall", Default.LaneBesideFall),
            BodyRadius = Length("bodyRadius", Default.BodyRadius),
            FastestSent = new(root.Whole("fastestSent", new Quantity("a speed", 50m, 1000m, "cm a second")) ?? Default.FastestSent.Value),
            EdgeClearance = Length("edgeClearance", Default.EdgeClearance),
            SightHalfAngle = root.Whole("sightHalfAngle", Turn) ?? Default.SightHalfAngle,
            ReactionSeconds = root.Number("reactionSeconds", new Quantity("a reaction time", 0.1m, 3m, "s")) ?? Default.ReactionSeconds,
            SecondWithin = root.Whole("secondWithin", Turn) ?? Default.SecondWithin,
            Wardrobe = ReadWardrobe(root),
        };
        root.Finish();
        return (settle, version);

        HalfCounts Half(string field, HalfCounts fallback) => new(root.Whole(field, Time) ?? fallback.Value);

        Centimetres Length(string field, Centimetres fallback) => new(root.Whole(field, Distance) ?? fallback.Value);
    }

    private static IReadOnlyList<int> ReadTurns(ObjectReader root)
    {
        if (root.Token("turnByGap") is not JArray { Count: > 0 } list)
        {
            if (root.Has("turnByGap"))
            {
                root.Refuse("turnByGap", "This must be a list of half hours, one for each gap from 0 up.", "Maybe write [2, 2, 6, 6, 12].");
            }

            return Default.TurnByGap;
        }

        var turns = root.Wholes("turnByGap", list.Count, Turn);
        if (turns is not null && turns.Zip(turns.Skip(1)).Any(p => p.First > p.Second))
        {
            root.Refuse("turnByGap", "A longer gap never allows a smaller turn.", "Maybe the figures are out of order.");
        }

        return turns ?? Default.TurnByGap;
    }

    private static Dictionary<string, IReadOnlyList<string>> ReadWardrobe(ObjectReader root)
    {
        var wardrobe = new Dictionary<string, IReadOnlyList<string>>(StringComparer.Ordinal);
        if (root.Object("wardrobe") is not { } source)
        {
            return wardrobe;
        }

        foreach (var piece in ((JObject)root.Token("wardrobe")!).Properties().Select(p => p.Name))
        {
            foreach (var (value, path) in source.Entries(piece).Where(e => e.Value is not JValue { Value: string word } || !Demand.All.Contains(word, StringComparer.Ordinal)))
            {
                source.Refuse(value, path, $"{FieldText.Of(value)} is nothing that a body can be asked.", NearestWords.Maybe(value.ToString(), Demand.All, $"Maybe one of these is meant: {string.Join(", ", Demand.All)}."));
            }

            wardrobe[piece] = source.Texts(piece);
        }

        return wardrobe;
    }
}
