using Generator.Domain;
using Generator.Rules.Tests.Fights;
using Generator.Rules.Tests.Symmetry;
using Generator.Testing;

namespace Generator.Rules.Tests.Allies;

/// <summary>
/// A fight of Ines and, behind her at 6 o'clock, Mira, who faces 6: the start and the moves of each in the words of <see cref="Fight"/>, with <c>=4</c> before the first move of a part for the half count on
/// which it starts. Everybody is 1.76 m tall, and the floor 12 by 12 m round Ines.
/// </summary>
internal static class TwoHeroes
{
    public static Fight Of(string start, int apart, string hero, string ally)
    {
        var fight = Fight.Of(start, string.Empty);
        var brief = fight.Brief with { Ally = new Ally(new HeroPart { Name = "Mira", Skill = Skill.Stunt, Lead = fight.Brief.Hero.Lead }, Ally.Behind, new Centimetres(apart), Ally.Behind) };
        var moves = Part(hero, brief).Concat(Part(ally, brief).Select(m => m with { ByAlly = true })).OrderBy(m => m.Start.Value);
        return fight with { Brief = brief, Moves = [.. moves] };
    }

    /// <summary>The same fight with Mira as the hero and Ines as the ally, the whole floor turned half round so that the hero faces 12. Everybody who opens has to be at 12 or 6.</summary>
    public static Fight Swapped(Fight fight)
    {
        var (brief, ally) = (fight.Brief, fight.Brief.Ally!);
        var apart = ally.Distance.Value;
        return fight with
        {
            Brief = brief with
            {
                Hero = ally.Part,
                Ally = ally with { Part = brief.Hero },
                Floor = brief.Floor with { MarkY = new Centimetres(brief.Floor.Depth.Value - (brief.Floor.MarkY.Value - apart)) },
            },
            Placements = [.. fight.Placements.Select(p => p.Bearing == default ? p with { Bearing = Ally.Behind, Distance = new(p.Distance.Value + apart) } : p with { Bearing = default, Distance = new(p.Distance.Value - apart) })],
            Moves = [.. fight.Moves.Select(m => m with { ByAlly = !m.ByAlly, From = m.From is { } from ? new Bearing(from.HalfHours + 12) : null })],
        };
    }

    /// <summary>A fight at random that asks nothing of the story, each of its moves somebody's of the two; everybody opens at 12 or 6.</summary>
    public static Fight Random(int seed)
    {
        var (fight, chance) = (RandomFight.Of(seed), new Chance(seed + 1000));
        var start = 0;
        return fight with
        {
            Brief = fight.Brief with
            {
                Ally = new Ally(fight.Brief.Hero with { Name = "Mira" }, Ally.Behind, new Centimetres(chance.Whole(8, 20) * 10), Ally.Behind),
                Moments = [],
                Arc = Arc.Free,
                Setbacks = null,
                Pauses = null,
                Cameras = [],
            },
            Placements = [.. fight.Placements.Select(p => p with { Bearing = chance.Percent(50) ? default : Ally.Behind, Distance = new(p.Distance.Value + 210), Entrance = HalfCounts.Zero })],
            Moves = [.. fight.Moves.Select(m => m with { ByAlly = chance.Percent(50), Start = new(start = Math.Max(start, m.Start.Value - chance.Whole(0, 2))) })],
        };
    }

    private static IEnumerable<Move> Part(string text, Brief brief)
    {
        var parts = text.Split(' ', 2);
        var at = parts[0].StartsWith('=') ? StartText.Number(parts[0][1..]) : 0;
        return MoveText.Read(parts[0].StartsWith('=') ? parts[1] : text, brief).Select(m => m with { Start = new HalfCounts(m.Start.Value + at) });
    }
}
