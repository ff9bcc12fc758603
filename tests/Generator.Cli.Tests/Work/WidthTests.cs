using Generator.Cli.Changes;
using Generator.Cli.Work;
using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Paperwork.Text;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver;
using Generator.Solver.Questions;
using Generator.Solver.Reworking;

namespace Generator.Cli.Tests.Work;

/// <summary>Every command at eighty letters and fewer: no line is longer, and no word is torn.</summary>
public class WidthTests
{
    private const string Notes = "Bruno: wide swing > low parry\nknee\nWanda: collar grab > break free\n";

    private const string Brief = """{ "title": "Two in the yard", "length": { "counts": 16 }, "attackers": [ { "name": "Bruno" }, { "name": "Wanda" } ], "cameras": [ { "name": "A", "bearing": "6", "distance": 5, "height": 1.5 } ] }""";

    private const string Mine = """
        {
          "techniques": [
            {
              "id": "hat-in-face", "name": "Hat in the face", "aliases": ["hat trick"], "family": "strike", "side": "right",
              "stances": ["left-lead", "right-lead", "square"], "endStance": "same",
              "hands": { "left": "unused", "right": "guard", "endLeft": "same", "endRight": "out" }, "bound": ["free"], "endBound": "same",
              "window": [-2, 2], "turn": 0, "carry": "none",
              "band": { "limb": "arm", "from": 1.2, "to": 1.8, "stepIn": 30, "stepOut": 20, "meets": false },
              "counts": 1, "fewestSeconds": 0.6, "needs": ["off-balance", "turned"], "reactions": ["head-turns", "clutches-face"],
              "weight": 2, "heroSkill": "novice", "attackerSkill": "novice", "kind": "non-contact", "knap": "breath", "sells": "any", "height": "high",
              "demands": ["right-hand"], "load": { "work": ["right-arm"] }, "hazard": "eyes", "safety": "The brim stops a hand short of the face."
            }
          ]
        }
        """;

    private static readonly string[] Lines =
    [
        "--help", "draft --help", "complete --help", "alternatives --help", "audit --help", "shape --help", "repair --help", "revise --help", "explain --help", "paperwork --help",
        "library --help", "library list --help", "library show --help", "library search --help", "library check --help", "library add --help", "library pictures --help", "library pictures pictures.html", "rehearse --help", "guide --help", "guide brief", "guide rules", "guide no-such-topic",
        "draft brief.json --rounds 1", "draft brief.json --rounds 1 --out made.csv", "audit broken.csv --brief brief.json", "audit clean.csv", "shape broken.csv --brief brief.json", "shape notes.txt --json", "repair broken.csv --brief brief.json --time 2",
        "revise clean.csv --brief brief.json --time 2", "complete notes.txt --time 2", "explain clean.csv 1", "explain impossible.json --time 2", "alternatives brief.json --number 2 --time 3",
        "paperwork broken.csv --brief brief.json --out papers --from 2027-03-15 --no-pdf", "library list", "library check", "library search swing", "library list --for brief.json", "library show jab", "library add mine.json",
        "draft nowhere.json", "draft --no-such-option", "audit bad.csv", "rehearse nowhere.json",
    ];

    public static TheoryData<string> Commands { get; } = new(Lines);

    [Fact]
    public void No_command_is_left_out()
    {
        using var silent = new StringWriter();
        var (told, asked) = (Lines.ToList(), Names(CommandLine.Root(new Desk { In = TextReader.Null, Out = silent, Err = silent, Stop = default })).ToList());
        Assert.True(asked.Count >= 13);
        Assert.All(asked, name => Assert.True(told.Contains(name + " --help") && told.Exists(t => t.StartsWith(name + " ", StringComparison.Ordinal) && !t.EndsWith("--help", StringComparison.Ordinal) || t == name), name));

        static IEnumerable<string> Names(System.CommandLine.Command command) =>
            command.Subcommands.SelectMany(c => c.Subcommands.Count == 0 ? [c.Name] : Names(c).Select(n => c.Name + " " + n));
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public void Nothing_is_wider_than_a_terminal_of_eighty(string line)
    {
        var answer = Run(line);
        Assert.True(answer.Out.Length + answer.Err.Length > 0, "it said nothing");
        Assert.All(answer.Out.Split('\n'), l => Assert.True(Page.LengthOf(l) <= 80, l));
        foreach (var width in new[] { 80, 60 })
        {
            var shown = Shown(answer.Out + answer.Err, width);
            Assert.All(shown.Split('\n').Where(l => l.TrimStart().Contains(' ', StringComparison.Ordinal)), l => Assert.True(Page.LengthOf(l) <= width, $"{width}: {l}"));
            Assert.Equal(Spoken(answer.Out + answer.Err), Spoken(shown));
        }
    }

    /// <summary>All cards and the whole list: every word of every name stands whole. What the command adds to a card is worked out anew each time, so few are asked of it.</summary>
    [Fact]
    public void The_library_tears_no_name()
    {
        var book = Rig.Book;
        var list = Words(Run("library list").Out);
        var names = book.Techniques.Select(t => (t.Id, t.Name)).Concat(book.Attacks.Select(a => (a.Id, a.Name))).Concat(book.Reactions.Select(r => (r.Id, r.Name))).ToList();
        Assert.All(names.SelectMany(n => n.Name.Split(' ')), w => Assert.Contains(w, list));
        var cards = book.Techniques.Select(t => LibraryCard.Of(t, book)).Concat(book.Attacks.Select(a => LibraryCard.Of(a, book))).Concat(book.Reactions.Select(r => LibraryCard.Of(r, book)))
            .Zip(names, (card, n) => (Card: card, n.Name)).Concat(names.Where((_, i) => i % 90 == 0).Select(n => (Card: Run("library show " + n.Id).Out, n.Name)));
        foreach (var (card, name) in cards)
        {
            Assert.All(card.Split('\n'), l => Assert.True(Page.LengthOf(l) <= 80, l));
            Assert.StartsWith($"{name} (", card, StringComparison.Ordinal);
        }
    }

    /// <summary>Whatever a search comes to: a move that is later, waits longer, gets a cue and comes from elsewhere.</summary>
    [Fact]
    public void A_move_that_shifts_in_every_way_at_once_is_told_in_lines_that_fit()
    {
        var old = Samples.Found(BriefReader.Parse(new SourceFile("brief.json", Brief.Replace("Bruno", "Bartholomew", StringComparison.Ordinal)), Rig.Book).Value!, Rig.Book).Routine!;
        var now = old with { Moves = [old.Moves[0] with { Start = new HalfCounts(7), Linger = new HalfCounts(1), Cue = Cue.Voice, From = new Bearing(7) }] };
        var scene = new Scene(now.Brief, Rig.Book);
        var lines = ChangeLines.Of(new Reworked(scene, old, now, Audit.Of(scene, now), RoutineChange.Between(old, now))).ToList();
        Assert.All(lines, l => Assert.True(Page.LengthOf(l) <= 80, l));
        Assert.Equal("  move 1, Bartholomew: count 1 becomes count 4&, linger 0 becomes 0.5, gets a cue by voice, comes from 3:30", "  " + string.Join(' ', lines.Select(l => l.Trim())));
    }

    private static HashSet<string> Words(string text) => text.Split([' ', '\n', '/'], StringSplitOptions.RemoveEmptyEntries).Select(w => w.Trim(',')).ToHashSet(StringComparer.OrdinalIgnoreCase);

    /// <summary>The words in their order; ruled lines are cut to the width and say nothing.</summary>
    private static IEnumerable<string> Spoken(string text) => text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries).Where(w => w.Any(char.IsLetterOrDigit));

    private static string Shown(string text, int width)
    {
        using var inner = new StringWriter { NewLine = "\n" };
        using var terminal = new TerminalOutput(inner, width, false);
        terminal.Write(text);
        terminal.Flush();
        return inner.ToString();
    }

    private static Answer Run(string line)
    {
        using var rig = new Rig { Draft = (brief, book, options, progress, stop) => Drafting.Draft(brief, book, options, progress, stop) };
        rig.File("clean.csv", Samples.CleanCsv);
        rig.File("broken.csv", Samples.BrokenCsv);
        rig.File("bad.csv", Samples.CleanCsv.Replace("swing-right", "a very long name for a swing that nobody has ever heard of before", StringComparison.Ordinal));
        rig.File("brief.json", Brief);
        rig.File("impossible.json", """{ "length": { "counts": 2 }, "attackers": [ { "name": "Bruno", "out": true }, { "name": "Wanda", "out": true } ], "moments": [ { "technique": "hip-throw", "attacker": "Bruno", "counts": [20, 28] } ] }""");
        rig.File("notes.txt", Notes);
        rig.File("mine.json", Mine);
        return rig.Run([.. line.Split(' ').Select(w => w.Contains(".csv", StringComparison.Ordinal) || w.Contains(".json", StringComparison.Ordinal) || w.Contains(".txt", StringComparison.Ordinal) || w.EndsWith(".html", StringComparison.Ordinal) || w == "papers" ? Path.Combine(rig.Folder, w) : w)]);
    }
}
