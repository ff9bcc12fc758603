using Generator.Domain;
using Generator.Rules;

namespace Generator.Solver.Constructing;

/// <summary>Who stands in the way of an attack, and can still be put off.</summary>
internal sealed class Bystanders(Scene scene)
{
    private readonly Lingering lingering = new(scene);

    /// <summary>
    /// Those who would stand ready too close to where the attack is thrown from, one bit each, and can still be put off until it has landed;
    /// null when one of them cannot.
    /// </summary>
    public int? At(Node node, int a, int attack, int bearing, int start)
    {
        var distance = scene.StopDistance(attack, a);
        var contact = start + scene.Settle.ContactAfter.Value;
        var close = 0;
        for (var other = 0; other < scene.Cast; other++)
        {
            var stands = node.State.Attackers[other];
            if (other == a || stands.Gone)
            {
                continue;
            }

            var (ready, apart) = (stands.StandsReadyAt(contact), stands.Apart(bearing, distance));
            if (!ready || apart >= scene.Settle.Spacing.Value)
            {
                continue;
            }

            if (apart < scene.Settle.LaneBeside.Value || contact + 1 - stands.SetsOffAt > lingering.Room(node, other))
            {
                return null;
            }

            close |= 1 << other;
        }

        return close;
    }
}
