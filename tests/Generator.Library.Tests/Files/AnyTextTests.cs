using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Testing;

namespace Generator.Library.Tests.Files;

/// <summary>Whatever a file holds, reading it ends in a value or in problems with their place and advice, never in an exception.</summary>
public class AnyTextTests
{
    private const string Letters = "{}[]\",:;0123456789-+eE.x\\&\n\r\t tnul/*'é\0\f\u2028\uFEFF";

    [Property(MaxTest = 1000)]
    public Property Damaged_briefs_are_read_or_reported() => Prop.ForAll(Arb.From(Briefs.Seeds()), seed =>
    {
        var text = Damage(seed, BriefWriter.Text(RandomBrief.Of(seed % 50, TinyBook.Book)));
        var read = BriefReader.Parse(new SourceFile("x.brief.json", text), TinyBook.Book);
        return Told(read.Problems, read.IsGood);
    });

    [Property(MaxTest = 1000)]
    public Property Damaged_routines_are_read_or_reported() => Prop.ForAll(Arb.From(Briefs.Seeds()), seed =>
    {
        var routine = RandomRoutine.Of(seed % 50, TinyBook.Book);
        var text = Damage(seed, seed % 2 == 0 ? RoutineWriter.Text(routine) : RoutineWriter.Csv(routine));
        var read = RoutineReader.Parse(new SourceFile(seed % 2 == 0 ? "x.json" : "x.csv", text), TinyBook.Book);
        return Told(read.Problems, read.IsGood);
    });

    [Property(MaxTest = 3000)]
    public bool Any_text_at_all_is_read_or_reported(string? text)
    {
        var file = new SourceFile("-", text ?? string.Empty);
        return !BriefReader.Parse(file, TinyBook.Book).IsGood && !RoutineReader.Parse(file, TinyBook.Book).IsGood;
    }

    private static Property Told(IReadOnlyList<Problem> problems, bool good) =>
        (good == (problems.Count == 0) && problems.All(p => p.Maybe.StartsWith("Maybe ", StringComparison.Ordinal) && p.Message.Length > 0 && p.Line >= 0))
            .Label(string.Join('\n', problems))
            .Classify(good, "good all the same")
            .Classify(problems.Count > 1, "several problems");

    /// <summary>One to four letters, or the digits of a number, are taken out, put in or changed.</summary>
    private static string Damage(int seed, string text)
    {
        var chance = new Chance(seed);
        foreach (var _ in Enumerable.Range(0, chance.Whole(1, 4)))
        {
            var at = chance.Whole(0, text.Length - 1);
            var put = chance.Whole(0, 5) switch
            {
                0 => string.Empty,
                1 => "99999999999999999999999999999999999999",
                2 => "null",
                _ => chance.One(Letters.Select(c => c.ToString()).ToList()),
            };
            text = text[..at] + put + text[(at + chance.Whole(0, 1))..];
        }

        return text;
    }
}
