using Generator.Domain;
using Generator.Rules.Judging;

namespace Generator.Outside.Tests;

/// <summary>Two-person forms that are taught in print, written in the words of the library: nothing in them is unsafe or broken. The same made wrong still is.</summary>
public sealed class PublishedFormsTests
{
    /// <summary>What a brief asks of a whole fight, and no form is.</summary>
    private static readonly HashSet<string> OfTheWhole = new(StringComparer.Ordinal) { "ending", "setbacks" };

    /// <summary>Source, where the partner stands (and "kneels" where the hero opens on a knee, "both-kneel" where the partner does too), and the moves.</summary>
    public static TheoryData<string, string, string> Forms { get; } = Read();

    [Theory]
    [MemberData(nameof(Forms))]
    public void Nothing_in_a_published_form_is_unsafe_or_broken(string source, string from, string moves) =>
        Assert.True(Wrong(from, moves).Count == 0, source + ": " + string.Join(" ", Wrong(from, moves).Select(f => f.Message)));

    /// <summary>Each is a form of above with one thing wrong: too far, too near, a hand that holds somebody else's place, a face over a folded body.</summary>
    [Theory]
    [InlineData("in-reach", Severity.Broken, "1 walk-in jab-left rocks-back; 2 - cross-right staggers-back; 3 - uppercut-left head-back")]
    [InlineData("in-reach", Severity.Unsafe, "1 lapel-grab lapel-chop-right head-drops; 2 - chop-left front-fall")]
    [InlineData("flow-hands", Severity.Broken, "1 uppercut-right sway-back overswings; 2 - two-on-one-left arm-caught; 3 - uppercut-right jolts-in-hold")]
    [InlineData("opening", Severity.Broken, "1 walk-in lead-kick-left folds; 2 - cross-right head-back")]
    [InlineData("answers-attack", Severity.Broken, "1 front-kick-right wrist-catch-left arm-caught")]
    [InlineData("reset-window", Severity.Unsafe, "1 cross-right inside-parry-left falls-short; 2 cross-left inside-parry-right falls-short")]
    public void The_same_made_wrong_is_still_found(string rule, Severity severity, string moves) =>
        Assert.Contains(Wrong("12", moves), f => f.Rule == rule && f.Severity == severity);

    private static TheoryData<string, string, string> Read()
    {
        var forms = new TheoryData<string, string, string>();
        foreach (var form in File.ReadLines(Path.Combine(AppContext.BaseDirectory, "PublishedForms.txt")).Select(l => l.Split(" | ")))
        {
            forms.Add(form[0], form[1], form[2]);
        }

        return forms;
    }

    private static List<Finding> Wrong(string from, string moves)
    {
        var words = from.Split(' ');
        var both = words.Contains("both-kneel");
        var scene = both || words.Contains("kneels") ? Outside.Scene(h => h with { Kneels = Side.Left }, a => both ? a with { Kneels = Side.Left, Distance = AttackerPart.NearestOpening, Entrance = HalfCounts.Zero } : a) : Outside.Scene();
        Assert.True(Bearing.TryParse(words[0], out var bearing));
        var routine = new Routine
        {
            Brief = scene.Brief,
            LibraryVersion = scene.Book.Version,
            Placements = [new Placement(bearing, both ? AttackerPart.NearestOpening : new Centimetres(300), HalfCounts.Zero)],
            Moves = [.. moves.Split("; ").Select(Move)],
        };
        return [.. Audit.Of(scene, routine).Findings.Where(f => f.Severity >= Severity.Broken && !OfTheWhole.Contains(f.Rule))];
    }

    /// <summary>Count, attack (or a dash for a follow-up), technique, reaction; whoever comes from behind calls.</summary>
    private static Move Move(string text)
    {
        var words = text.Split(' ');
        Assert.True(HalfCounts.TryParseCount(words[0], out var start));
        return new Move { Start = start, Attacker = 0, Attack = words[1] == "-" ? null : words[1], Technique = words[2], Reaction = words[3], Cue = Cue.Voice };
    }
}
