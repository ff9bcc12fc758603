using Generator.Domain;
using Generator.Library.Reading;
using Generator.Paperwork.Text;
using Generator.Rules;

namespace Generator.Cli.Changes;

/// <summary>A move on one line: "count 12&amp;, Bruno: cross right from 3 o'clock; parry down left; limb swept in".</summary>
internal static class MoveText
{
    /// <summary>With its count.</summary>
    public static string WithCount(Scene scene, Move move) => $"count {move.Start.ToCountText()}, {Of(scene, move)}";

    /// <summary>Without its count.</summary>
    public static string Of(Scene scene, Move move)
    {
        var book = scene.Book;
        IReadOnlyList<string?> parts =
        [
            move.Attack is { } attack ? book.Attack(attack).Name + (move.From is { } from ? " from " + from.InWords : string.Empty) : null,
            move.Technique is { } technique ? Led(book.Technique(technique).Name, move.To, scene) : $"({Words.Unanswered})",
            move.Reaction is { } reaction ? book.Reaction(reaction).Name : null,
            move.Hurts is { } hurts ? $"hurts the {hurts.PartInWords} until count {hurts.Until.ToCountText()}" : null,
            move.Cue == Cue.None ? null : "cue: " + EnumWords.Of(move.Cue),
            move.Linger > HalfCounts.Zero ? $"takes {Words.Span(move.Linger)} longer to recover" : null,
        ];
        return $"{Who(scene, move)}: {string.Join("; ", parts.OfType<string>())}";
    }

    /// <summary>What is done, and the mark to which it leads, if any that is still there.</summary>
    public static string Led(string? what, int? to, Scene scene) => to is { } mark && mark < scene.Brief.Marks.Count ? $"{what} to {Page.Clean(scene.Brief.Marks[mark].Name)}".TrimStart() : what ?? string.Empty;

    /// <summary>Name of the attacker, or of the hero alone.</summary>
    public static string Who(Scene scene, Move move) => Page.Clean(move.Attacker is { } a ? scene.Brief.Attackers[a].Name : scene.Brief.Hero.Name);
}
