using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Rules;
using Generator.Solver.Revising;
using Generator.Solver.Reworking;
using Newtonsoft.Json.Linq;

namespace Generator.Cli.Changes;

/// <summary>Marks that are elsewhere than where a fight was taught, and the ways that are others for it; moves are numbered as in the new routine.</summary>
internal static class MarkLines
{
    public static IEnumerable<string> Of(MarkNews news, Reworked revised)
    {
        foreach (var mark in news.Marks)
        {
            foreach (var line in Page.Hang("  ", $"{(mark.Is.Name.Length == 0 ? "the mark" : Page.Clean(mark.Is.Name))}: was at {mark.Was.X}, {mark.Was.Y}, is at {mark.Is.X}, {mark.Is.Y}{There(mark.Moves)}"))
            {
                yield return line;
            }
        }

        foreach (var way in news.Ways)
        {
            foreach (var line in Page.Hang($"  move {Words.Number(way.Now + 1)}, ", Told(way, revised)))
            {
                yield return line;
            }
        }
    }

    /// <summary>The same for other programs, in metres.</summary>
    public static JObject Json(MarkNews news, Brief brief) => new()
    {
        ["moved"] = new JArray(news.Marks.Select(m => new JObject { ["name"] = m.Is.Name, ["was"] = Place(m.Was), ["is"] = Place(m.Is), ["moves"] = new JArray(m.Moves.Select(i => i + 1)) })),
        ["ways"] = new JArray(news.Ways.Select(w => new JObject
        {
            ["move"] = w.Now + 1,
            ["taught"] = w.Taught + 1,
            ["who"] = new JArray(w.Who.Select(i => Name(brief, i))),
            ["was"] = new JObject { ["bearing"] = w.Was.Bearing.ToClockText(), ["way"] = w.Was.Way.Metres },
            ["is"] = new JObject { ["bearing"] = w.Is.Bearing.ToClockText(), ["way"] = w.Is.Way.Metres },
        })),
    };

    private static string Told(OtherWay way, Reworked revised)
    {
        var brief = revised.Scene.Brief;
        var who = string.Join(" and ", way.Who.Select(i => Page.Clean(Name(brief, i))));
        return way.IsTravel
            ? $"{who} to {Page.Clean(brief.Marks[revised.Routine.Moves[way.Now].To!.Value].Name)}: {way.Is.Way} towards {way.Is.Bearing.ToClockText()}, was {way.Was.Way} towards {way.Was.Bearing.ToClockText()}"
            : $"{who}: from {way.Is.Bearing.ToClockText()}, {way.Is.Way} off; was {way.Was.Bearing.ToClockText()}, {way.Was.Way}";
    }

    private static string Name(Brief brief, int who) => who < 0 ? brief.Hero.Name : brief.Attackers[who].Name;

    private static JArray Place(HeroMark mark) => [mark.X.Metres, mark.Y.Metres];

    private static string There(IReadOnlyList<int> moves)
    {
        string[] told = [.. Consecutive.Runs(moves).Select(r => r.First == r.Last ? Words.Number(r.First + 1) : $"{Words.Number(r.First + 1)} to {Words.Number(r.Last + 1)}")];
        return told.Length == 0 ? string.Empty : $"; {(moves.Count == 1 ? "move" : "moves")} {string.Join(", ", told)} there";
    }
}
