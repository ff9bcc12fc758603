using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Repertoires;

namespace Generator.Solver.Constructing;

/// <summary>The travel moves that lead on to the next mark from where a beginning stands: marks are visited in the order of the brief, one after another, spread over the fight.</summary>
/// <param name="scene">The brief.</param>
/// <param name="repertoire">What can be done.</param>
/// <param name="aims">When a mark is due.</param>
/// <param name="fitting">Fits a move to what is true before it.</param>
/// <param name="walking">Lets somebody come from elsewhere.</param>
/// <param name="dice">Chance.</param>
internal sealed class Travelling(Scene scene, Repertoire repertoire, Aims aims, RowFitting fitting, WalkingRound walking, Dice dice)
{
    /// <summary>Moves by will, and moves with each attacker, that are tried at a time.</summary>
    private const int ByWillTries = 3, PartnerTries = 5;

    /// <summary>Half hours that an attacker walks round at most to drive, drag or throw the hero the right way.</summary>
    private const int MostRound = 5;

    /// <summary>The rows to try.</summary>
    /// <param name="node">Where the search stands.</param>
    /// <param name="longestGap">Half counts that a gap may last.</param>
    /// <param name="mayBeSetback">Another setback is wanted.</param>
    /// <param name="asked">Only what this leaves of a choice with an attacker (−1: with nobody) is tried, all of it and however early that is; null for anything once it is time.</param>
    public IEnumerable<(Row Row, int[] Reactions)> Rows(Node node, int longestGap, bool mayBeSetback, Func<Choice, int, Choice?>? asked)
    {
        var state = node.State;
        if (repertoire.Travels is not { } travels || node.IsOpening || state.Mark >= travels.Count || (asked is null && aims.Progress(state) < aims.TravelsFrom(state.Mark + 1)))
        {
            yield break;
        }

        var menu = travels[state.Mark];
        foreach (var choice in Tried(menu.ByWill, -1, ByWillTries))
        {
            if (fitting.StartOf(state, -1, choice, 0, 0, longestGap, out _, menu.Heading) is >= 0 and var start)
            {
                yield return (new Row(start, -1, -1, Cue.None, -1, choice.Technique, -1, 0) { To = menu.To }, []);
            }
        }

        for (var a = 0; a < scene.Cast; a++)
        {
            var attacker = state.Attackers[a];
            if (!attacker.IsActive)
            {
                continue;
            }

            var soonest = Math.Max(0, node.Threats[a] - scene.Settle.ContactAfter.Value - state.Time);
            foreach (var choice in soonest <= longestGap ? Tried(menu.Answers[a], a, PartnerTries) : [])
            {
                var isSetback = scene.Book.Techniques[choice.Technique].Family == Family.Setback;
                if ((!isSetback || (mayBeSetback && aims.BearsSetback(node, state.Time + soonest))) && Answer(node, a, choice, menu, soonest, longestGap) is { } row)
                {
                    yield return (row, choice.Reactions);
                }
            }

            foreach (var choice in attacker.PostureAt(state.Time) == Posture.Ready ? Tried(menu.Stalks[a], a, PartnerTries) : [])
            {
                if (Leads(state, choice, attacker.Bearing, menu.Heading) && fitting.StartOf(state, a, choice, attacker.Bearing, 0, longestGap, out var cue) is >= 0 and var start)
                {
                    yield return (new Row(start, a, -1, cue, -1, choice.Technique, choice.Reactions[0], 0) { To = menu.To }, choice.Reactions);
                }
            }
        }

        IEnumerable<Choice> Tried(Choice[] choices, int a, int tries) => asked is null ? Drawn(choices, tries) : choices.Select(c => asked(c, a)).OfType<Choice>();
    }

    private Row? Answer(Node node, int a, Choice choice, TravelMenu menu, int soonest, int longestGap)
    {
        var (state, from) = (node.State, -1);
        var bearing = state.Attackers[a].Bearing;
        if (!Leads(state, choice, bearing, menu.Heading))
        {
            var round = new Bearing(bearing).To(new Bearing(Best(choice, menu.Heading))).HalfHours;
            if (Math.Abs(round) is 0 or > MostRound || walking.By(node, a, choice.Attack, round, ref soonest) is not { } other || !Leads(state, choice, other, menu.Heading))
            {
                return null;
            }

            (bearing, from) = (other, other);
        }

        var start = fitting.StartOf(state, a, choice, bearing, soonest, longestGap, out var cue);
        return start < 0 ? null : new Row(start, a, from, cue, choice.Attack, choice.Technique, choice.Reactions[0], 0) { To = menu.To };
    }

    /// <summary>Facing whoever comes from a bearing as the technique wants, the hero goes towards the mark.</summary>
    private bool Leads(FightState state, Choice choice, int bearing, int heading) => Leads(scene, state, choice, bearing, heading);

    /// <inheritdoc cref="Leads(FightState, Choice, int, int)"/>
    public static bool Leads(Scene scene, FightState state, Choice choice, int bearing, int heading)
    {
        var technique = scene.Book.Techniques[choice.Technique];
        var facing = new Bearing(state.Facing) + technique.Window.TurnFor(new Bearing(state.Facing).To(new Bearing(bearing)));
        return technique.Travel!.Heads.Contains(facing.To(new Bearing(heading)));
    }

    /// <summary>The bearing from which a partner leads the hero straight to the mark.</summary>
    private int Best(Choice choice, int heading)
    {
        var technique = scene.Book.Techniques[choice.Technique];
        var (heads, window) = (technique.Travel!.Heads, technique.Window);
        return new Bearing(heading - ((heads.From + heads.To) / 2) + ((window.From + window.To) / 2)).HalfHours;
    }

    private IEnumerable<Choice> Drawn(Choice[] choices, int tries)
    {
        if (choices.Length == 0)
        {
            yield break;
        }

        var (at, stride) = (dice.Next(choices.Length), dice.Stride(choices.Length));
        for (var i = 0; i < Math.Min(tries, choices.Length); i++)
        {
            yield return choices[at];
            at = (at + stride) % choices.Length;
        }
    }
}
