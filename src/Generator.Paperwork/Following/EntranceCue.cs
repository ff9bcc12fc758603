using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Rules;
using Generator.Rules.Bodies;

namespace Generator.Paperwork.Following;

/// <summary>How somebody who is not in play from the start enters.</summary>
/// <param name="From">The way in, or the floor's edge.</param>
/// <param name="SetsOff">Half count in which they set foot on the floor.</param>
/// <param name="Stands">Half count from which they stand at their place and are in play.</param>
internal sealed record EntranceCue(string From, int SetsOff, int Stands)
{
    /// <summary>Null for who is in play from the start.</summary>
    public static EntranceCue? Of(Scene scene, Placement placement, int attacker)
    {
        var (bearing, distance, stands) = (placement.Bearing.HalfHours, placement.Distance.Value, placement.Entrance.Value);
        return Entries.Legs(scene, attacker, bearing, distance, stands) is { } way
            ? new EntranceCue(scene.Entries.To(bearing, distance).From ?? "the floor's edge", SetsOffOn(way, stands), stands)
            : null;
    }

    /// <summary>"in play from the start" or "enters from the pit door at count 3, in play from count 5".</summary>
    public static string Told(Scene scene, Placement placement, int attacker) => Of(scene, placement, attacker)?.Text ?? "in play from the start";

    /// <summary>First half count in which somebody who enters is on the floor.</summary>
    /// <param name="way">The legs of their way.</param>
    /// <param name="stands">Half count from which they are in play.</param>
    public static int SetsOffOn(Leg way, int stands) => (int)Math.Floor(way.Chain().Where(l => l.Kind == LegKind.Enters).Select(l => l.From).DefaultIfEmpty(stands).Min());

    private string Text =>
        $"enters from {Page.Clean(From)} {(SetsOff < 0 ? "on" : "at")} {Words.AtCount(SetsOff)}, in play from {Words.AtCount(Stands)}";
}
