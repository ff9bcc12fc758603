using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Combining;

/// <summary>
/// The last attacks in a row by one attacker whom the hero's answers have left ready: what a combination may go on from. Moves on anybody else, and moves without an
/// attack, end it; so does an answer that leaves the attacker anything but ready.
/// </summary>
/// <param name="Attacker">Who throws them; −1 while there are none.</param>
/// <param name="Last">The last attack, by its position in the book.</param>
/// <param name="LastContact">Its contact, in half counts from count 1.</param>
/// <param name="Before">The one before it; −1 for none.</param>
/// <param name="BeforeContact">The contact of that one.</param>
public sealed record AttackRun(int Attacker, int Last, int LastContact, int Before, int BeforeContact)
{
    public static readonly AttackRun None = new(-1, -1, 0, -1, 0);

    /// <summary>The run after a move.</summary>
    public AttackRun After(Step step)
    {
        if (step.Attack is null or { IsWalkIn: true } || !step.HasTarget || step.Reaction is not { Posture: Posture.Ready })
        {
            return None;
        }

        return step.Row.Attacker == Attacker
            ? new AttackRun(Attacker, step.Row.Attack, step.Contact, Last, LastContact)
            : new AttackRun(step.Row.Attacker, step.Row.Attack, step.Contact, -1, 0);
    }

    /// <summary>The longest form that a move ends with which this run has begun; null for none.</summary>
    public CombinationForm? EndedBy(CombinationForms forms, Step step)
    {
        CombinationForm? best = null;
        if (Attacker >= 0 && step.HasTarget && step.Row.Attacker == Attacker && step.Row.Attack >= 0)
        {
            foreach (var form in forms.All)
            {
                best = form.Attacks.Count > (best?.Attacks.Count ?? 0) && form.Attacks[^1] == step.Row.Attack && Leads(form, form.Attacks.Count - 1, step.Contact) ? form : best;
            }
        }

        return best;
    }

    /// <summary>These are the attacks of a form before its number <paramref name="next"/> (from 1), soon enough for a contact at <paramref name="contact"/>.</summary>
    public bool Leads(CombinationForm form, int next, int contact) =>
        Last == form.Attacks[next - 1] && IsSoon(LastContact, contact, form.Gap)
        && (next == 1 || (Before == form.Attacks[next - 2] && IsSoon(BeforeContact, LastContact, form.Gap)));

    private static bool IsSoon(int from, int to, int gap) => to > from && to - from <= gap;
}
