using System.Runtime.CompilerServices;
using Generator.Domain;
using Generator.Library;
using Generator.Library.Files.Notes;
using Generator.Library.Reading;
using Newtonsoft.Json;

namespace Generator.Testing;

/// <summary>
/// Two-person forms that are taught in print, and fights against several joined from such forms, as notes (<c>benchmarks/forms.json</c>): the sequence of each, in words of our own, from the source named.
/// </summary>
/// <param name="Name">What it is called.</param>
/// <param name="Source">Where it is published.</param>
/// <param name="IsFight">Several forms by several attackers.</param>
/// <param name="Read">What the reader makes of it.</param>
public sealed record PublishedForms(string Name, string Source, bool IsFight, ReadSketch Read)
{
    /// <summary>All of them, each attacker three metres away at the beginning; where both kneel, within reach.</summary>
    public static IReadOnlyList<PublishedForms> All(Book book) =>
        [.. JsonConvert.DeserializeObject<List<Stored>>(File.ReadAllText(Where()))!.Select(s => new PublishedForms(s.Name, s.Source, s.Kind == "fight", Notes(s, book)))];

    private static string Where([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "benchmarks", "forms.json"));

    private static ReadSketch Notes(Stored form, Book book)
    {
        var brief = new Brief
        {
            Title = form.Name,
            Length = new Length(null, form.Moves, form.Tolerance),
            Hero = new HeroPart { Name = "Hero", Skill = Skill.Stunt, Kneels = form.Kneel ? Side.Left : null },
            Attackers = [.. form.Attackers.Select(a => form.Kneel ? Kneeling(a.Key, a.Value) : new AttackerPart { Name = a.Key, Skill = Skill.Stunt, Bearing = Clock(a.Value), Distance = new Centimetres(300) })],
        };
        var read = NotesReader.Parse(new SourceFile(form.Name, string.Join('\n', form.Notes)), book, brief);
        return read.IsGood ? read.Value : throw new InvalidOperationException(read.ToText());
    }

    private static AttackerPart Kneeling(string name, string clock) =>
        new() { Name = name, Skill = Skill.Stunt, Bearing = Clock(clock), Distance = AttackerPart.NearestOpening, Entrance = HalfCounts.Zero, Kneels = Side.Left };

    private static Bearing Clock(string text) => Bearing.TryParse(text, out var bearing) ? bearing : throw new FormatException(text);

    private sealed record Stored(string Name, string Source, string Kind, int Moves, int Tolerance, IReadOnlyDictionary<string, string> Attackers, IReadOnlyList<string> Notes, bool Kneel = false);
}
