using Generator.Domain;
using Generator.Library.Words;
using Generator.Paperwork.Following;
using Generator.Rules;

namespace Generator.Paperwork.Text;

/// <summary>Who is in the fight: heights, skill, and where each one opens.</summary>
internal static class CastLines
{
    private const int LongestName = 24;

    public static IEnumerable<string> Of(Scene scene, IReadOnlyList<Placement> placements)
    {
        var brief = scene.Brief;
        var width = Math.Min(LongestName, brief.Attackers.Select(a => Page.LengthOf(a.Name)).Append(Page.LengthOf(brief.Hero.Name)).Append(Page.LengthOf(brief.Ally?.Part.Name ?? string.Empty)).Max());
        yield return "CAST";
        var hero = brief.Hero;
        var opening = $"the hero, on the mark, facing 12 o'clock, {Words.Of(hero.OpeningStance)}{CarriesOn(scene, -1)}{Limits(scene, hero)}";
        foreach (var line in One(string.Empty, hero, opening, width))
        {
            yield return line;
        }

        foreach (var line in brief.Ally is { } ally ? One(string.Empty, ally.Part, AllyWords.Opens(brief, ally) + Limits(scene, ally.Part), width) : [])
        {
            yield return line;
        }

        for (var i = 0; i < brief.Attackers.Count; i++)
        {
            var attacker = brief.Attackers[i];
            foreach (var line in One(Words.Sign(i), attacker, (i < placements.Count ? Opens(scene, placements[i], i) : "nowhere") + CarriesOn(scene, i) + Limits(scene, attacker), width))
            {
                yield return line;
            }
        }
    }

    private static IEnumerable<string> One(string number, Performer performer, string rest, int width) =>
        Page.Row(2, (number, 2), (performer.Name, width), (performer.Height.ToString(), 6), (Words.Of(performer.Skill), 7), (rest, Page.Width - width - 25));

    private static string Opens(Scene scene, Placement placement, int attacker) =>
        $"opens at {Words.Clock(placement.Bearing)}, {placement.Distance} from {StepDetails.TheMark(scene, 0)}, {EntranceCue.Told(scene, placement, attacker)}{StepDetails.OnTheKnee(scene.Brief.Attackers[attacker])}";

    private static string CarriesOn(Scene scene, int who) => PropLines.CarriedOn(scene, who) is { } held ? "; carries on " + held : string.Empty;

    private static string Limits(Scene scene, Performer performer)
    {
        IReadOnlyList<string> limits = LimitText.Of(performer);
        var falls = performer.FallsPerRun is { } f ? "; at most " + Words.Many(f, "fall") + " a run" : string.Empty;
        return (StyleWords.Of(scene, performer) is { } manner ? "; manner: " + manner : string.Empty) + (limits.Count > 0 ? "; " + string.Join(", ", limits) : string.Empty) + falls;
    }
}
