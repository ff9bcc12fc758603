using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Rules;
using Generator.Rules.Sight;

namespace Generator.Paperwork.Cameras;

/// <summary>The camera plan as plain text of fixed width.</summary>
public static class CameraSheet
{
    private const int SetUpWidth = 8;

    private const int MostColumns = 3;

    /// <summary>The whole sheet, ending with a line feed.</summary>
    public static string Of(Scene scene, CameraPlan plan) => string.Concat(Lines(scene, plan).Select(l => l + "\n"));

    private static IEnumerable<string> Lines(Scene scene, CameraPlan plan) =>
    [
        .. Page.Wrap("Camera plan: " + scene.Brief.Title, Page.Width),
        .. Page.Wrap(Sum(plan), Page.Width),
        Page.Line('='),
        .. Page.Wrap(Cautions.Sheet, Page.Width),
        string.Empty,
        .. Page.Wrap(
            $"Non-contact hits only, those that {Page.Clean(scene.Brief.Hero.Name)} takes among them, fist or foot 15 cm short. A straight one reads within {Words.Number((decimal)Math.Round(MissGeometry.CleanWithin(MissGeometry.Gap)))}° of the line of the blow, just about to {Words.Number((decimal)Math.Round(MissGeometry.TouchesWithin(MissGeometry.Gap)))}°; a swung one while it crosses between lens and face, within 60°. " +
            $"From nearer than {Words.Number((decimal)Math.Round(MissGeometry.NearestLens(MissGeometry.Gap), 1))} m the hand looks more than a twentieth too big: further back on a longer lens sells better. Places are where the routine puts people; look through the lens at quarter speed before you believe it.",
            Page.Width),
        string.Empty,
        "SET-UPS",
        .. plan.Places.Count == 0 ? ["  none"] : plan.Places.SelectMany((p, i) => SetUpLines(plan, p, i)),
        string.Empty,
        "HITS",
        .. Page.Hang("  ", Words.Tags),
        string.Empty,
        .. plan.Hits.Count == 0 ? ["  no hit of this routine is a planned miss"] : Enumerable.Range(0, Math.Max(1, (plan.Places.Count + MostColumns - 1) / MostColumns)).SelectMany(block => Hits(scene, plan, block * MostColumns)),
        .. Unread(scene, plan),
    ];

    private static string Sum(CameraPlan plan)
    {
        var read = plan.Hits.Count - plan.Unread.Count;
        var given = plan.Given.Count == 0
            ? "The brief names no camera and no audience side"
            : $"{Words.Number(plan.Hits.Count(h => plan.Given.Any(c => Lens.Reads(Lens.Of(SetUp.Of(c), h)))))} of {Words.Many(plan.Hits.Count, "hit")} read from what the brief names";
        var added = plan.Added.Count == 0 ? string.Empty : $"; with {Words.Many(plan.Added.Count, plan.Given.Count == 0 ? "set-up" : "further set-up")}, the fewest of the grid, {Words.Number(read)} of {Words.Number(plan.Hits.Count)} read";
        return given + added + ".";
    }

    private static string Tag(Hit hit) => $"{Words.MoveTag(hit.Move)} {Words.CountTag(hit.Start)}";

    private static string Name(CameraPlan plan, int place) =>
        place < plan.Given.Count ? Page.Clean(plan.Given[place].Name) : "S" + Words.Number(place - plan.Given.Count + 1);

    private static IEnumerable<string> SetUpLines(CameraPlan plan, SetUp place, int index)
    {
        var reads = plan.Hits.Where(h => Lens.Reads(Lens.Of(place, h))).Select(Tag).ToList();
        var covers = reads.Count == 0 ? "no hit reads from here" : $"{Words.Many(reads.Count, "hit")}: {string.Join(", ", reads)}";
        return [.. Page.Hang("  ", $"{(index < plan.Given.Count ? Page.Clean(plan.Given[index].Text) : "camera " + Name(plan, index))}: at {Words.Clock(place.Bearing)}, {place.Distance} from the mark, lens at {place.Height}"), .. Page.Hang("      ", covers)];
    }

    private static IEnumerable<string> Hits(Scene scene, CameraPlan plan, int from)
    {
        var places = Enumerable.Range(from, Math.Max(0, Math.Min(MostColumns, plan.Places.Count - from))).ToList();
        foreach (var line in Page.Row(2, [("MOVE", 4), ("COUNT", 5), ("HIT", 20), ("ON", 11), .. places.Select(p => (Name(plan, p), SetUpWidth))]))
        {
            yield return line;
        }

        foreach (var hit in plan.Hits)
        {
            foreach (var line in Page.Row(
                2,
                [(Words.MoveTag(hit.Move), 4), (Words.CountTag(hit.Start), 5), (Named(scene, hit), 20), (Taker(scene, hit), 11), .. places.Select(p => (Word(Lens.Of(plan.Places[p], hit)), SetUpWidth))]))
            {
                yield return line;
            }
        }

        yield return string.Empty;
    }

    private static IEnumerable<string> Unread(Scene scene, CameraPlan plan)
    {
        if (plan.Unread.Count == 0)
        {
            yield break;
        }

        yield return "READ FROM NOWHERE";
        foreach (var hit in plan.Unread)
        {
            foreach (var line in Page.Hang("  ", $"{Tag(hit)}: {Named(scene, hit)} on {Taker(scene, hit)} {(hit.OnHero ? "from" : "at")} {Words.Clock(hit.Bearing)}. Turn the exchange, choose a hit that sells from elsewhere, or cut to the reaction."))
            {
                yield return line;
            }
        }
    }

    private static string Named(Scene scene, Hit hit) => hit.OnHero ? $"{hit.Name} by {Page.Clean(scene.Brief.Attackers[hit.Attacker].Name)}" : hit.Name;

    private static string Taker(Scene scene, Hit hit) => Page.Clean(hit.OnHero ? scene.Brief.Hero.Name : scene.Brief.Attackers[hit.Attacker].Name);

    private static string Word(Reading reading) => reading switch
    {
        Reading.Clean => "reads",
        Reading.Close => "just",
        Reading.TooNear => "too near",
        Reading.Hidden => "hidden",
        _ => "-",
    };
}
