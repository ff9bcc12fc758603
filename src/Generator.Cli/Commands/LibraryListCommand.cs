using System.CommandLine;
using Generator.Cli.Options;
using Generator.Cli.Work;
using Generator.Domain;
using Generator.Library;
using Generator.Library.Reading;
using Generator.Library.Words;
using Generator.Paperwork.Text;
using Generator.Rules;

namespace Generator.Cli.Commands;

/// <summary><c>generator library list</c>.</summary>
internal static class LibraryListCommand
{
    private const int HeaviestWeight = 5;

    public static Command Of(Desk desk)
    {
        var family = CommonOptions.File("FAMILY", $"One of {string.Join(", ", LibraryList.Parts)}; without it all.");
        var weight = NumberOption.Whole("--weight", "N", "Only techniques of this weight, 1 light to 5 a peak.", 1, HeaviestWeight);
        var skill = new Option<string?>("--skill") { HelpName = "SKILL", Description = "Only what novice, trained or stunt performers can do on both sides." };
        var hazard = new Option<string?>("--hazard") { HelpName = "WORD", Description = "Only techniques with this word among their hazards, such as neck." };
        var limb = new Option<string?>("--limb") { HelpName = "LIMB", Description = "Only techniques that ask for hand, leg, left-hand, jump, spin and so on." };
        var needs = new Option<string?>("--needs") { HelpName = "POSTURE", Description = "Only techniques that find somebody in this posture, such as folded." };
        var leaves = new Option<string?>("--leaves") { HelpName = "POSTURE", Description = "Only techniques that can leave somebody in this posture, such as on-back." };
        var forBrief = new Option<string?>("--for") { HelpName = "BRIEF", Description = "Only what the people and the floor of this brief allow; then what is left out, and why." };
        var library = CommonOptions.Library();
        var command = new HouseCommand("list", "Lists ids, names and notebook words by family.") { family, weight, skill, hazard, limb, needs, leaves, forBrief, library };
        command.Example = "generator library list throw --skill trained";
        command.SetAction(parsed =>
        {
            var book = Inputs.Book(parsed.GetValue(library));
            var part = PartOf(parsed.GetValue(family));
            var filter = new TechniqueFilter
            {
                Weight = parsed.GetValue(weight),
                Skill = WordOf<Skill>("--skill", parsed.GetValue(skill)),
                Hazard = HazardOf(parsed.GetValue(hazard), book),
                Limb = LimbOf(parsed.GetValue(limb)),
                Needs = WordOf<Posture>("--needs", parsed.GetValue(needs)),
                Leaves = WordOf<Posture>("--leaves", parsed.GetValue(leaves)),
            };
            var brief = parsed.GetValue(forBrief) is { } path ? Inputs.Brief(path, book, desk) : null;
            var availability = brief is null ? null : new Availability(new Scene(brief, book));
            if (brief?.Ally is { } ally)
            {
                desk.Err.WriteLine($"This is what is left for {brief.Hero.Name}; for {ally.Part.Name} it may be something else.");
            }

            desk.Out.Write(Text(book, part, filter, availability));
            return ExitCode.Good;
        });
        return command;
    }

    private static string Text(Book book, string? part, TechniqueFilter filter, Availability? availability)
    {
        if (!filter.Asks && availability is null)
        {
            return LibraryList.Of(book, part);
        }

        var left = availability?.Techniques.Select(t => t.Id).ToHashSet(StringComparer.Ordinal) ?? [];
        var listed = LibraryList.Of(book, part, t => filter.Takes(t, book) && !left.Contains(t.BaseId), all: false);
        return availability is null ? listed : listed + AvailabilityLines.Of(availability);
    }

    /// <summary>Takes the plural as well.</summary>
    private static string? PartOf(string? word)
    {
        if (word is null)
        {
            return null;
        }

        var known = LibraryList.Parts.FirstOrDefault(p => string.Equals(p, word, StringComparison.OrdinalIgnoreCase) || string.Equals(Plural(p), word, StringComparison.OrdinalIgnoreCase));
        return known ?? throw new RefusedException(
            $"generator library list: there is no family {FieldText.Quote(word)}.",
            NearestWords.Maybe(word, LibraryList.Parts, $"Maybe one of these is meant: {string.Join(", ", LibraryList.Parts)}."));
    }

    private static T? WordOf<T>(string option, string? word)
        where T : struct, Enum
    {
        if (word is null)
        {
            return null;
        }

        var all = EnumWords.All<T>();
        for (var i = 0; i < all.Count; i++)
        {
            if (string.Equals(all[i], PlainWord.Of(word).Replace(' ', '-'), StringComparison.Ordinal))
            {
                return Enum.GetValues<T>()[i];
            }
        }

        throw Unknown(option, word, all);
    }

    private static string? LimbOf(string? word)
    {
        var plain = word is null ? null : PlainWord.Of(word).Replace(' ', '-');
        return plain is null || TechniqueFilter.Limbs.Contains(plain, StringComparer.Ordinal) ? plain : throw Unknown("--limb", word!, TechniqueFilter.Limbs);
    }

    /// <summary>A word that some hazard holds; where nothing is near, what is in danger most often.</summary>
    private static string? HazardOf(string? word, Book book)
    {
        if (word is null || book.Techniques.Any(t => t.Hazard.Contains(word, StringComparison.OrdinalIgnoreCase)))
        {
            return word;
        }

        var known = book.Techniques.SelectMany(t => t.Hazard.Split(", ")).GroupBy(h => h, StringComparer.Ordinal).OrderByDescending(g => g.Count()).ThenBy(g => g.Key, StringComparer.Ordinal).Select(g => g.Key).ToList();
        return NearestWords.Of(word, known).Count > 0 ? throw Unknown("--hazard", word, known) : throw Unknown("--hazard", word, [.. known.Take(3)]);
    }

    private static RefusedException Unknown(string option, string word, IReadOnlyList<string> known) => new(
        $"generator library list: {option} {FieldText.Quote(word)} is not known.",
        NearestWords.Maybe(word, known, $"Maybe one of these is meant: {string.Join(", ", known)}."));

    private static string Plural(string part) => part.EndsWith("sh", StringComparison.Ordinal) ? part + "es" : part + "s";
}
