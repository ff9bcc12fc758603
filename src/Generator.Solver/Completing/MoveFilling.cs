using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Constructing;

namespace Generator.Solver.Completing;

/// <summary>Fills one move of a sketch behind a beginning: every choice at the soonest counts at which it is possible.</summary>
internal sealed class MoveFilling(Scene scene, Expander expander, Lingering lingering, Outlook outlook, Dice dice)
{
    /// <summary>Counts tried after the soonest one, in half counts.</summary>
    private const int Later = 4;

    /// <summary>Choices tried behind one beginning: of what is said, and of what gives something up.</summary>
    private const int SaidTries = 160, GivenTries = 60;

    /// <summary>Half hours that somebody may walk round when nothing works from where they are.</summary>
    private const int MostRound = 8;

    /// <summary>Adds the beginnings that are longer by this move, as it is said or with one thing given up.</summary>
    /// <param name="begun">The beginning.</param>
    /// <param name="index">Position of the move in the sketch.</param>
    /// <param name="move">The move.</param>
    /// <param name="choices">What may stand in it.</param>
    /// <param name="mayGive">Also tries what gives something up.</param>
    /// <param name="filled">Where they go.</param>
    public void Fill(Beginning begun, int index, SketchMove move, MoveChoices choices, bool mayGive, List<Beginning> filled)
    {
        if (begun.HasOpened)
        {
            Try(begun, index, move, Some(choices.Afterwards, SaidTries).Select(c => (c, (SketchPart?)null)), null, filled);
            return;
        }

        Try(begun, index, move, Some(choices.Said, SaidTries), null, filled);
        if (!mayGive)
        {
            return;
        }

        Try(begun, index, move, Some(choices.Given, GivenTries), null, filled);
        if (move.Count is not null)
        {
            Try(begun, index, move with { Count = null }, Some(choices.Said, GivenTries), SketchPart.Count, filled);
        }

        for (var a = 0; a < scene.Cast && move.Attacker is not null; a++)
        {
            if (a != move.Attacker)
            {
                Try(begun, index, move with { Attacker = a, From = null }, Some(choices.Said, GivenTries), SketchPart.Attacker, filled);
            }
        }

        if (move.Technique is not { Firmness: Firmness.Fixed } && move.Attack is not { Firmness: Firmness.Fixed })
        {
            filled.Add((begun with { Rows = [.. begun.Rows, -1] }).After(new Departure(index, SketchPart.Technique, -1)));
        }
    }

    /// <summary>The attack takes hold, and what the hero does about it is still to come.</summary>
    public void Open(Beginning begun, int index, SketchMove move, MoveChoices choices, List<Beginning> filled)
    {
        var opened = new List<Beginning>();
        Try(begun, index, move, choices.Opens.Select(c => (c, (SketchPart?)null)), null, opened);
        filled.AddRange(opened.Select(o => o with { HasOpened = true, Rows = begun.Rows }));
    }

    /// <summary>Moves put in before this one, each at its price unless the sketch left a place for them.</summary>
    public void PutIn(Beginning begun, int index, bool isFree, List<Beginning> filled)
    {
        var children = new List<Node>();
        expander.Expand(begun.Node, children);
        foreach (var child in children)
        {
            var next = begun with { Node = child, Value = Worth(child) };
            filled.Add(isFree ? next : next.After(new Departure(index, SketchPart.Added, child.Depth - 1)));
        }
    }

    private void Try(Beginning begun, int index, SketchMove move, IEnumerable<(MoveChoice Choice, SketchPart? Gave)> choices, SketchPart? gave, List<Beginning> filled)
    {
        foreach (var (choice, given) in choices)
        {
            foreach (var node in Ways(begun.Node, move, choice))
            {
                var next = begun with { Node = node, HasOpened = false, Rows = [.. begun.Rows, node.Depth - 1], Value = Worth(node) };
                filled.Add((gave ?? given) is { } part ? next.After(new Departure(index, part, node.Depth - 1)) : next);
            }
        }
    }

    /// <summary>As many of the choices as are tried behind one beginning, drawn by chance.</summary>
    private IEnumerable<T> Some<T>(IReadOnlyList<T> all, int most)
    {
        for (var i = 0; i < Math.Min(all.Count, most); i++)
        {
            yield return all.Count <= most ? all[i] : all[dice.Next(all.Count)];
        }
    }

    private double Worth(Node node) => outlook.Of(node, lingering) + (0.5 * dice.Unit());

    private IEnumerable<Node> Ways(Node node, SketchMove move, MoveChoice choice)
    {
        var technique = scene.Book.Techniques[choice.Technique];
        if (technique.HasNoTarget)
        {
            return node.IsOpening && node.First >= 0 ? [] : Timed(node, move, choice, new Row(0, -1, -1, Cue.None, -1, choice.Technique, -1, 0));
        }

        return Enumerable.Range(0, scene.Cast)
            .Where(a => (move.Attacker is null || move.Attacker == a) && (!node.IsOpening || node.First == a) && scene.Able.WhyNotOn(choice.Technique, a) is null
                && (choice.Attack < 0 || scene.Able.WhyNotAttack(choice.Attack, a) is null) && (choice.Reaction < 0 || scene.Able.WhyNotReaction(choice.Reaction, a) is null))
            .SelectMany(a => On(node, move, choice, new Row(0, a, move.From?.HalfHours ?? -1, Cue.None, choice.Attack, choice.Technique, choice.Reaction, 0)));
    }

    /// <summary>From where the attacker is or is said to come; else from the nearest bearing that works.</summary>
    private List<Node> On(Node node, SketchMove move, MoveChoice choice, Row row)
    {
        var found = Timed(node, move, choice, row).ToList();
        if (found.Count > 0 || row.Attack < 0 || row.From >= 0 || node.IsOpening)
        {
            return found;
        }

        var bearing = new Bearing(node.State.Attackers[row.Attacker].Bearing);
        for (var round = 1; round <= MostRound; round++)
        {
            foreach (var turn in (ReadOnlySpan<int>)[round, -round])
            {
                found.AddRange(Timed(node, move, choice, row with { From = (bearing + new Turn(turn)).HalfHours }));
            }

            if (found.Count > 0)
            {
                return found;
            }
        }

        return found;
    }

    private IEnumerable<Node> Timed(Node node, SketchMove move, MoveChoice choice, Row row)
    {
        var soonest = expander.Soonest(node, row, out var cue);
        if (soonest < 0)
        {
            yield break;
        }

        var round = row.From < 0 ? 0 : new Bearing(node.State.Attackers[row.Attacker].Bearing).Apart(new Bearing(row.From)) * scene.Settle.WalkRoundPerHalfHour.Value;
        var first = Math.Max(soonest, move.Count?.First.Value ?? 0);
        var last = Math.Min(first + Later + round, move.Count?.Last.Value ?? int.MaxValue);
        var found = 0;
        for (var start = first; start <= last && found < 2; start++)
        {
            if (expander.Fitted(node, row with { Start = start, Cue = cue }) is { } child && SuitsFoot(node, move, choice, child))
            {
                found++;
                yield return child;
            }
        }
    }

    /// <summary>"Lead hook" is done with the limb that leads in the stance in which it starts, "near" and "far" by where the attacker is.</summary>
    private bool SuitsFoot(Node node, SketchMove move, MoveChoice choice, Node child)
    {
        if (move.Technique?.Foot is not { } foot || scene.Book.Techniques[choice.Technique].Side is not { } side)
        {
            return true;
        }

        return ActingSide.Suits(foot, side, Replay.Step(scene, node.State, child.Row));
    }
}
