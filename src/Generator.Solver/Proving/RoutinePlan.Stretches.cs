using Generator.Domain;
using Generator.Rules;
using Google.OrTools.Sat;

namespace Generator.Solver.Proving;

/// <summary>Moves out of sight: any number of them, of which only the count, the time and the most that they can have changed are known.</summary>
internal sealed partial class RoutinePlan
{
    /// <summary>The places for moves that are looked at one by one.</summary>
    private IEnumerable<PlanSlot> Places => Slots.Where(s => !s.IsStretch);

    private PlanSlot Stretch(int i, PlanSlot? before)
    {
        var model = Cp.Model;
        var others = Cp.Int(0, latest, $"others[{i}]");
        var stretch = new PlanSlot
        {
            Index = i,
            IsStretch = true,
            Is = [],
            Used = Cp.False,
            Start = Cp.Int(0, latest, $"start[{i}]"),
            End = Cp.Int(0, latest, $"end[{i}]"),
            Touches = [.. Enumerable.Repeat(Cp.False, Scene.Cast)],
            Second = new BoolVar?[Scene.Cast],
            Posture = PosturesAt(i),
            Threat = TimesAt(i, "threat", -farBack),
            Ready = TimesAt(i, "ready", -farBack),
            Open = TimesAt(i, "open", -1),
            Others = others,
            Changed = [.. Enumerable.Range(0, Scene.Cast).Select(a => layout.Followed[a] ? Cp.Bool($"changed[{i},{a}]") : null)],
        };
        model.Add(stretch.End >= stretch.Start + (others * Classes.All.Min(c => c.Shortest)));
        if (before is null)
        {
            // The first move starts when it likes.
            return stretch;
        }

        model.Add(stretch.Start == before.End);
        model.Add(stretch.End <= stretch.Start + (others * (Classes.All.Max(c => c.Longest) + Pace.DeadAirBreaks.Value)));
        return stretch;
    }

    /// <summary>What is known once the stretch lifts.</summary>
    private void Lift(PlanSlot stretch, PlanSlot next)
    {
        var model = Cp.Model;
        foreach (var a in Followed)
        {
            var changed = stretch.Changed[a]!;
            for (var p = 0; p < Postures; p++)
            {
                model.AddBoolOr([changed, stretch.Posture[a][p].Not(), next.Posture[a][p]]);
                model.AddBoolOr([changed, stretch.Posture[a][p], next.Posture[a][p].Not()]);
            }

            model.Add(next.Threat[a] >= stretch.Threat[a]).OnlyEnforceIf(changed.Not());
            model.Add(next.Ready[a] >= stretch.Ready[a]).OnlyEnforceIf(changed.Not());
            model.Add(next.Open[a] <= stretch.Open[a]).OnlyEnforceIf(changed.Not());
            model.Add(stretch.Others! >= 1).OnlyEnforceIf(changed);
            model.AddBoolOr([changed.Not(), stretch.Posture[a][(int)Posture.Out].Not()]);
            var ways = Ways(a).ToLookup(w => w.To);
            for (var p = 0; p < Postures; p++)
            {
                ILiteral[] comesAbout = [changed, next.Posture[a][p]];
                if (!ways[(Posture)p].Any())
                {
                    model.AddBoolOr([changed.Not(), next.Posture[a][p].Not()]);
                    continue;
                }

                var (shortest, back, recover, open) = (ways[(Posture)p].Min(w => w.Shortest), ways[(Posture)p].Min(w => w.Back), ways[(Posture)p].Min(w => w.Recover), ways[(Posture)p].Max(w => w.Open));
                model.Add(stretch.End >= stretch.Start + shortest).OnlyEnforceIf(comesAbout);
                model.Add(next.Threat[a] >= stretch.Start + shortest + back).OnlyEnforceIf(comesAbout);
                model.Add(next.Ready[a] >= stretch.Start + shortest + recover).OnlyEnforceIf(comesAbout);
                model.Add(next.Open[a] <= stretch.End + Math.Min(open, farAhead)).OnlyEnforceIf(comesAbout);
                if (Scene.Brief.Attackers[a].Entrance is { Value: > 0 } entrance)
                {
                    var soonest = entrance.Value - Scene.Settle.ContactAfter.Value + shortest;
                    model.Add(stretch.End >= soonest).OnlyEnforceIf(comesAbout);
                    model.Add(next.Threat[a] >= soonest + back).OnlyEnforceIf(comesAbout);
                    model.Add(next.Ready[a] >= soonest + recover).OnlyEnforceIf(comesAbout);
                }
            }
        }
    }

    /// <summary>As many moves as there are places for are looked at: whatever changes those who are followed lies in the stretch only when the next run is full.</summary>
    private void Thin(PlanSlot stretch)
    {
        var run = Slots.Skip(stretch.Index + 1).TakeWhile(s => !s.IsStretch).ToList();
        foreach (var a in Followed.Where(_ => run.Count > 0))
        {
            Cp.Model.AddImplication(stretch.Changed[a]!, layout.Order is null ? run[^1].Used : run[0].Used);
        }
    }

    /// <summary>Every posture that a move can leave this attacker in, as its target or as the second, with the figures of <see cref="MoveClass"/>.</summary>
    private IEnumerable<(Posture To, int Shortest, int Back, int Recover, int Open)> Ways(int a)
    {
        var mustOut = Scene.Brief.Ending?.Out.Contains(Scene.Brief.Attackers[a].Name) == true;
        foreach (var move in Classes.All)
        {
            var traits = move.Traits;
            if (traits.To is { } to && traits.Attacker == a && !(mustOut && to == Posture.Out && !traits.Finishes))
            {
                yield return (to, move.Shortest, move.Back, move.Recover, move.Open);
            }

            if ((traits.AbleSeconds & (1 << a)) != 0 && traits.SecondLeaves is var leaves && !(mustOut && leaves == Posture.Out && !traits.Finishes))
            {
                yield return (leaves, move.Shortest, move.SecondBack, move.SecondBack, move.Open);
            }
        }
    }
}
