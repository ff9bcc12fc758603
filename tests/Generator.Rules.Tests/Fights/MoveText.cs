using System.Text.RegularExpressions;
using Generator.Domain;

namespace Generator.Rules.Tests.Fights;

/// <summary>
/// Reads moves parted by semicolons: <c>Wanda: +1 !swing-left > outside-block-right {limb-stopped}</c>. Who (the last one named goes on; with
/// <c>@clock</c> from another bearing), the gap in half counts (none is 0; <c>&amp;</c> is in the same count as the move before), <c>!</c> for a spoken cue,
/// the attack, the technique (nothing for an attack that nothing answers), the reaction, and <c>~n</c> for a linger of n half counts.
/// </summary>
internal static partial class MoveText
{
    public static IReadOnlyList<Move> Read(string text, Brief brief)
    {
        var moves = new List<Move>();
        var (end, last, attacker) = (0, 0, 0);
        foreach (var part in text.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            var match = Shape().Match(part);
            if (!match.Success)
            {
                throw new FormatException($"'{part}' is no move.");
            }

            if (match.Groups["who"].Success)
            {
                var name = match.Groups["who"].Value;
                attacker = Enumerable.Range(0, brief.Attackers.Count).First(a => string.Equals(brief.Attackers[a].Name, name, StringComparison.Ordinal));
            }

            var gap = match.Groups["gap"].Value;
            var start = gap switch
            {
                "&" => last,
                "" => end,
                _ => end + StartText.Number(gap),
            };
            var move = Move(match, start, attacker);
            moves.Add(move);
            last = start;
            end = move.Technique is null ? Math.Max(end, start) : start + TheBook.Book.Technique(move.Technique).Length.Value;
        }

        return moves;
    }

    private static Move Move(Match match, int start, int attacker)
    {
        var technique = Text(match, "technique");
        var known = technique is null ? null : TheBook.Book.Technique(technique);
        var attack = Text(match, "attack");
        return new Move
        {
            Start = new HalfCounts(start),
            Attacker = known is { HasNoTarget: true } ? null : attacker,
            From = Text(match, "from") is { } from ? StartText.Clock(from) : null,
            Cue = match.Groups["cue"].Success ? Cue.Voice : Cue.None,
            Attack = attack is null ? null : TheBook.Book.Attack(attack).Id,
            Technique = technique,
            Reaction = Text(match, "reaction") is { } reaction ? TheBook.Book.Reaction(reaction).Id : null,
            Linger = new HalfCounts(Text(match, "linger") is { } linger ? StartText.Number(linger) : 0),
        };
    }

    private static string? Text(Match match, string group) => match.Groups[group] is { Success: true, Length: > 0 } found ? found.Value : null;

    [GeneratedRegex(
        @"^(?:(?<who>\w+)(?:@(?<from>[\d:]+))?:\s*)?(?:(?<gap>&|[+-]\d+)\s*)?(?<cue>!)?(?:(?<attack>[\w-]+)\s*>\s*)?(?<technique>[\w-]+)?\s*(?:\{(?<reaction>[\w-]+)\})?\s*(?:~(?<linger>\d+))?$",
        RegexOptions.ExplicitCapture,
        1000)]
    private static partial Regex Shape();
}
