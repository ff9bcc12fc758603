using System.Runtime.CompilerServices;
using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Repertoires;

namespace Generator.Solver.Constructing;

/// <summary>What can be done with somebody who opened on a knee: they attack from there until they are met first, and on their feet from then on.</summary>
internal static class Levels
{
    private static readonly ConditionalWeakTable<Menu, Menu[]> Sifted = [];

    /// <summary>The menu as it is where they are now.</summary>
    /// <param name="scene">Whose fight.</param>
    /// <param name="menu">What can be done with them at all.</param>
    /// <param name="attacker">Their number.</param>
    /// <param name="state">How they are.</param>
    public static Menu Of(Scene scene, Menu menu, int attacker, AttackerState state)
    {
        return scene.Brief.Attackers[attacker].Kneels is null ? menu : Both(scene, menu)[state.Posture == Posture.Knelt ? 1 : 0];
    }

    private static Menu[] Both(Scene scene, Menu menu) => Sifted.GetValue(menu, m => [At(scene, m, fromKnee: false), At(scene, m, fromKnee: true)]);

    private static Menu At(Scene scene, Menu menu, bool fromKnee) =>
        menu.Only(c => c.Attack < 0 || scene.Book.Attacks[c.Attack].FromKnee == fromKnee ? c : null);
}
