using System.Text.RegularExpressions;
using Generator.Cli.Guides;
using Generator.Cli.Tests.Papers;
using Generator.Cli.Tests.Readme;
using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Files.Notes;
using Generator.Library.Reading;
using Generator.Paperwork.Text;
using Generator.Rules.Judging;
using Newtonsoft.Json.Linq;

namespace Generator.Cli.Tests.Guides;

/// <summary>The guides say of every field that a reader reads what it means, and of none that it does not read.</summary>
public class GuideTests
{
    private const string Unknown = "qqqqqqqqqqqq";

    private static readonly Book Library = Rig.Book;

    public static TheoryData<string> Topics { get; } = new(Guide.Topics.Select(t => t.Topic));

    [Fact]
    public void Every_field_of_a_brief_stands_in_its_table()
    {
        var example = JObject.Parse(Example("brief", "brief"));
        Assert.Empty(BriefReader.Parse(new SourceFile("example.json", example.ToString()), Library).Problems);
        Compare("brief", example, "The whole", text => BriefReader.Parse(text, Library).Problems, least: 12, ["moves", "routine"], [Ally.Word, "way"]);
    }

    /// <summary>By itself, since nothing goes from mark to mark or is held in a hand in a fight with one.</summary>
    [Fact]
    public void Every_field_of_an_ally_stands_in_its_table()
    {
        var example = JObject.Parse(Example("brief", "brief"));
        example.Remove("marks");
        example.Remove("props");
        example[Ally.Word] = JObject.Parse(Example("brief", "ally"))[Ally.Word];
        Assert.Empty(BriefReader.Parse(new SourceFile("example.json", example.ToString()), Library).Problems);
        Assert.Equal(Tables("brief")[Ally.Word].Order(StringComparer.Ordinal), Read(example, (JObject)example[Ally.Word]!, text => BriefReader.Parse(text, Library).Problems));
    }

    /// <summary>By itself, since marks are a list or a way.</summary>
    [Fact]
    public void Every_field_of_a_way_of_marks_stands_in_its_table()
    {
        var example = JObject.Parse(Example("brief", "brief"));
        ((JObject)example["floor"]!).Remove("mark");
        example["marks"] = JObject.Parse(Example("brief", "way"))["marks"];
        Assert.Empty(BriefReader.Parse(new SourceFile("example.json", example.ToString()), Library).Problems);
        Assert.Equal(Tables("brief")["way"].Order(StringComparer.Ordinal), Read(example, (JObject)example["marks"]!, text => BriefReader.Parse(text, Library).Problems));
    }

    [Fact]
    public void Every_style_every_manner_and_every_rule_of_a_good_fight_stands_in_the_guide() =>
        Assert.All([.. Library.Styles.Select(s => s.Id), .. Library.Manners.Select(m => m.Id), .. Enum.GetValues<FightRule>().Select(EnumWords.Of)], id => Named("brief", id));

    /// <summary>Performers' names stand there as NAME.</summary>
    [Fact]
    public void Every_paper_stands_in_the_guide() =>
        Assert.All(Made.Ferry.Files.Keys, f => Named("papers", Regex.Replace(f, @"^(part|motion)-.+\.", "$1-NAME.")));

    [Fact]
    public void Every_field_of_a_routine_stands_in_its_table()
    {
        var example = JObject.Parse(Example("routine", "routine"));
        example.Remove("brief");
        Assert.Empty(RoutineReader.Parse(new SourceFile("example.json", example.ToString()), Library).Problems);
        var page = Tables("routine");
        Assert.Equal(RoutineRow.Fields, page["As a table"][..RoutineRow.Fields.Count]);
        Assert.Equal(OpeningColumns.All, page["As a table"][RoutineRow.Fields.Count..(RoutineTable.Columns.Count - BriefColumns.All.Count)]);
        Assert.Equal(BriefColumns.All, page["As a table"][^BriefColumns.All.Count..]);
        Assert.Equal(["attackers", "brief", "library", "moves", "routine"], page["As JSON"].Order(StringComparer.Ordinal));
        Assert.Equal(page["As JSON"].Order(StringComparer.Ordinal), Read(example, example, text => RoutineReader.Parse(text, Library).Problems));
    }

    [Fact]
    public void The_notes_of_the_guide_are_read()
    {
        var read = SketchReader.Parse(new SourceFile("fight.notes.txt", Example("notes", "notes")), Library);
        Assert.Empty(read.Problems);
        Assert.True(read.Value!.Sketch.Moves.Count > 8);
    }

    [Fact]
    public void Every_short_limit_is_explained()
    {
        var page = Guide.Find("limits")!;
        Assert.All(Limit.All.Where(l => !l.StartsWith("injured-", StringComparison.Ordinal)), l => Assert.Contains($"`{l}`", page, StringComparison.Ordinal));
        Assert.All(PartLimit.All, l => Assert.Contains($"| `{l}` |", page, StringComparison.Ordinal));
        Assert.All(BodyPartWords.All.Select(w => w.Replace("left-", string.Empty, StringComparison.Ordinal).Replace("right-", string.Empty, StringComparison.Ordinal)), w => Assert.Contains(w, page, StringComparison.Ordinal));
    }

    [Fact]
    public void Every_exit_code_is_told()
    {
        var told = Tables("running")["Exit codes"].Select(c => int.Parse(c, System.Globalization.CultureInfo.InvariantCulture)).ToList();
        Assert.Equal(typeof(ExitCode).GetFields(System.Reflection.BindingFlags.Public | System.Reflection.BindingFlags.Static).Select(f => (int)f.GetValue(null)!).Order(), told);
    }

    [Theory]
    [MemberData(nameof(Topics))]
    public void A_topic_fits_eighty_letters_and_is_a_page(string topic)
    {
        using var rig = new Rig();
        var answer = rig.Run("guide", topic);
        Assert.Equal((ExitCode.Good, string.Empty), (answer.Code, answer.Err));
        Assert.All(answer.Out.Split('\n'), l => Assert.True(Page.LengthOf(l) <= Page.Width, l));
        Assert.DoesNotContain("<!--", answer.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("| ", answer.Out.Replace("||", string.Empty, StringComparison.Ordinal).Split("+--")[0], StringComparison.Ordinal);
        var html = GuideText.Html(Guide.Find(topic)!);
        Assert.StartsWith("<h1", html, StringComparison.Ordinal);
        Assert.Contains("<table>", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Everything_is_one_page_with_the_cautions_and_nothing_from_outside()
    {
        using var rig = new Rig();
        var path = Path.Combine(rig.Folder, "guide.html");
        Assert.Equal((ExitCode.Good, string.Empty, "The guide is in FOLDER/guide.html.\n"), (rig.Run("guide", "--out", path) is var a ? a.Code : 0, a.Out, a.Err));
        var html = File.ReadAllText(path);
        Assert.Contains(Cautions.Sheet, html, StringComparison.Ordinal);
        Assert.Equal(Guide.Topics.Count, html.Split("<h1").Length - 1);
        Assert.DoesNotContain("http:", html, StringComparison.Ordinal);
        Assert.Contains("thrown-over", html, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rule_is_a_topic_and_an_unknown_word_gets_the_nearest()
    {
        using var rig = new Rig();
        Assert.Equal(rig.Run("audit", "--explain", "reset-window"), rig.Run("guide", "reset-window"));
        Assert.All(RuleBook.All, r => Assert.Contains(r.Id, rig.Run("guide", "rules").Out, StringComparison.Ordinal));
        Assert.Equal(new Answer(ExitCode.Input, string.Empty, "generator guide: there is no topic \"breif\".\n  Maybe brief is meant.\n"), rig.Run("guide", "breif"));
        Assert.Contains("Maybe one of these is meant: notes, rehearse, brief, ", rig.Run("guide", Unknown).Err, StringComparison.Ordinal);
    }

    private static void Named(string topic, string word) =>
        Assert.True(Guide.Find(topic)!.Contains($"`{word}`", StringComparison.Ordinal), $"src/Generator.Cli/Guides/{topic}.md does not name `{word}`.");

    /// <summary>Compares what the reader knows of each object of the example with the table under its name; the whole may also lie inside something else, by the fields in <paramref name="round"/>.</summary>
    private static void Compare(string topic, JObject example, string whole, Func<SourceFile, IReadOnlyList<Problem>> read, int least, IReadOnlyList<string> round, params IReadOnlyList<string> apart)
    {
        var tables = Tables(topic);
        var known = example.DescendantsAndSelf().OfType<JObject>().ToList()
            .GroupBy(part => part.Parent is null ? whole : part.Ancestors().OfType<JProperty>().First().Name, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.SelectMany(part => Read(example, part, read).Except(part.Parent is null ? round : [], StringComparer.Ordinal)).Distinct().Order(StringComparer.Ordinal), StringComparer.Ordinal);
        Assert.True(known.Count >= least, string.Join(", ", known.Keys));
        Assert.All(known, k => Assert.Equal(tables[k.Key].Order(StringComparer.Ordinal), k.Value));
        Assert.Equal(tables.Keys.Except(apart, StringComparer.Ordinal).Order(StringComparer.Ordinal), known.Keys.Order(StringComparer.Ordinal));
    }

    /// <summary>The fields that a reader knows of a part: it lists them when asked for one that is like none of them.</summary>
    private static IEnumerable<string> Read(JObject whole, JObject part, Func<SourceFile, IReadOnlyList<Problem>> read)
    {
        part[Unknown] = 1;
        var problem = Assert.Single(read(new SourceFile("example.json", whole.ToString())));
        part.Remove(Unknown);
        Assert.Contains(Unknown, problem.Message, StringComparison.Ordinal);
        return problem.Maybe.Replace("Maybe one of these is meant: ", string.Empty, StringComparison.Ordinal).TrimEnd('.').Split(", ").Where(f => f != "$schema").Order(StringComparer.Ordinal);
    }

    private static string Example(string topic, string name) =>
        ReadmeBlock.All(Path.Combine("src", "Generator.Cli", "Guides", topic + ".md")).Single(b => b.Mark == "example: " + name).Text;

    /// <summary>The first cells of the tables under each heading, without their code marks.</summary>
    private static Dictionary<string, List<string>> Tables(string topic)
    {
        var tables = new Dictionary<string, List<string>>(StringComparer.Ordinal);
        var heading = string.Empty;
        foreach (var line in Guide.Find(topic)!.Split('\n'))
        {
            heading = line.StartsWith("## ", StringComparison.Ordinal) ? line[3..] : heading;
            if (line.StartsWith("| `", StringComparison.Ordinal))
            {
                tables.TryAdd(heading, []);
                tables[heading].Add(line.Split('`')[1]);
            }
        }

        return tables;
    }
}
