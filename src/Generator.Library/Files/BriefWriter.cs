using Generator.Domain;
using Generator.Library.Reading;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Files;

/// <summary>Writes a brief as JSON, every value in full; what is null is left out, and an empty list where it says nothing. Reading it gives the same brief.</summary>
public static class BriefWriter
{
    /// <summary>The text of a <c>.brief.json</c> file.</summary>
    public static string Text(Brief brief) => JsonText.Of(Object(brief));

    /// <summary>The brief as it stands inside a routine.</summary>
    public static JObject Object(Brief brief) => Fields(
        ("title", brief.Title),
        ("tempo", brief.Music is { Passages: { Count: > 0 } passages } ? new JArray(passages.Select(Passage)) : brief.Tempo.CountsPerMinute),
        ("holds", List((brief.Music?.Holds ?? []).Select(h => Fields(("count", Count(h.At)), ("seconds", h.Seconds), ("counts", h.Counts))))),
        ("accents", List((brief.Music?.Accents ?? []).Select(Count))),
        ("length", brief.Length is { } length ? Fields(("counts", length.Counts), ("moves", length.Moves), ("tolerance", length.Tolerance)) : null),
        ("floor", Floor(brief.Floor)),
        ("marks", List(brief.Marks.Select(m => Fields(("name", m.Name), ("x", Metres(m.X)), ("y", Metres(m.Y)))))),
        ("hero", Hero(brief.Hero)),
        (Ally.Word, brief.Ally is { } ally ? Hero(ally.Part, ("bearing", Clock(ally.Bearing)), ("distance", Metres(ally.Distance)), ("facing", Clock(ally.Faces))) : null),
        ("attackers", new JArray(brief.Attackers.Select(Attacker))),
        ("cameras", List(brief.Cameras.Select(c => Fields(("name", c.Name), ("bearing", Clock(c.Bearing)), ("distance", Metres(c.Distance)), ("height", Metres(c.Height)))))),
        ("props", List(brief.Props.Select(p => Prop(brief, p)))),
        ("moments", List(brief.Moments.Select(Moment))),
        ("style", brief.Style),
        ("arc", EnumWords.Of(brief.Arc)),
        ("acts", brief.Acts is { } acts ? new JArray(acts.Select(a => Fields(("share", a.Percent / 100m), ("hero", EnumWords.Of(a.Hero)), ("setbacks", a.Setbacks), (HurtWords.Hurts, a.Hurts?.Text)))) : null),
        ("judged", brief.Judged is { } judged ? new JArray(judged.Select(EnumWords.Of)) : null),
        ("signature", brief.Signature),
        ("avoid", Wishes(brief, brief.Avoid)),
        ("favour", Wishes(brief, brief.Favour)),
        ("setbacks", brief.Setbacks),
        ("pauses", brief.Pauses),
        ("answered", brief.AnsweredPercent / 100m),
        ("pace", Fields(("patienceCounts", Span(brief.Pace.Patience)), ("longestPauseCounts", Span(brief.Pace.LongestPause)), ("lingerCounts", Span(brief.Pace.Linger)))),
        ("safety", Fields(
            ("marginCounts", Span(brief.Safety.Margin)),
            ("runs", brief.Safety.Runs),
            ("fallsPerDay", brief.Safety.FallsPerDay),
            ("headHitsPerDay", brief.Safety.HeadHitsPerDay))),
        ("ending", brief.Ending is { } ending ? Fields(("out", new JArray(ending.Out)), ("last", ending.Last)) : null));

    /// <summary>An object of the fields that have a value, in this order.</summary>
    internal static JObject Fields(params ReadOnlySpan<(string Name, JToken? Value)> fields)
    {
        var written = new JObject();
        foreach (var (name, value) in fields)
        {
            if (value is not (null or JValue { Value: null }))
            {
                written.Add(name, value);
            }
        }

        return written;
    }

    internal static JValue Clock(Bearing bearing) => new(bearing.ToClockText());

    internal static JValue Metres(Centimetres length) => new(length.Metres);

    internal static JValue Span(HalfCounts span) => new(span.Value / 2m);

    /// <summary>A count of the fight, always as text, so that other programs find one kind of value whether it is whole or half.</summary>
    internal static JValue Count(HalfCounts moment) => new(moment.ToCountText());

    private static string? Knee(Side? knee) => knee is { } side ? EnumWords.Of(side) : null;

    private static JArray? List(IEnumerable<JToken> entries) => entries.ToArray() is { Length: > 0 } some ? new JArray(some) : null;

    /// <summary>Beside a style an empty list says that there are none; left out, the style would fill it.</summary>
    private static JArray? Wishes(Brief brief, IReadOnlyList<string> words) => words.Count > 0 || brief.Style is not null ? new JArray(words) : null;

    private static JObject Floor(FloorPlan floor) => Fields(
        ("width", Metres(floor.Width)),
        ("depth", Metres(floor.Depth)),
        ("mark", new JArray(Metres(floor.MarkX), Metres(floor.MarkY))),
        ("surface", EnumWords.Of(floor.Surface)),
        ("obstacles", List(floor.Obstacles.Select(o => Fields(
            ("name", o.Name), ("kind", o.Kind), ("x", Metres(o.X)), ("y", Metres(o.Y)), ("width", Metres(o.Width)), ("depth", Metres(o.Depth)),
            ("height", o.Height is { } height ? Metres(height) : null), ("rated", o.Rated ? true : null), ("padded", o.Padded ? true : null))))),
        ("mats", List(floor.Mats.Select(m => Fields(("name", m.Name), ("x", Metres(m.X)), ("y", Metres(m.Y)), ("width", Metres(m.Width)), ("depth", Metres(m.Depth)))))),
        ("waysIn", List(floor.WaysIn.Select(w => Fields(("name", w.Name), ("x", Metres(w.X)), ("y", Metres(w.Y)))))));

    private static JObject Performer(Performer performer, params ReadOnlySpan<(string Name, JToken? Value)> own) => Fields(
        [
            ("name", performer.Name),
            ("height", Metres(performer.Height)),
            ("arm", performer.Arm is { } arm ? Metres(arm) : null),
            ("leg", performer.Leg is { } leg ? Metres(leg) : null),
            ("skill", EnumWords.Of(performer.Skill)),
            ("manner", performer.Manner),
            .. own,
            ("limits", List(performer.Limits.Select(l => new JValue(l)))),
            ("wardrobe", List(performer.Wardrobe.Select(w => new JValue(w)))),
            ("fallsPerRun", performer.FallsPerRun),
        ]);

    private static JObject Hero(HeroPart hero, params ReadOnlySpan<(string Name, JToken? Value)> own) =>
        Performer(hero, [("lead", hero.Lead is { } lead ? EnumWords.Of(lead) : "none"), ("kneels", Knee(hero.Kneels)), .. own]);

    private static JObject Attacker(AttackerPart attacker) => Performer(
        attacker,
        ("bearing", attacker.Bearing is { } bearing ? Clock(bearing) : null),
        ("distance", attacker.Distance is { } distance ? Metres(distance) : null),
        ("speed", attacker.Speed / 100m),
        ("share", attacker.SharePercent / 100m),
        ("entrance", attacker.Entrance is { } entrance ? Count(entrance) : null),
        ("kneels", Knee(attacker.Kneels)));

    private static JObject Prop(Brief brief, PropPart prop) => prop.With is { } who
        ? Fields(("name", prop.Name), ("kind", prop.Kind), ("with", who < 0 ? brief.Hero.Name : brief.Attackers[who].Name), ("hand", EnumWords.Of(prop.Hand)))
        : Fields(("name", prop.Name), ("kind", prop.Kind), ("x", Metres(prop.X)), ("y", Metres(prop.Y)));

    private static JObject Passage(Passage passage) =>
        Fields(("from", Count(passage.From)), ("tempo", passage.Tempo.CountsPerMinute), ("over", passage.Over == HalfCounts.Zero ? null : Span(passage.Over)));

    private static JObject Moment(Moment moment)
    {
        var counts = moment.Earliest is null && moment.Latest is null
            ? null
            : new JArray(new[] { moment.Earliest, moment.Latest }.Select(c => c is { } count ? Count(count) : JValue.CreateNull()));
        if (moment.Moves.Count != 1)
        {
            return Fields(("moves", new JArray(moment.Moves.Select(Move))), ("counts", counts));
        }

        var written = Move(moment.Moves[0]);
        if (counts is not null)
        {
            written.Add("counts", counts);
        }

        return written;
    }

    private static JObject Move(MomentMove move) =>
        Fields(("technique", move.Technique), ("attacker", move.Attacker), ("attack", move.Attack), ("reaction", move.Reaction));
}
