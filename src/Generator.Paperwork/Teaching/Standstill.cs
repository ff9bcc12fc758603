using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Rules;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.Teaching;

/// <summary>How everybody stands when a phrase stops, in words.</summary>
internal static class Standstill
{
    /// <param name="scene">The brief and the library worked out.</param>
    /// <param name="state">After the last move of the phrase.</param>
    /// <param name="moment">When the next phrase goes on, or the end of the last move.</param>
    public static string Of(Scene scene, FightState state, int moment)
    {
        var hero = $"{Page.Clean(scene.Brief.Hero.Name)}: {Words.Of(state.Stance)}, facing {Words.Clock(state.Facing)}{Hand(scene, "left", state.Left)}{Hand(scene, "right", state.Right)}{(state.Bound == Bound.Free ? string.Empty : ", seized")}";
        var others = state.Attackers.Select((a, i) => (Name: Page.Clean(scene.Brief.Attackers[i].Name), Words: Attacker(a, moment)));
        return string.Join("; ", others.Select(o => $"{o.Name}: {o.Words}").Prepend(hero));
    }

    private static string Hand(Scene scene, string side, Hand hand) => hand.Kind switch
    {
        HandKind.Holding => $", {side} hand holds {Page.Clean(scene.Brief.Attackers[hand.Who].Name)}",
        HandKind.Held => $", {side} hand held by {Page.Clean(scene.Brief.Attackers[hand.Who].Name)}",
        HandKind.Out => $", {side} hand out",
        _ => string.Empty,
    };

    private static string Attacker(AttackerState attacker, int moment)
    {
        var clock = Words.Clock(attacker.Bearing);
        if (attacker.Posture == Posture.Out)
        {
            return attacker.Gone ? "gone" : $"out at {clock}";
        }

        if (attacker.Entrance > moment)
        {
            return "not in play yet";
        }

        return attacker.PostureAt(moment) switch
        {
            null => $"recovering at {clock}",
            { } posture => $"{Words.Of(posture)} at {clock}",
        };
    }
}
