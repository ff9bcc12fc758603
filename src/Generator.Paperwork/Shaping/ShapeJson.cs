using Generator.Domain;
using Generator.Library.Files;
using Generator.Rules.Shapes;
using Newtonsoft.Json.Linq;

namespace Generator.Paperwork.Shaping;

/// <summary>The shape of a fight for other programs; counts, seconds and metres as in all files, moves from 1, a moment as its count ("12&amp;").</summary>
public static class ShapeJson
{
    /// <summary>JSON text, ending with a line feed.</summary>
    public static string Of(FightShape shape) => JsonText.Of(new JObject
    {
        ["counts"] = Span(shape.End),
        ["seconds"] = decimal.Round(shape.Seconds, 2),
        ["figures"] = new JArray(Rules.Shapes.Figures.Of(shape).Select(Of)),
        ["intensity"] = new JArray(shape.Intensity.Weight.Select((w, i) => new JObject { ["count"] = Count(i * Intensity.Stretch), ["contacts"] = shape.Intensity.Contacts[i], ["weight"] = w })),
        ["contacts"] = new JArray(shape.Contacts.Select(c => new JObject { ["count"] = Count(c.Time), ["move"] = c.Move, ["attacker"] = Name(shape, c.Attacker), ["byHero"] = c.ByHero, ["lands"] = c.Lands, ["weight"] = c.Weight })),
        ["exchanges"] = new JArray(shape.Exchanges.Select(e => new JObject { ["first"] = e.First, ["moves"] = e.Moves, ["attacker"] = e.Attacker < 0 ? null : Name(shape, e.Attacker) })),
        ["gaps"] = new JObject { ["nPvi"] = shape.Intervals.Npvi is { } npvi ? decimal.Round(npvi, 2) : null, ["equalNeighbours"] = shape.Intervals.EqualPairs, ["neighbours"] = shape.Intervals.Pairs },
        ["flurries"] = new JArray(shape.Flurries.Select(f => new JObject { ["from"] = Count(f.From), ["to"] = Count(f.To), ["contacts"] = f.Contacts, ["restCounts"] = f.Rest is { } rest ? Span(rest) : null })),
        ["onTop"] = new JArray(shape.OnTop.Select(s => new JObject { ["who"] = s.Who.ToString().ToLowerInvariant(), ["from"] = Count(s.From), ["to"] = Count(s.To) })),
        ["setbacks"] = new JArray(shape.Setbacks.Select(s => new JObject { ["move"] = s.Move, ["count"] = Count(s.Time), ["costCounts"] = Span(s.Cost), ["otherwise"] = s.Otherwise, ["beatenAt"] = s.Beaten })),
        ["outs"] = new JArray(shape.Outs.Select(o => new JObject { ["attacker"] = Name(shape, o.Attacker), ["move"] = o.Move, ["count"] = Count(o.Time), ["weight"] = o.Weight, ["runsOff"] = o.RunsOff })),
        ["manners"] = new JObject { ["bits"] = Rounded(shape.Manners.Bits), ["shuffled"] = Rounded(shape.Manners.Shuffled), ["spread"] = Rounded(shape.Manners.Spread) },
        ["combinations"] = new JArray(shape.Combinations.Select(c => new JObject { ["attacker"] = Name(shape, c.Attacker), ["combination"] = c.Combination.Id, ["first"] = c.First, ["moves"] = c.Combination.Attacks.Count })),
        ["levels"] = new JObject { ["high"] = shape.Levels.High, ["middle"] = shape.Levels.Middle, ["low"] = shape.Levels.Low, ["left"] = shape.Levels.Left, ["right"] = shape.Levels.Right },
        ["floorAreas"] = new JObject { ["used"] = shape.Areas.Used, ["of"] = Areas.All },
        ["wear"] = new JArray(shape.Wears.Select(w => Of(shape, w))),
    });

    private static JObject Of(Figure figure) => new()
    {
        ["rule"] = figure.Rule,
        ["id"] = figure.Id,
        ["name"] = figure.Name,
        ["unit"] = FigureWords.Unit(figure),
        ["value"] = Told(figure, figure.Value),
        ["least"] = Told(figure, figure.Least),
        ["most"] = Told(figure, figure.Most),
        ["met"] = figure.IsMet,
        ["lift"] = figure.Lift,
    };

    private static JObject Of(FightShape shape, Wear wear) => new()
    {
        ["performer"] = Name(shape, wear.Performer),
        ["moves"] = wear.Moves,
        ["attacks"] = wear.Attacks,
        ["blows"] = wear.Blows,
        ["headBlows"] = wear.HeadBlows,
        ["falls"] = wear.Falls,
        ["effortSeconds"] = decimal.Round(shape.Scene.Pulse.Slowest.SecondsIn(new HalfCounts(wear.Effort)), 2),
        ["wayMetres"] = wear.Way / 100m,
    };

    private static decimal? Told(Figure figure, int? value) => value is { } v ? FigureWords.Told(figure, v) : null;

    private static decimal Rounded(double value) => Math.Round((decimal)value, 3);

    private static decimal Span(int halfCounts) => halfCounts / (decimal)HalfCounts.PerCount;

    private static string Count(int moment) => new HalfCounts(moment).ToCountText();

    private static string Name(FightShape shape, int performer) => performer < 0 ? shape.Scene.Brief.Hero.Name : shape.Scene.Brief.Attackers[performer].Name;
}
