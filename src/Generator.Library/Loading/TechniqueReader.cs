using Generator.Domain;
using Generator.Library.Reading;
using Generator.Library.Words;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Loading;

/// <summary>Reads one technique.</summary>
internal static class TechniqueReader
{
    private static readonly Quantity Weight = new("a weight", 1m, 5m);

    private static readonly Quantity TurnRange = new("a turn", -23m, 23m, "half hours", "Maybe it is in degrees; one half hour is 15 degrees.");

    /// <param name="source">The record.</param>
    /// <param name="fileFamily">The family that the file gives to all its techniques, if it does.</param>
    public static Technique Read(ObjectReader source, Family? fileFamily)
    {
        var id = source.BaseId();
        var side = source.Word<Side>("side");
        var length = source.Counts();
        var hands = source.Object("hands");
        var technique = new Technique
        {
            Id = Mirror.Id(id, side),
            BaseId = id,
            Name = source.SidedName(side),
            Aliases = source.Texts("aliases"),
            Side = side,
            Family = ReadFamily(source, fileFamily),
            Starts = StanceSet.Of([.. source.SomeWords<Stance>("stances")]),
            EndStance = source.WordOrSame<Stance>("endStance"),
            LeftNeed = hands?.Word<HandNeed>("left") ?? HandNeed.Any,
            RightNeed = hands?.Word<HandNeed>("right") ?? HandNeed.Any,
            LeftEnd = hands?.WordOrSame<HandEnd>("endLeft") ?? HandEnd.Unchanged,
            RightEnd = hands?.WordOrSame<HandEnd>("endRight") ?? HandEnd.Unchanged,
            Bounds = ReadBounds(source),
            EndBound = source.WordOrSame<Bound>("endBound"),
            Window = source.Window("window"),
            Turn = new Turn(source.Whole("turn", TurnRange) ?? 0),
            Carry = source.Word<Carry>("carry") ?? Carry.None,
            Band = source.Band("band", steps: true),
            Length = length ?? new HalfCounts(1),
            FewestSeconds = source.FewestSeconds(length),
            Needs = PostureSet.Of([.. source.Words<Posture>("needs")]),
            Answers = ReadAnswers(source),
            Reactions = source.Texts("reactions"),
            Weight = source.RequiredWhole("weight", Weight),
            HeroSkill = source.Word<Skill>("heroSkill") ?? Skill.Novice,
            AttackerSkill = source.Word<Skill>("attackerSkill") ?? Skill.Novice,
            Kind = source.RequiredWord<ContactKind>("kind"),
            Knap = source.Word<Knap>("knap") ?? Knap.Breath,
            Sells = source.Word<Sells>("sells") ?? Sells.Any,
            Height = source.Word<Height>("height") ?? Height.None,
            Demands = source.Demands(),
            Load = LoadReader.Required(source),
            PartnerLoad = LoadReader.Optional(source, "partnerLoad"),
            SupportLoad = ReadSupport(source),
            HeroFall = source.Word<FallClass>("heroFall") ?? FallClass.None,
            Draws = source.Flag("draws"),
            Supported = source.Flag("supported"),
            Two = TwoReader.Of(source),
            CarriesHeld = source.Flag("carriesHeld"),
            Recovery = source.Flag("recovery"),
            Travel = TravelReader.Of(source),
            Uses = ThingReader.Of(source, ThingPlace.BehindAttacker, ThingPlace.BehindHero, ThingPlace.Between, ThingPlace.BesideHero, ThingPlace.OnTheWay),
            Prop = PropReader.Of(source, PropHolder.Hero, PropHolder.Attacker, PropHolder.Floor),
            Hazard = source.FreeText("hazard"),
            Safety = source.RequiredText("safety", "\"safety\": \"How it is kept safe.\""),
        };
        hands?.Finish();
        source.Finish();
        return technique;
    }

    private static Family ReadFamily(ObjectReader source, Family? fileFamily)
    {
        var own = source.Word<Family>("family");
        if (own is null && fileFamily is null && !source.Has("family"))
        {
            source.Missing("family", "\"family\": \"strike\"");
        }

        return own ?? fileFamily ?? default;
    }

    /// <summary>What it asks of whoever is its base: it must be said where there is one, and cannot be where there is none.</summary>
    private static Load ReadSupport(ObjectReader source)
    {
        const string field = "supportLoad";
        if (source.Token("supported") is JValue { Value: true } || source.Token("carriesHeld") is JValue { Value: true })
        {
            return LoadReader.Required(source, field);
        }

        if (source.Has(field))
        {
            source.Refuse(field, "Nobody is its base: it is neither supported nor carries the held one.", "Maybe \"supported\": true is missing, or \"partnerLoad\" is meant.");
        }

        return default;
    }

    private static BoundSet ReadBounds(ObjectReader source) => source.Has("bound")
        ? source.SomeWords<Bound>("bound").Aggregate(BoundSet.None, (set, bound) => set | (BoundSet)(1 << (int)bound))
        : BoundSet.Free;

    private static LineSet ReadAnswers(ObjectReader source)
    {
        var lines = new List<AttackLine>();
        foreach (var (value, path) in source.Entries("answers"))
        {
            var named = value is JValue { Value: string word } ? LineWords.Parse(word) : [];
            if (named.Count == 0)
            {
                source.Refuse(value, path, $"{FieldText.Of(value)} is no line of attack.", NearestWords.Maybe(value.ToString(), LineWords.All, "Maybe write kind and side, such as high-round-left."));
            }

            lines.AddRange(named);
        }

        return LineSet.Of(lines);
    }
}
