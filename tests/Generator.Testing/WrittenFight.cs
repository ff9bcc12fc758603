using System.Globalization;
using Generator.Domain;
using Generator.Library;

namespace Generator.Testing;

/// <summary>A fight written in one line, as it is and whether or not it is allowed: who opens where as name@clock/centimetres/entrance, moves as start, name@from, attack, technique, reaction with ";" between.</summary>
public static class WrittenFight
{
    /// <param name="brief">What the fight is under; its attackers are those of the line, stunt people who open so far away.</param>
    /// <param name="book">The library.</param>
    /// <param name="cast">Who opens where; the entrance may be left out.</param>
    /// <param name="moves">What happens; "-" for no attack.</param>
    public static Routine Of(Brief brief, Book book, string cast, string moves)
    {
        var people = cast.Split(' ').Select(p => p.Split('@', '/')).ToList();
        return new Routine
        {
            Brief = brief with { Attackers = [.. people.Select(p => new AttackerPart { Name = p[0], Skill = Skill.Stunt, Distance = new Centimetres(Whole(p[2])) })] },
            LibraryVersion = book.Version,
            Placements = [.. people.Select(p => new Placement(Clock(p[1]), new Centimetres(Whole(p[2])), new HalfCounts(p.Length > 3 ? Whole(p[3]) : 0)))],
            Moves = [.. moves.Split(';', StringSplitOptions.TrimEntries).Select(m => Written(m.Split(' '), people))],
        };
    }

    private static Move Written(string[] words, List<string[]> people)
    {
        var who = words[1].Split('@');
        return new Move
        {
            Start = new HalfCounts(Whole(words[0])),
            Attacker = people.FindIndex(p => p[0] == who[0]),
            From = who.Length > 1 ? Clock(who[1]) : null,
            Attack = words[2] == "-" ? null : words[2],
            Technique = words[3],
            Reaction = words[4],
        };
    }

    private static int Whole(string text) => int.Parse(text, CultureInfo.InvariantCulture);

    private static Bearing Clock(string text) => Bearing.TryParse(text, out var bearing) ? bearing : throw new FormatException(text);
}
