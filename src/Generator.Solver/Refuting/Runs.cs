using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;

namespace Generator.Solver.Refuting;

/// <summary>
/// Moves of one hero moment on the same attacker, one straight after the other. Proves that the distance or posture in which each leaves the attacker is none from
/// which the next works.
/// <para>Sound because nothing else happens between them: the attacker stands where the reaction left them unless they come again with an attack, for which any
/// distance will do here, and because every version of each move with every reaction is followed.</para>
/// </summary>
internal static class Runs
{
    public static IEnumerable<string> Against(Workings workings)
    {
        foreach (var moment in workings.Moments.Where(m => m.IsPossible && m.Moment.Moves.Count > 1))
        {
            var moves = moment.Moment.Moves;
            var places = After(workings.Scene, moves[0], null);
            for (var i = 1; i < moves.Count; i++)
            {
                var next = After(workings.Scene, moves[i], places);
                if (places.Count > 0 && next.Count == 0)
                {
                    yield return $"In the hero moment {moment.Name}, {moves[i].Technique} cannot follow {moves[i - 1].Technique}: that leaves the attacker {Where(places)} from the mark, {Misses(workings.Scene, moves[i], places)}.";
                    break;
                }

                places = next;
            }
        }
    }

    private static string Misses(Scene scene, MomentMove move, HashSet<Place> places)
    {
        var reaches = Enumerable.Range(0, scene.Book.Techniques.Count).Where(t => scene.Book.Techniques[t].GoesBy(move.Technique))
            .SelectMany(t => Enumerable.Range(0, scene.Cast).Select(a => scene.TechniqueReach(t, a))).ToList();
        var (least, most) = (reaches.Min(r => r.Least), reaches.Max(r => r.Most) + scene.Settle.FollowMost.Value);
        return places.Max(p => p.Far) < least ? $"and it needs {new Centimetres(least)} at least"
            : places.Min(p => p.Near) > most ? $"and it reaches {new Centimetres(most)} at the most"
            : "or in a posture that it does not suit";
    }

    private static string Where(HashSet<Place> places) =>
        $"{new Centimetres(places.Min(p => p.Near))}{(places.Max(p => p.Far) is var far && far > places.Min(p => p.Near) ? $" to {new Centimetres(far)}" : string.Empty)}";

    /// <summary>Where the move can leave its attacker.</summary>
    /// <param name="scene">The brief, worked out.</param>
    /// <param name="wanted">The move.</param>
    /// <param name="before">Where the move before it left its own; null for anywhere.</param>
    private static HashSet<Place> After(Scene scene, MomentMove wanted, HashSet<Place>? before)
    {
        var after = new HashSet<Place>();
        for (var t = 0; t < scene.Book.Techniques.Count; t++)
        {
            var technique = scene.Book.Techniques[t];
            if (!technique.GoesBy(wanted.Technique) || scene.Able.WhyNotTechnique(t) is not null)
            {
                continue;
            }

            if (technique.HasNoTarget)
            {
                after.Add(Place.Anywhere(-1));
                continue;
            }

            for (var a = 0; a < scene.Cast; a++)
            {
                if ((wanted.Attacker is null || wanted.Attacker == scene.Brief.Attackers[a].Name) && scene.Able.WhyNotOn(t, a) is null)
                {
                    foreach (var (near, far, posture) in Finds(scene, t, a, wanted, before))
                    {
                        after.UnionWith(Left(scene, t, a, wanted, near, far, posture));
                    }
                }
            }
        }

        return after;
    }

    /// <summary>Distances and postures in which the move can find the attacker.</summary>
    private static IEnumerable<(int Near, int Far, Posture Posture)> Finds(Scene scene, int t, int a, MomentMove wanted, HashSet<Place>? before)
    {
        var (technique, reach) = (scene.Book.Techniques[t], scene.TechniqueReach(t, a));
        for (var k = 0; k < scene.Book.Attacks.Count && !wanted.WantsNoAttack; k++)
        {
            var attack = scene.Book.Attacks[k];
            if ((wanted.Attack is null || attack.GoesBy(wanted.Attack)) && scene.Able.WhyNotAttack(k, a) is null && technique.Meets(attack)
                && scene.ContactDistance(k, t, a) is var at && at >= reach.Least && at <= reach.Most)
            {
                yield return (at, at, Posture.Ready);
            }
        }

        if (wanted.Attack is not null && !wanted.WantsNoAttack)
        {
            yield break;
        }

        foreach (var place in before ?? [Place.Anywhere(a)])
        {
            // Somebody whom the move before did not concern may be anywhere and in any posture.
            var known = before is not null && place.Attacker == a && place.Posture is not null;
            var (near, far) = known ? (Math.Max(place.Near, reach.Least), Math.Min(place.Far, reach.Most + scene.Settle.FollowMost.Value)) : (Math.Max(0, reach.Least), reach.Most);
            if (near > far)
            {
                continue;
            }

            foreach (var posture in known ? [place.Posture!.Value] : Enum.GetValues<Posture>())
            {
                if (technique.MayFind(posture) || (known && !posture.IsControlled() && posture != Posture.Out && technique.Needs.Contains(Posture.Ready)))
                {
                    yield return (near, far, posture);
                }
            }
        }
    }

    private static IEnumerable<Place> Left(Scene scene, int t, int a, MomentMove wanted, int near, int far, Posture posture)
    {
        var technique = scene.Book.Techniques[t];
        if (technique.Reactions.Count == 0)
        {
            yield return Place.Anywhere(a);
        }

        foreach (var r in technique.Reactions.Select(scene.Book.ReactionIndex))
        {
            var reaction = scene.Book.Reactions[r];
            if ((wanted.Reaction is not null && wanted.Reaction != reaction.Id) || scene.Able.WhyNotReaction(r, a) is not null)
            {
                continue;
            }

            // What a hold comes to hangs on the hero's hands, which are not followed here.
            var to = reaction.Posture ?? posture;
            int Lands(int from) => Effects.CarriedTo(scene, t, a, reaction, to, from);
            yield return new Place(a, Lands(near), Lands(far), to.IsTied() ? null : to);
        }
    }

    /// <summary>Where a move leaves its attacker.</summary>
    /// <param name="Attacker">−1 for a move without one.</param>
    /// <param name="Near">Nearest distance from the mark in centimetres.</param>
    /// <param name="Far">Farthest.</param>
    /// <param name="Posture">Null where it is not followed, nor is the distance then.</param>
    private sealed record Place(int Attacker, int Near, int Far, Posture? Posture)
    {
        public static Place Anywhere(int attacker) => new(attacker, 0, int.MaxValue / 2, null);
    }
}
