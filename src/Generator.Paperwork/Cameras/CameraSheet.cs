using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Rules;
using Generator.Rules.Sight;

namespace Generator.Paperwork.Cameras;

/// <summary>The camera plan.</summary>
public static class CameraSheet
{
    private const int SetUpWidth = 8;

    private const int MostColumns = 3;

    /// <summary>The whole sheet as plain text of fixed width, ending with a line feed.</summary>
    public static string Of(Scene scene, CameraPlan plan) => Block.TextOf(Blocks(scene, plan));

    /// <summary>What it says, piece by piece.</summary>
    public static IEnumerable<Block> Blocks(Scene scene, CameraPlan plan) =>
    [
        Block.Title("Camera plan: " + scene.Brief.Title),
        Block.Prose(Sum(plan)),
        Block.Rule,
        Block.Caution(Cautions.Sheet),
        Block.Gap,
        Block.Prose(
            $"Non-contact hits only, those that {Page.Clean(scene.Brief.Hero.Name)} takes among them, each as far short as its two performers make it, which is 15 cm as it is taught. A hit sells where the gap between fist and face cannot be seen. Of 15 cm a straight one does within {Words.Number((decimal)Math.Round(MissGeometry.CleanWithin(MissGeometry.Gap)))}° of the line of the blow, just about to {Words.Number((decimal)Math.Round(MissGeometry.TouchesWithin(MissGeometry.Gap)))}°; a swung one where it crosses between lens and face, within 60°. " +
            $"From nearer than {Words.Number((decimal)Math.Round(MissGeometry.NearestLens(MissGeometry.Gap), 1))} m the hand looks more than a twentieth too big: further back on a longer lens sells better. Whoever stands between hides it, and so does a thing that is high enough; one without a kind or a height in the brief is taken to hide nothing. Places are where the routine puts people; look through the lens at quarter speed before you believe it."),
        Block.Gap,
        Block.Heading("Set-ups"),
        .. plan.Places.Count == 0 ? [Block.Item("  ", "none")] : plan.Places.SelectMany((p, i) => SetUpLines(plan, p, i)),
        Block.Gap,
        Block.Heading("Hits"),
        Block.Item("  ", Words.Tags),
        Block.Gap,
        .. plan.Hits.Count == 0 ? [Block.Item("  ", "no hit of this routine is a planned miss")] : Enumerable.Range(0, Math.Max(1, (plan.Places.Count + MostColumns - 1) / MostColumns)).SelectMany(block => Hits(scene, plan, block * MostColumns)),
        .. Unread(scene, plan),
    ];

    internal static string Sum(CameraPlan plan)
    {
        var read = plan.Hits.Count - plan.Unread.Count;
        var given = plan.Given.Count == 0
            ? "The brief names no camera and no audience side"
            : $"{Words.Number(plan.Hits.Count(h => plan.Given.Any(c => Lens.Reads(Lens.Of(SetUp.Of(c), h)))))} of {Words.Many(plan.Hits.Count, "hit")} sell to what the brief names";
        var added = plan.Added.Count == 0 ? string.Empty : $"; with {Words.Many(plan.Added.Count, plan.Given.Count == 0 ? "set-up" : "further set-up")}, the fewest of the grid, {Words.Number(read)} of {Words.Number(plan.Hits.Count)} sell";
        return given + added + ".";
    }

    internal static string Tag(Hit hit) => $"{Words.MoveTag(hit.Move)} {Words.CountTag(hit.Start)}";

    internal static string Name(CameraPlan plan, int place) =>
        place < plan.Given.Count ? Page.Clean(plan.Given[place].Name) : "S" + Words.Number(place - plan.Given.Count + 1);

    private static IEnumerable<Block> SetUpLines(CameraPlan plan, SetUp place, int index)
    {
        var reads = plan.Hits.Where(h => Lens.Reads(Lens.Of(place, h))).Select(Tag).ToList();
        var covers = reads.Count == 0 ? "no hit sells to it" : $"{Words.Many(reads.Count, "hit")}: {string.Join(", ", reads)}";
        return [Block.Item("  ", $"{(index < plan.Given.Count ? Page.Clean(plan.Given[index].Text) : "camera " + Name(plan, index))}: at {Words.Clock(place.Bearing)}, {place.Distance} from the mark, lens at {place.Height}"), Block.Item("      ", covers)];
    }

    private static IEnumerable<Block> Hits(Scene scene, CameraPlan plan, int from)
    {
        var places = Enumerable.Range(from, Math.Max(0, Math.Min(MostColumns, plan.Places.Count - from))).ToList();
        yield return Block.Columns([("MOVE", 4), ("COUNT", 5), ("HIT", 20), ("ON", 11), .. places.Select(p => (Name(plan, p), SetUpWidth))]);
        foreach (var hit in plan.Hits)
        {
            yield return Block.Row(
                [(Words.MoveTag(hit.Move), 4), (Words.CountTag(hit.Start), 5), (Named(scene, hit), 20), (Taker(scene, hit), 11), .. places.Select(p => (Word(Lens.Of(plan.Places[p], hit)), SetUpWidth))]);
        }

        yield return Block.Gap;
    }

    private static IEnumerable<Block> Unread(Scene scene, CameraPlan plan)
    {
        if (plan.Unread.Count == 0)
        {
            yield break;
        }

        yield return Block.Heading("Sell to no camera");
        foreach (var hit in plan.Unread)
        {
            yield return Block.Item("  ", $"{Tag(hit)}: {Named(scene, hit)} on {Taker(scene, hit)} {(hit.OnHero ? "from" : "at")} {Words.Clock(hit.Bearing)}. Turn the exchange, choose a hit that sells from elsewhere, or cut to the reaction.");
        }
    }

    internal static string Named(Scene scene, Hit hit) => hit.OnHero ? $"{hit.Name} by {Page.Clean(scene.Brief.Attackers[hit.Attacker].Name)}" : hit.Name;

    internal static string Taker(Scene scene, Hit hit) => Page.Clean(hit.OnHero ? scene.Brief.Hero.Name : scene.Brief.Attackers[hit.Attacker].Name);

    internal static string Word(Reading reading) => reading switch
    {
        Reading.Clean => "sells",
        Reading.Close => "just",
        Reading.TooNear => "too near",
        Reading.Hidden => "hidden",
        _ => "-",
    };
}
