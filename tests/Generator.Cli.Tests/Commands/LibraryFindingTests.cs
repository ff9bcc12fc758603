using Generator.Domain;
using Generator.Library;

namespace Generator.Cli.Tests.Commands;

/// <summary>Lists, searches and cards of the library, and files of one's own.</summary>
public sealed class LibraryFindingTests
{
    private static readonly Book Book = Rig.Book;

    public static TheoryData<string, string> Filters => new()
    {
        { "--weight", "5" }, { "--skill", "novice" }, { "--hazard", "neck" }, { "--limb", "leg" }, { "--limb", "left-hand" }, { "--needs", "folded" }, { "--leaves", "on-back" },
    };

    [Theory]
    [MemberData(nameof(Filters))]
    public void A_filter_lists_those_that_fit_and_no_others(string option, string value)
    {
        using var rig = new Rig();
        var expected = Book.Techniques.Where(t => option switch
        {
            "--weight" => t.Weight == 5,
            "--skill" => t is { HeroSkill: Skill.Novice, AttackerSkill: Skill.Novice },
            "--hazard" => t.Hazard.Contains("neck", StringComparison.Ordinal),
            "--limb" => t.Demands.Any(d => d.EndsWith(value, StringComparison.Ordinal)),
            "--needs" => t.Needs.Contains(Posture.Folded),
            _ => t.Reactions.Any(r => Book.Reaction(r).Posture == Posture.OnBack),
        }).Select(t => t.BaseId).Distinct(StringComparer.Ordinal).ToList();
        var listed = Ids(rig.Run("library", "list", option, value).Out);
        Assert.NotEmpty(listed);
        Assert.True(listed.Count < Book.Techniques.Select(t => t.BaseId).Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(expected.Order(StringComparer.Ordinal), listed.Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("--hazard", "zzz", "Maybe one of these is meant: ribs, wrist, face.")]
    [InlineData("--hazard", "nekc", "Maybe neck is meant.")]
    [InlineData("--limb", "lg", "leg")]
    [InlineData("--skill", "novise", "novice")]
    [InlineData("--needs", "foldet", "folded")]
    [InlineData("--leaves", "on-bakc", "on-back")]
    public void A_value_that_no_technique_has_is_refused_with_the_nearest(string option, string value, string nearest)
    {
        using var rig = new Rig();
        var answer = rig.Run("library", "list", option, value);
        Assert.Equal((ExitCode.Input, string.Empty), (answer.Code, answer.Out));
        Assert.Contains($"{option} \"{value}\" is not known.\n  Maybe ", answer.Err, StringComparison.Ordinal);
        Assert.Contains(nearest, answer.Err, StringComparison.Ordinal);
    }

    [Fact]
    public void Filters_and_family_go_together()
    {
        using var rig = new Rig();
        var listed = Ids(rig.Run("library", "list", "throws", "--skill", "trained", "--needs", "held-arm").Out);
        Assert.Contains("foot-sweep", listed);
        Assert.All(listed, id => Assert.Contains(Book.Techniques, t => t.BaseId == id && t.Family == Family.Throw && t.AttackerSkill < Skill.Stunt && t.Needs.Contains(Posture.HeldArm)));
    }

    [Fact]
    public void For_a_brief_the_list_says_what_is_left_out_and_why()
    {
        using var rig = new Rig();
        var brief = rig.File("hall.brief.json", """
            { "length": { "counts": 20 }, "floor": { "width": 8, "depth": 8, "surface": "hard" }, "hero": { "name": "Ines", "skill": "novice" }, "attackers": [ { "name": "Bruno", "limits": [ "no-jump" ] } ] }
            """);
        var text = rig.Run("library", "list", "--for", brief).Out;
        var (listed, left) = (Ids(text[..text.IndexOf("LEFT OUT", StringComparison.Ordinal)]), text[text.IndexOf("LEFT OUT", StringComparison.Ordinal)..].Replace("\n" + new string(' ', 30), " ", StringComparison.Ordinal));
        Assert.DoesNotContain("hip-throw", listed);
        Assert.Contains("outside-block", listed);
        Assert.Matches("\n  flying-side-kick +Flying side kick [a-z ]+asks for stunt, Ines is novice\\.", left);
        Assert.Matches("\n  leaping-punch +Leaping punch [a-z ]+asks for jump, and Bruno has the limit no-jump\\.", left);
        Assert.Matches("\n  sits-down +Sits down needs mats", left);
    }

    [Theory]
    [InlineData("duck-under", "duck under")]
    [InlineData("duck-under", "dukc", "undr")]
    [InlineData("duck-under", "bob and weave")]
    [InlineData("arm-break-finish", "breaks the arm")]
    [InlineData("choke-rear", "rear choke")]
    [InlineData("out-gives-up", "surenders")]
    public void A_search_finds_by_notebook_words_and_with_mistakes(string first, params string[] words)
    {
        using var rig = new Rig();
        var answer = rig.Run(["library", "search", .. words]);
        Assert.Equal(ExitCode.Good, answer.Code);
        Assert.Equal(first, Ids(answer.Out)[0]);
    }

    [Fact]
    public void A_card_says_what_comes_before_and_after()
    {
        using var rig = new Rig();
        var card = rig.Run("library", "show", "knee-to-head").Out;
        Assert.Matches("\n  comes after +defence \\([0-9]+\\): .*parry down", card);
        Assert.Matches("\n  goes on with +strike \\([0-9]+\\): ", card);
        Assert.DoesNotContain("comes after", rig.Run("library", "show", "catch-breath").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_of_ones_own_is_checked_and_connected()
    {
        using var rig = new Rig();
        var file = rig.File("mine.json", """
            {
              "techniques": [
                {
                  "id": "hat-in-face", "name": "Hat in the face", "aliases": ["hat trick"], "family": "strike", "side": "right", "stances": ["left-lead", "right-lead", "square"],
                  "hands": { "left": "unused", "right": "guard", "endLeft": "same", "endRight": "out" }, "window": [-2, 2], "band": { "limb": "arm", "from": 1.2, "to": 1.8, "stepIn": 30 },
                  "counts": 1, "fewestSeconds": 0.6, "needs": ["off-balance"], "reactions": ["clutches-face"], "weight": 2, "kind": "non-contact", "demands": ["right-hand"], "load": { "work": ["right-arm"] }, "safety": "The brim stops a hand short of the face."
                }
              ]
            }
            """);
        var answer = rig.Run("library", "add", file);
        Assert.Equal(ExitCode.Good, answer.Code);
        Assert.StartsWith("Hat in the face right (hat-in-face-right)\n", answer.Out, StringComparison.Ordinal);
        Assert.Matches("\n  comes after +defence \\([0-9]+\\): outside block", answer.Out);
        Assert.EndsWith("\nDEAD ENDS  none\n", answer.Out, StringComparison.Ordinal);
        Assert.Equal("The file stays where it is: name it with --library FOLDER/mine.json.\n", answer.Err);
        var wrong = rig.Run("library", "add", rig.File("wrong.json", "{ \"techniques\": [ { \"id\": \"hat\" } ] }"));
        Assert.Equal((ExitCode.Input, string.Empty), (wrong.Code, wrong.Out));
    }

    private static List<string> Ids(string text) => [.. text.Split('\n').Where(l => l.Length > 2 && l[0] == ' ' && l[2] != ' ').Select(l => l[2..].Split(' ')[0])];
}
