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
        if (layout.WithStretches)
        {
            var moves = AllMoves();
            model.Add(moves >= Math.Max(1, size.FewestMoves));
            if (size.MostMoves is { } most)
            {
                model.Add(moves <= most);
            }
        }

        if (size.LatestEnd is { } latestEnd)
        {
            model.Add(end <= latestEnd);
            model.Add(end >= size.SoonestEnd);

            // Follows from the chain of moves; said at once it is felt at once.
            var least = LinearExpr.Sum(Places.Select(s => Cp.Sum(s.Is, Seen.Select(c => (long)c.Shortest))));
            model.Add(least + (OutOfSight() * Classes.All.Min(c => c.Shortest)) <= latestEnd);
        }

        if (size.FewestMoves > 0 && !layout.WithStretches)
        {
            model.Add(Slots[size.FewestMoves - 1].Used == 1);
        }
    }

    /// <summary>Who must be out is out, by a finish, the last of them last; nobody is still held.</summary>
    private void Ending()
    {
        var (classes, model) = (Seen, Cp.Model);
        var brief = Scene.Brief;
        foreach (var a in Followed)
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
            foreach (var slot in Places)
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

        EndOutOfSight();
        if (brief.Ending?.Last is { } last && brief.Attackers.Select(a => a.Name).ToList().IndexOf(last) is var who and >= 0 && layout.Followed[who])
        {
            model.Add(Last.Posture[who][(int)Posture.Out] == 1);
            var outs = Slots.Select(s => s.Posture).Append(Last.Posture).ToList();
            for (var i = 0; i < Slots.Count; i++)
            {
                foreach (var b in Followed)
                {
                    if (b != who)
                    {
                        // Nobody is put out by the move that puts the last one out, nor by a later one; in the stretch somebody may be before them.
                        model.AddBoolOr([outs[Slots[i].IsStretch ? i : i + 1][who][(int)Posture.Out].Not(), outs[i][b][(int)Posture.Out], outs[i + 1][b][(int)Posture.Out].Not()]);
                    }
                }
            }
        }
    }

    /// <summary>Moves of which only the number is known.</summary>
    private LinearExpr OutOfSight() => LinearExpr.Sum(Slots.Where(s => s.Others is not null).Select(s => s.Others!));

    private LinearExpr AllMoves() => OutOfSight() + Cp.Sum(Places.Select(s => s.Used));

    /// <summary>Whoever is not followed and must go out does so in some other move, two at once at best.</summary>
    private void EndOutOfSight()
    {
        var outs = Enumerable.Range(0, Scene.Cast).Count(a => !layout.Followed[a] && Scene.Brief.Ending?.Out.Contains(Scene.Brief.Attackers[a].Name) == true);
        if (outs == 0)
        {
            return;
        }

        Cp.Model.Add((2 * AllMoves()) >= outs);
    }

    /// <summary>Falls and head-height hits of everybody.</summary>
    private void Caps()
    {
        var (classes, model) = (Seen, Cp.Model);
        var (brief, headHits) = (Scene.Brief, Exposure.HeadHitCap(Scene.Brief));
        Cap(c => c.HeroFalls, Exposure.FallCap(brief, brief.Hero));
        Cap(c => c.HeroHeadHit, headHits);
        foreach (var a in Followed)
        {
            var attacker = a;
            Cap(c => c.Attacker == attacker && c.HeadHit, headHits);
            var falls = Where(c => c.Attacker == attacker && c.Falls).ToList();
            foreach (var slot in Places)
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

    private IEnumerable<BoolVar> Where(Func<MoveTraits, bool> counts) => Places.SelectMany(s => s.Is.Where((_, c) => counts(Seen[c].Traits)));

    private void Story()
    {
        var most = layout.WithStretches ? latest : 0;
        var (setbacks, pauses) = (Cp.Int(0, Classes.All.Any(c => c.Traits.Setback) ? most : 0, "othersetbacks"), Cp.Int(0, Classes.All.Any(c => c.Traits.Pause) ? most : 0, "otherpauses"));
        Cp.Model.Add(setbacks + pauses <= OutOfSight());
        if (Scene.Brief.Setbacks is { } askedSetbacks)
        {
            Cp.Model.Add(Cp.Sum(Where(c => c.Setback)) + setbacks == askedSetbacks);
        }

        if (Scene.Brief.Pauses is { } askedPauses)
        {
            Cp.Model.Add(Cp.Sum(Where(c => c.Pause)) + pauses == askedPauses);
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

            if (layout.Order is { } order)
            {
                var last = Places.ElementAt(layout.Groups.Take(order.IndexOf(m) + 1).Sum() - 1);
                model.AddBoolOr([.. last.Is.Where((_, c) => (Seen[c].Traits.Wanted & (1UL << bit)) != 0)]);
                model.Add(last.Start >= (moment.Earliest?.Value ?? 0));
                model.Add(last.Start <= (moment.Latest?.Value ?? latest));
                continue;
            }

            var places = new List<ILiteral>();
            for (var i = 0; i + moment.Moves.Count <= Slots.Count; i++)
            {
                if (Slots.Skip(i).Take(moment.Moves.Count).Any(s => s.IsStretch))
                {
                    continue;
                }

                var here = Cp.Bool($"moment[{m},{i}]");
                places.Add(here);
                for (var j = 0; j < moment.Moves.Count; j++)
                {
                    var wanted = 1UL << (bit + j);
                    if (j > 0 && Slots[i + j].Others is { } others)
                    {
                        model.Add(others == 0).OnlyEnforceIf(here);
                    }

                    model.AddBoolOr([here.Not(), .. Slots[i + j].Is.Where((_, c) => (Seen[c].Traits.Wanted & wanted) != 0)]);
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
