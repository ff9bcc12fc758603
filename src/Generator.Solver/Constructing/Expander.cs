using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Repertoires;
using Generator.Solver.Reworking;

namespace Generator.Solver.Constructing;

/// <summary>Makes the beginnings that are longer by one move: each allowed by every rule so far. One for each lane of the search.</summary>
/// <param name="ground">What every run shares.</param>
/// <param name="dice">Its own chance.</param>
/// <param name="guide">An older routine whose moves are tried first; null for none.</param>
/// <param name="thorough">Tries everything, in a fixed order, instead of a sample.</param>
/// <param name="fetching">How attackers are brought into sight for a hero moment that is coming; null for not at all.</param>
internal sealed partial class Expander(Ground ground, Dice dice, Guide? guide = null, bool thorough = false, Fetching? fetching = null)
{
    /// <summary>Moves tried to go on with the attacker of the last one.</summary>
    private const int FollowUpTries = 12;

    /// <summary>Openings tried on all attackers together, and the most and fewest on one of them.</summary>
    private const int AllOpeningTries = 28;

    private const int MostOpeningTries = 10;

    private const int FewestOpeningTries = 3;

    private const int OtherTries = 3;

    /// <summary>Answers tried that may be out of manner or avoided, where there are others.</summary>
    private const int UnsuitingTries = 1;

    /// <summary>Moves tried that begin a combination or go on with one.</summary>
    private const int CombiningTries = 5;

    /// <summary>Moves tried of each kind that lead to a hero moment: with all of them beams took half as long again.</summary>
    private const int LeadTries = 40;

    /// <summary>Of finishes that make a poor end so many in a hundred are not tried.</summary>
    private const int PoorFinishLeftOut = 85;

    private readonly Scene scene = ground.Scene;
    private readonly Repertoire repertoire = ground.Repertoire;
    private readonly Aims aims = ground.Aims;
    private readonly RowFitting fitting = new(ground.Scene, ground.Repertoire);
    private readonly Lingering lingering = new(ground.Scene);
    private readonly Bystanders bystanders = new(ground.Scene);
    private readonly Answering answering = new(ground.Scene, dice);
    private readonly Combining combining = new(ground.Scene, ground.Repertoire, dice);
    private readonly WalkingRound walking = new(ground.Scene, new Bystanders(ground.Scene), dice);
    private readonly Timing timing = new(ground.Scene, thorough ? null : dice);
    private readonly ChildMaker maker = new(ground.Scene, ground.Aims);
    private readonly Travelling? travelling = ground.Repertoire.Travels is null ? null
        : new(ground.Scene, ground.Repertoire, ground.Aims, new RowFitting(ground.Scene, ground.Repertoire), new WalkingRound(ground.Scene, new Bystanders(ground.Scene), dice), dice);
    private readonly int openingTries = Math.Clamp(AllOpeningTries / ground.Scene.Cast, FewestOpeningTries, MostOpeningTries);
    private int[]? away;
    private int walks;
    private readonly int longestGap = Pace.DeadAirBreaks.Value;

    /// <summary>What the moves tried are counted on.</summary>
    public Effort Effort
    {
        set => maker.Effort = value;
    }

    /// <summary>Makes a child again that has forgotten what it knew.</summary>
    public ChildMaker Maker => maker;

    /// <summary>The soonest start at which a move fits, as far as feet, hands, turn and threat times say; −1 for none.</summary>
    public int Soonest(Node node, in Row row, out Cue cue)
    {
        cue = Cue.None;
        if (row.Technique < 0 || (row.Attacker >= 0 && node.State.Attackers[row.Attacker].Posture == Posture.Out))
        {
            return -1;
        }

        var least = node.IsOpening ? node.FirstStart : 0;
        if (row.Attack >= 0 && node.Threats[row.Attacker] != int.MaxValue)
        {
            least = Math.Max(least, node.Threats[row.Attacker] - scene.Settle.ContactAfter.Value - node.State.Time);
        }

        var bearing = row.From >= 0 ? row.From : row.Attacker < 0 ? 0 : node.State.Attackers[row.Attacker].Bearing;

        // The first move waits for whoever comes in, however long that takes.
        var most = node.IsOpening ? Math.Max(longestGap, least) : longestGap;
        var heading = row.To < 0 || row.Attacker >= 0 ? -1 : scene.Marks.Heading(node.State.Mark, row.To);
        return fitting.StartOf(node.State, row.Attacker, new Choice(row.Attack, row.Technique, []), bearing, least, most, out cue, heading);
    }

    /// <summary>Adds the children of a node to a list.</summary>
    public void Expand(Node node, List<Node> children)
    {
        guide?.Follow(this, node, children);
        if (node.Moment >= 0)
        {
            Aim(node, aims.Moments[node.Moment].Steps[node.MomentMoves], children);
            return;
        }

        for (var m = 0; m < aims.Moments.Length; m++)
        {
            if (!node.HasDone(m) && !aims.IsWaiting(node, m) && node.State.Time + longestGap >= aims.Moments[m].Earliest)
            {
                Aim(node, aims.Moments[m].Steps[0], children);
                Approaches(node, aims.Moments[m], children);
            }
        }

        for (var a = 0; a < scene.Cast; a++)
        {
            if (!node.IsOpening || node.First == a)
            {
                OnAttacker(node, a, repertoire.Menus[a], 0, children);
            }
        }

        foreach (var (row, reactions) in travelling?.Rows(node, longestGap, SetbacksWanted(node), null) ?? [])
        {
            Grow(node, row, reactions, children);
        }

        NoTarget(node, repertoire.Recoveries, children);
        if (BeatsWanted(node))
        {
            NoTarget(node, repertoire.Breaths, children);
        }
    }

    private bool BeatsWanted(Node node) => scene.Brief.Pauses is null || node.Beats < scene.Brief.Pauses;

    private bool SetbacksWanted(Node node) => scene.Brief.Setbacks is null || node.Setbacks < scene.Brief.Setbacks;

    /// <summary>Tries what leads to a hero moment which the hero cannot go over to as they are.</summary>
    private void Approaches(Node node, MomentAim aim, List<Node> children)
    {
        var setbacks = aims.SetbacksLeft(node);
        if (aim.Approach is null || aim.MovesBefore(node.State, setbacks) is var before && (before == 0 || node.State.Time + longestGap < aim.DueFrom(before)))
        {
            return;
        }

        var menus = aim.Approach.Leads(node.State, setbacks);
        for (var a = 0; a < scene.Cast; a++)
        {
            if (!node.IsOpening || node.First == a)
            {
                OnAttacker(node, a, menus[a], LeadTries, children);
            }
        }
    }

    /// <summary>Tries what can be done with one attacker.</summary>
    /// <param name="node">Where the search stands.</param>
    /// <param name="a">The attacker.</param>
    /// <param name="menu">What can be done.</param>
    /// <param name="aimed">Moves tried of each kind where they are for the sake of a hero moment; 0 where they are not.</param>
    /// <param name="children">Where what is possible goes.</param>
    /// <param name="earliest">First half count at which it may start.</param>
    private void OnAttacker(Node node, int a, Menu menu, int aimed, List<Node> children, int earliest = 0)
    {
        var attacker = node.State.Attackers[a];
        if (attacker.Posture == Posture.Out)
        {
            return;
        }

        menu = Levels.Of(scene, menu, a, attacker);
        (away, walks) = (thorough ? null : aims.OffThing(node, a), AtThing.WalksPercent);
        if (away is null && fetching is not null)
        {
            (away, walks) = (aims.OutOfSight(node, a), fetching.Percent);
        }

        var (time, most) = (node.State.Time, node.IsOpening ? node.FirstStart : longestGap);
        var least = Math.Max(node.IsOpening ? node.FirstStart : 0, earliest - time);
        if (attacker.PostureAt(time + least) is { } posture)
        {
            var open = attacker.IsActive && posture is not (Posture.Ready or Posture.Knelt) ? Math.Min(most, attacker.OpenUntil - time) : most;
            var tries = aimed > 0 ? aimed : a == node.State.LastTarget || !attacker.IsActive ? FollowUpTries : OtherTries;
            Some(node, a, menu.FollowUps[(int)posture], least, open, tries, aimed > 0, children);
            WithProps(node, a, menu.WithProps.Length > 0 && aimed == 0 ? menu.WithProps[(int)posture] : [], least, open, children);
            if (attacker.Posture == Posture.Gripping && attacker.Grip is { } grip)
            {
                Some(node, a, menu.Escapes[grip.Index], least, open, tries, aimed > 0, children);
            }

            if (BeatsWanted(node))
            {
                Some(node, a, menu.Beats[(int)posture], least, open, aimed > 0 ? aimed : 2, aimed > 0, children);
            }
        }

        if (attacker.IsActive)
        {
            var soonest = Math.Max(least, node.Threats[a] - scene.Settle.ContactAfter.Value - time);
            if (soonest <= most && node.Threats[a] <= lingering.Latest(node, a))
            {
                if (aimed == 0 && !thorough)
                {
                    Combine(node, a, soonest, most, children);
                }

                var (first, others) = Tries(node, a, menu, aimed);
                Some(node, a, first, soonest, most, openingTries, false, children);
                Some(node, a, menu.Answers, soonest, most, others, aimed > 0, children);
                if (SetbacksWanted(node) && aims.BearsSetback(node, time + soonest))
                {
                    Some(node, a, menu.Setbacks, soonest, most, aimed > 0 ? aimed : OtherTries, aimed > 0, children);
                }
            }
        }
    }

    /// <summary>Tries what begins a combination of the attacker's, or goes on with it soon enough.</summary>
    private void Combine(Node node, int a, int soonest, int most, List<Node> children)
    {
        var (choices, latest) = combining.For(node, a, SetbacksWanted(node) && aims.BearsSetback(node, node.State.Time + soonest));
        var last = latest == int.MaxValue ? most : Math.Min(most, latest - scene.Settle.ContactAfter.Value - node.State.Time);
        if (last >= soonest)
        {
            Some(node, a, choices, soonest, last, CombiningTries, false, children);
        }
    }

    /// <summary>Walks through the choices from a random place in random strides until enough of them were possible.</summary>
    private void Some(Node node, int a, Choice[] choices, int least, int most, int tries, bool aimed, List<Node> children)
    {
        var count = choices.Length;
        if (count == 0)
        {
            return;
        }

        if (thorough)
        {
            foreach (var choice in choices)
            {
                TryChoice(node, a, choice, least, most, true, children);
            }

            return;
        }

        var (at, stride) = (dice.Next(count), dice.Stride(count));
        var looks = tries == int.MaxValue ? count : Math.Min(count, tries * 6);
        for (var i = 0; i < looks && tries > 0; i++)
        {
            tries -= TryChoice(node, a, choices[at], least, most, aimed, children) ? 1 : 0;
            at = (at + stride) % count;
        }
    }

    private bool TryChoice(Node node, int a, Choice choice, int least, int most, bool aimed, List<Node> children)
    {
        if (choice.Attack < 0 && scene.Book.Techniques[choice.Technique].Family == Family.Finish && (!MayFinish(node, a, aimed) || (!thorough && !aimed && aims.IsPoorFinish(node, choice.Technique) && dice.Percent(PoorFinishLeftOut))))
        {
            return false;
        }

        var attacker = node.State.Attackers[a];
        if (choice.Attack < 0 && !Reaches(node.State, choice.Technique, a))
        {
            return false;
        }

        var (bearing, from) = (attacker.Bearing, -1);
        if (choice.Attack >= 0 && ((!thorough && walking.Wanted(away, bearing, walks)) || bystanders.At(node, a, choice.Attack, bearing, node.State.Time + least) is null))
        {
            if (walking.To(node, a, choice.Attack, away, ref least) is not { } other)
            {
                return false;
            }

            (bearing, from) = (other, other);
        }

        var start = fitting.StartOf(node.State, a, choice, bearing, least, most, out var cue);
        if (start < 0 || (scene.Brief.Music is not null && (start = timing.Of(node, choice, start, node.State.Time + most)) < 0))
        {
            return false;
        }

        if (thorough)
        {
            return Grow(node, new Row(start, a, from, cue, choice.Attack, choice.Technique, -1, 0), choice.Reactions, children);
        }

        if (!node.IsOpening && dice.Percent(aims.MovesAhead(node.State) > 1 ? 45 : 15))
        {
            start = Math.Min(start + 1 + dice.Next(2), node.State.Time + most);
        }

        var row = new Row(start, a, from, cue, choice.Attack, choice.Technique, answering.ReactionOf(choice, a), 0);
        return Grow(node, row, children);
    }
}
