using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Loading;

/// <summary>Reads one attack.</summary>
internal static class AttackReader
{
    private static readonly string[] Arrivals = ["half step", "step", "leap", "walk", "rush", "drop"];

    private static readonly Quantity Start = new("a distance", 20m, 2000m, "cm", "Maybe it is in metres; write centimetres.");

    private static readonly Quantity Open = new("a time", 0m, 30m, "s");

    public static Attack Read(ObjectReader source)
    {
        var id = source.BaseId();
        var side = source.Word<Side>("side");
        var length = source.Counts();
        var grips = source.Object("grips");
        var miss = source.Object("miss");
        if (miss is null && !source.Has("miss"))
        {
            source.Missing("miss", "\"miss\": { \"posture\": \"off-balance\", \"openSeconds\": 0.6 }");
        }

        var attack = new Attack
        {
            Id = Mirror.Id(id, side),
            BaseId = id,
            Name = source.SidedName(side),
            Aliases = source.Texts("aliases"),
            Side = side,
            LimbWords = source.RequiredText("limb", "\"limb\": \"fist\""),
            Line = source.Line(),
            HeroStances = StanceSet.Of([.. source.SomeWords<Stance>("stances")]),
            From = source.Window("from"),
            StartDistance = new(source.RequiredWhole("startDistance", Start)),
            Contact = source.Band("band", steps: false),
            Length = length ?? new HalfCounts(1),
            FewestSeconds = source.FewestSeconds(length),
            Arrives = ReadArrival(source),
            GripsLeft = grips?.WordOrSame<HandEnd>("left"),
            GripsRight = grips?.WordOrSame<HandEnd>("right"),
            GripsBound = grips?.RequiredWord<Bound>("bound"),
            GripsStance = grips?.WordOrSame<Stance>("stance"),
            NonContact = source.Flag("nonContact"),
            Demands = source.Demands(),
            Load = LoadReader.Required(source),
            MissPosture = miss?.RequiredWord<Posture>("posture") ?? Posture.Ready,
            MissOpenSeconds = miss?.RequiredNumber("openSeconds", Open) ?? 0m,
            LeavesOpen = source.FreeText("leavesOpen"),
            Uses = ThingReader.Of(source, ThingPlace.BehindAttacker, ThingPlace.BehindHero, ThingPlace.Between, ThingPlace.BesideHero),
            Prop = PropReader.Of(source, PropHolder.Attacker, PropHolder.Floor),
            Hazard = source.FreeText("hazard"),
            Safety = source.RequiredText("safety", "\"safety\": \"How it is kept safe.\""),
        };
        grips?.Finish();
        miss?.Finish();
        source.Finish();
        return attack;
    }

    private static string ReadArrival(ObjectReader source)
    {
        var word = source.RequiredText("arrives", "\"arrives\": \"step\"");
        if (word.Length > 0 && !Arrivals.Contains(word, StringComparer.Ordinal))
        {
            source.Refuse("arrives", $"{FieldText.Quote(word)} is no way of coming in.", NearestWords.Maybe(word, Arrivals, $"Maybe one of these is meant: {string.Join(", ", Arrivals)}."));
        }

        return word;
    }
}
