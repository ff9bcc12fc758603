using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Rules.Rules;

namespace Generator.Paperwork.Text;

/// <summary>What papers say of props: with what a move is done, and where each is afterwards.</summary>
internal static class PropLines
{
    /// <summary>"with the stick", and whatever becomes of any prop in the move.</summary>
    public static IEnumerable<string> Of(Scene scene, Step step)
    {
        foreach (var (_, prop) in Prop.Used(scene, step))
        {
            yield return "with " + InWords(scene, prop);
        }

        foreach (var prop in Changed(step))
        {
            yield return $"{InWords(scene, prop)} {Becomes(scene, step, prop)}";
        }
    }

    /// <summary>What is held in the move by whoever acts, for a part or the wall; null for nothing.</summary>
    public static string? With(Scene scene, Step step)
    {
        var names = Prop.Used(scene, step).Select(u => InWords(scene, u.Prop)).ToList();
        return names.Count == 0 ? null : "with " + string.Join(" and ", names);
    }

    /// <summary>What somebody has in the hand as they come on: "the club in the right hand"; null for nothing.</summary>
    /// <param name="scene">The fight.</param>
    /// <param name="who">Number of the attacker; −1 for the hero.</param>
    public static string? CarriedOn(Scene scene, int who)
    {
        var held = scene.Props.Parts.Where(p => p.With == who).Select(p => $"{Page.Clean(p.InWords)} in {(p.Hand == PropHand.Both ? "both hands" : "the " + Hand(p.Hand))}").ToList();
        return held.Count == 0 ? null : string.Join(" and ", held);
    }

    /// <summary>Numbers of the props of which something becomes in the move.</summary>
    public static IEnumerable<int> Changed(Step step) => Enumerable.Range(0, step.Before.Props.Count).Where(p => step.After.Props[p] != step.Before.Props[p]);

    /// <summary>What the brief calls a prop.</summary>
    public static string NameOf(Scene scene, int prop) => Page.Clean(scene.Props.Parts[prop].Name);

    /// <summary>The same as it stands in a sentence: "the stick".</summary>
    public static string InWords(Scene scene, int prop) => Page.Clean(scene.Props.Parts[prop].InWords);

    /// <summary>Where it is: "in Bruno's right hand", "on the floor at 3 o'clock, 1.20 m from the mark".</summary>
    public static string Where(Scene scene, FightState state, PropState prop) => prop switch
    {
        { Broken: true } => "broken",
        { Holder: PropState.NoOne } => "on the floor at " + Place(scene, state, prop),
        _ => $"in {StepDetails.Name(scene, prop.Holder)}'s {Hand(prop.Hand)}",
    };

    /// <summary>What lies on the floor before the first count, and where. What is carried on is said of who carries it (<see cref="CarriedOn"/>).</summary>
    public static IReadOnlyList<(int Prop, string At)> Lying(Scene scene, Routine routine)
    {
        var open = Replay.Open(scene, routine);
        return [.. Enumerable.Range(0, open.Props.Count).Where(p => open.Props[p].Lies).Select(p => (p, "at " + Place(scene, open, open.Props[p])))];
    }

    private static string Becomes(Scene scene, Step step, int prop) => step.After.Props[prop] switch
    {
        { Broken: true } => "breaks; nobody kneels or falls there until it is swept",
        { Holder: PropState.NoOne } down => "goes to the floor at " + Place(scene, step.After, down),
        var held => $"goes into {StepDetails.Name(scene, held.Holder)}'s {Hand(held.Hand)}",
    };

    private static string Place(Scene scene, FightState state, PropState prop)
    {
        var (bearing, distance) = (prop.Place - scene.Marks[state.Mark]).Seen();
        return $"{Words.Clock(bearing)}, {new Centimetres(distance)} from {StepDetails.TheMark(scene, state.Mark)}";
    }

    private static string Hand(PropHand hand) => hand switch { PropHand.Left => "left hand", PropHand.Right => "right hand", _ => "hands" };
}
