using Generator.Library;
using Generator.Paperwork.Text;

namespace Generator.Cli.Tests.Commands;

public class LibraryCommandTests
{
    [Fact]
    public void The_list_names_every_record_once()
    {
        using var rig = new Rig();
        var listed = rig.Run("library", "list").Out.Split('\n').Where(l => l.Length > 2 && l[0] == ' ' && l[2] != ' ').Select(l => l[2..].Split(' ')[0]).ToList();
        var book = Rig.Book;
        var known = book.Techniques.Select(t => t.BaseId).Concat(book.Attacks.Select(a => a.BaseId)).Distinct(StringComparer.Ordinal).Concat(book.Reactions.Select(r => r.Id)).Concat(book.Combinations.Select(c => c.Id));
        Assert.Equal(known.Order(StringComparer.Ordinal), listed.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_part_is_taken_in_the_singular_and_in_the_plural()
    {
        using var rig = new Rig();
        foreach (var part in LibraryList.Parts)
        {
            var answer = rig.Run("library", "list", part);
            Assert.Equal(ExitCode.Good, answer.Code);
            Assert.StartsWith(part.ToUpperInvariant() + " (", answer.Out, StringComparison.Ordinal);
        }

        Assert.Equal(rig.Run("library", "list", "throw"), rig.Run("library", "list", "Throws"));
        Assert.Equal(rig.Run("library", "list", "finish"), rig.Run("library", "list", "finishes"));
    }

    [Fact]
    public void Every_record_has_a_card_that_says_how_it_is_kept_safe()
    {
        using var rig = new Rig();
        var book = Rig.Book;
        Assert.All(book.Techniques.Select(t => LibraryCard.Of(t, book)).Concat(book.Attacks.Select(a => LibraryCard.Of(a, book))), card => Assert.Contains("\n  kept safe ", card, StringComparison.Ordinal));
        Assert.All(book.Reactions.Select(r => LibraryCard.Of(r, book)), card => Assert.Contains("\n  leaves them ", card, StringComparison.Ordinal));
        Assert.All(book.Techniques, t => Assert.Equal(t.Uses is not null, LibraryCard.Of(t, book).Contains("\n  of the room ", StringComparison.Ordinal)));
        Assert.Contains("something to be driven against behind the attacker", string.Join(' ', LibraryCard.Of(book.Techniques.Single(t => t.Id == "wall-drive"), book).Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
        Assert.StartsWith("Parry down left (parry-down-left)\n", rig.Run("library", "show", "Low Parry, left").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_word_that_is_technique_and_attack_shows_both_cards()
    {
        using var rig = new Rig();
        var cards = rig.Run("library", "show", "left hook").Out;
        Assert.StartsWith("Hook left (hook-left)\n", cards, StringComparison.Ordinal);
        Assert.Contains("\n\nSwing left (swing-left)\n", cards, StringComparison.Ordinal);
    }

    [Fact]
    public void A_library_file_of_the_user_with_a_fault_is_told()
    {
        using var rig = new Rig();
        var answer = rig.Run("library", "list", "--library", rig.File("mine.json", "{ \"techniqes\": [] }"));
        Assert.Equal((ExitCode.Input, string.Empty), (answer.Code, answer.Out));
        Assert.StartsWith("FOLDER/mine.json, line 1", answer.Err, StringComparison.Ordinal);
        Assert.Contains("\n  Maybe ", answer.Err, StringComparison.Ordinal);
    }

    [Fact]
    public void The_check_finds_no_dead_end_and_counts_what_it_walked_through()
    {
        using var rig = new Rig();
        var answer = rig.Run("library", "check");
        Assert.Equal((ExitCode.Good, string.Empty), (answer.Code, answer.Err));
        Assert.EndsWith("\nDEAD ENDS  none\n", answer.Out, StringComparison.Ordinal);
        Assert.Matches("A move can leave the hero in [0-9]+ forms", answer.Out);
        Assert.Contains("\n  grab wrists centre ", answer.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_move_of_ones_own_that_leads_nowhere_is_a_dead_end()
    {
        using var rig = new Rig();
        var file = rig.File("mine.json", """
            {
              "attacks": [
                {
                  "id": "elbow-clamp", "name": "Elbow clamp", "limb": "both hands", "line": "grab-body-side-centre", "stances": ["square"], "from": [-4, 4],
                  "startDistance": 110, "band": { "limb": "arm", "from": 0.7, "to": 1.0 }, "counts": 1, "fewestSeconds": 0.6, "arrives": "step",
                  "grips": { "left": "held", "right": "held", "bound": "front" }, "nonContact": false, "demands": ["left-hand", "right-hand"], "load": { "work": ["arms"] },
                  "miss": { "posture": "off-balance", "openSeconds": 0.6 }, "leavesOpen": "legs", "hazard": "elbows", "safety": "The hands lie above the elbows and press nothing."
                }
              ],
              "techniques": [
                {
                  "id": "clamped", "name": "Clamped", "family": "setback", "stances": ["square"], "endStance": "same",
                  "hands": { "left": "guard-or-out", "right": "guard-or-out", "endLeft": "held", "endRight": "held" }, "bound": ["free"], "endBound": "front",
                  "window": [-4, 4], "band": { "limb": "arm", "from": 0.6, "to": 1.1 }, "counts": 1, "fewestSeconds": 0.6, "answers": ["grab-body-side-centre"],
                  "reactions": ["keeps-grip"], "weight": 2, "kind": "partnered", "load": { "strain": ["elbows"] }, "draws": true, "hazard": "elbows", "safety": "The hero carries the weight of their own arms."
                }
              ]
            }
            """);
        var answer = rig.Run("library", "check", "--library", file);
        Assert.Equal(ExitCode.Forbidden, answer.Code);
        Assert.Contains("lacks an answer to elbow-clamp", answer.Out, StringComparison.Ordinal);
        Assert.Contains("lacks a way to let go or to escape", answer.Out, StringComparison.Ordinal);
        Assert.Contains("comes from clamped (keeps-grip)", answer.Out, StringComparison.Ordinal);
    }
}
