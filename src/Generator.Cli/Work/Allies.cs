using System.Globalization;
using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Files.Notes;
using Generator.Library.Reading;
using Generator.Paperwork.Text;
using Newtonsoft.Json.Linq;

namespace Generator.Cli.Work;

/// <summary>What a fight with a second hero cannot be used for yet: everything that searches, and what shows a fight as one hero's.</summary>
internal static class Allies
{
    /// <summary>Stands in rows of a sketch where there is to be nothing.</summary>
    private const string Nothing = "-";

    /// <summary>Refuses a fight with an ally.</summary>
    /// <param name="command">The command; null where it is said by several.</param>
    /// <param name="brief">The brief, or that of the routine.</param>
    /// <param name="cannot">What is not done: "drafts nothing".</param>
    /// <exception cref="RefusedException">There is an ally.</exception>
    public static void Refuse(string? command, Brief brief, string cannot)
    {
        if (AllyWords.WhyNot(brief, cannot) is var (wrong, maybe))
        {
            throw new RefusedException(command is null ? wrong : $"generator {command}: {wrong}", maybe);
        }
    }

    /// <summary>The routine that notes say in full: nothing is filled in beside an ally.</summary>
    /// <param name="name">Name of the notes.</param>
    /// <param name="sketch">What they say.</param>
    /// <param name="book">The library.</param>
    /// <exception cref="RefusedException">Something is open.</exception>
    public static Routine Whole(string name, Sketch sketch, Book book)
    {
        if (sketch.Moves.Select(m => (m.Line, What: Open(m))).FirstOrDefault(m => m.What is not null) is { What: { } what, Line: var line })
        {
            throw new RefusedException(string.Create(CultureInfo.InvariantCulture, $"{name}, line {line}: {what} is open, and the program fills in nothing for two yet."), "Maybe say of every move its count (@4), what is done, and in brackets how it is taken, such as Bruno: > cross right (head back) @4");
        }

        var rows = JObject.Parse(SketchWriter.Text(sketch with { Moves = [.. sketch.Moves.Select(m => m with { Attack = Said(m.Attack), Technique = Said(m.Technique), Reaction = Said(m.Reaction) })] }));
        foreach (var none in rows["moves"]!.SelectMany(m => m.Children<JProperty>()).Where(p => (string?)p.Value is Nothing).ToList())
        {
            none.Remove();
        }

        var routine = RoutineReader.Parse(new SourceFile(name, rows.ToString()), book);
        return routine.IsGood ? routine.Value : throw new RefusedException($"{name}: {routine.Problems[0].Message}", routine.Problems[0].Maybe);
    }

    /// <summary>Nothing gives here, so that a lock or a wish is nothing but what it says.</summary>
    private static SketchCell? Said(SketchCell? cell) => cell is null ? null : cell with { Firmness = Firmness.Said };

    private static string? Open(SketchMove move) => move switch
    {
        { IsGap: true } => "what happens here",
        { Count: null } => "the count",
        { Count: { } count } when count.First != count.Last => "the count",
        { Technique: null, IsSuffered: false } => "what is done",
        { Technique: not null, Reaction: null, Attacker: not null } => "how it is taken",
        _ => null,
    };
}
