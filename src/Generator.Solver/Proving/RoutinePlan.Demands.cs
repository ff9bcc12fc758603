using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Rules;
using Generator.Solver.Engine;
using Google.OrTools.Sat;

namespace Generator.Solver.Proving;

/// <summary>What the brief asks of the whole: length, ending, caps, setbacks, pauses and hero moments.</summary>
internal sealed partial class RoutinePlan
{
    private void Length(PlanSize size)
    {
        var model = Cp.Model;
        var end = Slots[^1].End;
        if (size.LatestEnd is { } latestEnd)
        {
            model.Add(end <= latestEnd);
            model.Add(end >= size.SoonestEnd);

            // Follows from the chain of moves; said at once it is felt at once.
            model.Add(LinearExpr.Sum(Slots.Select(s => Cp.Sum(s.Is, Classes.All.Select(c => (long)c.Shortest)))) <= latestEnd);
        }

        if (size.FewestMoves > 0)
        {
            model.Add(Slots[size.FewestMoves - 1].Used == 1);
        }
    }

    /// <summary>Who must be out is out, by a finish, the last of them last; nobody is still held.</summary>
    private void Ending()
    {
        var (classes, model) = (Classes.All, Cp.Model);
        var brief = Scene.Brief;
        for (var a = 0; a < Scene.Cast; a++)
        {
            foreach (var p in Enumerable.Range(0, Postures).Where(p => ((Posture)p).IsControlled()))
            {
                model.Add(Last.Posture[a][p] == 0);
            }

            if (brief.Ending?.Out.Contains(brief.Attackers[a].Name) != true)
            {
                continue;
            }

            model.Add(Last.Posture[a][(int)Posture.Out] == 1);
            foreach (var slot in Slots)
            {
                for (var c = 0; c < classes.Count; c++)
                {
                    var traits = classes[c].Traits;
                    if (traits.To != Posture.Out || traits.Finishes)
                    {
                        continue;
                    }

                    if (traits.Attacker == a)
                    {
                        model.Add(slot.Is[c] == 0);
                    }
                    else if (traits.Second == SecondRole.Taken && slot.Second[a] is { } second)
                    {
                        model.AddBoolOr([slot.Is[c].Not(), second.Not()]);
                    }
                }
            }
        }

        if (brief.Ending?.Last is { } last && brief.Attackers.Select(a => a.Name).ToList().IndexOf(last) is var who and >= 0)
        {
            model.Add(Last.Posture[who][(int)Posture.Out] == 1);
            var outs = Slots.Select(s => s.Posture).Append(Last.Posture).ToList();
            for (var i = 0; i < Slots.Count; i++)
            {
                for (var b = 0; b < Scene.Cast; b++)
                {
                    if (b != who)
                    {
                        // Nobody is put out by the move that puts the last one out, nor by a later one.
                        model.AddBoolOr([outs[i + 1][who][(int)Posture.Out].Not(), outs[i][b][(int)Posture.Out], outs[i + 1][b][(int)Posture.Out].Not()]);
                    }
                }
            }
        }
    }

    /// <summary>Falls and head-height hits of everybody.</summary>
    private void Caps()
    {
        var (classes, model) = (Classes.All, Cp.Model);
        var (brief, headHits) = (Scene.Brief, Exposure.HeadHitCap(Scene.Brief));
        Cap(c => c.HeroFalls, Exposure.FallCap(brief, brief.Hero));
        Cap(c => c.HeroHeadHit, headHits);
        for (var a = 0; a < Scene.Cast; a++)
        {
            var attacker = a;
            Cap(c => c.Attacker == attacker && c.HeadHit, headHits);
            var falls = Where(c => c.Attacker == attacker && c.Falls).ToList();
            foreach (var slot in Slots)
            {
                if (slot.Second[a] is { } second && classes.Any(c => c.Traits is { Second: SecondRole.Taken, Falls: true }))
                {
                    var along = Cp.Bool($"fallsalong[{slot.Index},{a}]");
                    foreach (var c in Enumerable.Range(0, classes.Count).Where(c => classes[c].Traits is { Second: SecondRole.Taken, Falls: true }))
                    {
                        model.AddBoolOr([second.Not(), slot.Is[c].Not(), along]);
                    }

                    falls.Add(along);
                }
            }

            model.Add(Cp.Sum(falls) <= Exposure.FallCap(brief, brief.Attackers[a]));
        }
    }

    private void Cap(Func<MoveTraits, bool> counts, int most) => Cp.Model.Add(Cp.Sum(Where(counts)) <= most);

    private IEnumerable<BoolVar> Where(Func<MoveTraits, bool> counts) => Slots.SelectMany(s => s.Is.Where((_, c) => counts(Classes.All[c].Traits)));

    private void Story()
    {
        if (Scene.Brief.Setbacks is { } setbacks)
        {
            Cp.Model.Add(Cp.Sum(Where(c => c.Setback)) == setbacks);
        }

        if (Scene.Brief.Pauses is { } pauses)
        {
            Cp.Model.Add(Cp.Sum(Where(c => c.Pause)) == pauses);
        }
    }

    private void Moments()
    {
        var model = Cp.Model;
        for (var m = 0; m < Scene.Brief.Moments.Count; m++)
        {
            var (moment, bit) = (Scene.Brief.Moments[m], Classes.FirstWanted[m]);
            if (bit < 0)
            {
                continue;
            }

            var places = new List<ILiteral>();
            for (var i = 0; i + moment.Moves.Count <= Slots.Count; i++)
            {
                var here = Cp.Bool($"moment[{m},{i}]");
                places.Add(here);
                for (var j = 0; j < moment.Moves.Count; j++)
                {
                    var wanted = 1UL << (bit + j);
                    model.AddBoolOr([here.Not(), .. Slots[i + j].Is.Where((_, c) => (Classes.All[c].Traits.Wanted & wanted) != 0)]);
                }

                if (moment.Earliest is { } earliest)
                {
                    model.Add(Slots[i].Start >= earliest.Value).OnlyEnforceIf(here);
                }

                if (moment.Latest is { } latestStart)
                {
                    model.Add(Slots[i].Start <= latestStart.Value).OnlyEnforceIf(here);
                }
            }

            model.AddBoolOr(places);
        }
    }
}
