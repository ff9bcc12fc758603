using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Rules.Bodies;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.SafetyPapers;

/// <summary>The floor itself, and what stands on it near somebody's place.</summary>
internal static class FloorHazards
{
    /// <summary>An obstacle nearer than this to somebody's place is named, in centimetres. Common practice, no source.</summary>
    public const int Near = 150;

    public static IEnumerable<Hazard> Of(Finder find)
    {
        yield return Surface(find);
        foreach (var obstacle in find.Brief.Floor.Obstacles)
        {
            yield return Obstacle(find, obstacle);
        }
    }

    private static Hazard Surface(Finder find)
    {
        var surface = find.Brief.Floor.Surface;
        return new Hazard
        {
            Title = $"The floor, {Words.Of(surface)}",
            Who = find.Everybody,
            Moves = [],
            How = surface switch
            {
                Domain.Surface.Wet => "Slipping on a wet floor.",
                Domain.Surface.Uneven => "Turning an ankle on an uneven or raked floor; rake raises the risk of injury (Evans, Evans and Carvajal 1998).",
                Domain.Surface.Hard when find.Scene.Mats.Matter => "Slipping; falling beside a mat, tripping over the edge of one, a mat that slides on the hard floor.",
                Domain.Surface.Hard => "Slipping; a hard floor under every fall.",
                _ => "Tripping over the edge of a mat, slipping on sweat. A rake raises the risk (Evans, Evans and Carvajal 1998): say so in the brief if there is one.",
            },
            Harm = Harm.Moderate,
            Likelihood = surface switch
            {
                Domain.Surface.Matted or Domain.Surface.Sprung => Likelihood.Unlikely,
                Domain.Surface.Hard => Likelihood.Possible,
                _ => Likelihood.Likely,
            },
            Controls = Finder.Controls(
                "Move the fight to an even, dry floor.",
                "Mats joined and taped down; floor swept and dried before every run; light on the whole floor.",
                "Everybody walks the floor in their shoes before the fight call."),
        };
    }

    private static Hazard Obstacle(Finder find, Obstacle obstacle)
    {
        var near = new List<(string Who, Step? Step)>();
        var nearest = find.From(obstacle, Place.Mark);
        if (nearest < Near)
        {
            near.Add((find.Hero, null));
        }

        if (find.Brief.Ally is { } ally && find.From(obstacle, find.Scene.Marks[1]) is var beside)
        {
            nearest = Math.Min(nearest, beside);
            near.AddRange(beside < Near ? [(Page.Clean(ally.Part.Name), null)] : []);
        }

        foreach (var step in find.Source.Steps)
        {
            if (step.Travels >= 0)
            {
                var passes = find.OnTheWay(obstacle, step);
                nearest = Math.Min(nearest, passes);
                if (passes < Near)
                {
                    near.Add((find.Hero, step));
                }
            }

            for (var a = 0; a < find.Scene.Cast; a++)
            {
                var (before, after) = (step.Before.Attackers[a], step.After.Attackers[a]);
                var distance = find.From(obstacle, after.Place);
                nearest = Math.Min(nearest, distance);
                if (distance < Near && (step.Concerns(a) || before.Place.Rounded() != after.Place.Rounded()))
                {
                    near.Add((find.Name(a), step));
                }
            }
        }

        var name = Page.Clean(obstacle.Name);
        var used = ThingsUsed.How(find.Source, obstacle);
        return new Hazard
        {
            Title = "Obstacle: " + name,
            Who = near.Count == 0 ? find.Everybody : [.. near.Select(n => n.Who).Distinct(StringComparer.Ordinal)],
            Moves = [.. near.Select(n => n.Step).OfType<Step>().Concat(ThingsUsed.Of(find.Source).Where(u => u.Thing == obstacle).Select(u => u.Step)).DistinctBy(s => s.Index).OrderBy(s => s.Index)],
            How = $"Running or falling into it; the nearest that anybody's place {(find.Brief.Travels ? "or the hero's way " : string.Empty)}comes to it is {new Centimetres(nearest)}."
                + (used is null ? string.Empty : $" The fight uses it: {used}."),
            Harm = Harm.Serious,
            Likelihood = nearest switch
            {
                < 60 => Likelihood.Likely,
                < Near => Likelihood.Possible,
                < 2 * Near => Likelihood.Unlikely,
                _ => Likelihood.Remote,
            },
            Controls = used is not null ? Used(find, obstacle) : Finder.Controls(
                find.Brief.Travels ? "Take it off the floor, or move the marks and the ways between them away from it." : "Take it off the floor, or move the mark away from it.",
                "Pad its edges, tape a border round it that nobody crosses.",
                "Show everybody where it stands before the first walk-through."),
        };
    }

    /// <summary>Of a thing that the fight uses: it stays where it is, so it is made safe and tried.</summary>
    private static IReadOnlyList<Control> Used(Finder find, Obstacle thing)
    {
        var kind = thing.Kind is { } id ? find.Scene.Book.Things.Find(id) : null;
        var local = (thing.Rated, thing.Padded) switch
        {
            (true, true) => "The brief says rated and padded: the plate and the padding are looked at.",
            (true, false) => "The brief says rated: the plate is looked at. Local padding where somebody meets it.",
            (false, true) => "The brief says padded: the padding is looked at. Nobody's weight comes onto it.",
            _ => "Local padding where somebody meets it, a mat beside it. Nobody's weight comes onto it.",
        };
        return Finder.Controls(
            "Choose moves that need nothing of the room.",
            $"{kind?.Safety} {local} {string.Join(" ", ThingsUsed.Checks(find.Source, thing))}".Trim(),
            "The fight captain checks it before every call and signs for it; whoever meets it tries that at a walk first.");
    }
}
