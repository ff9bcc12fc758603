using Generator.Domain;
using Generator.Library.Files;
using Generator.Library.Loading;
using Generator.Library.Reading;
using Generator.Library.Tests.Bundled;
using Generator.Testing;

namespace Generator.Library.Tests.Files;

public class BriefReaderTests
{
    private const string Least = "\"length\": { \"counts\": 48 }, \"attackers\": [ { \"name\": \"Bruno\" }, { \"name\": \"Wanda\" } ]";

    [Fact]
    public void What_is_not_said_takes_its_default()
    {
        var brief = Good($"{{ {Least} }}");
        Assert.Equal(new Length(48, null, 4), brief.Length);
        Assert.Equal(
            DeepText.Of(new Brief { Attackers = [new AttackerPart { Name = "Bruno" }, new AttackerPart { Name = "Wanda" }], Length = new Length(48, null, 4) }),
            DeepText.Of(brief));
    }

    [Fact]
    public void The_tolerance_of_moves_alone_is_one_move() =>
        Assert.Equal(new Length(null, 20, 1), Good("""{ "length": { "moves": 20 }, "attackers": [ { "name": "Bruno" } ] }""").Length);

    [Fact]
    public void Without_a_mark_it_lies_in_the_middle_of_the_floor_that_is_given()
    {
        var floor = Good($"{{ {Least}, \"floor\": {{ \"width\": 6, \"depth\": 5 }} }}").Floor;
        Assert.Equal((300, 250), (floor.MarkX.Value, floor.MarkY.Value));
    }

    /// <summary>In JSON and in the brief's columns of a table, and under another of its words.</summary>
    [Fact]
    public void What_is_said_of_a_thing_comes_back_from_every_file()
    {
        var book = LibraryLoader.LoadBundled().Value!;
        Brief Told(string text) => BriefReader.Parse(new SourceFile("x.brief.json", text), book).Value!;
        var brief = Told($"{{ {Least}, \"floor\": {{ \"obstacles\": [ {{ \"name\": \"long desk\", \"kind\": \"desk\", \"x\": 1, \"y\": 1, \"width\": 2, \"depth\": 0.8, \"height\": 0.72, \"rated\": true, \"padded\": true }}, {{ \"x\": 5, \"y\": 1, \"width\": 1, \"depth\": 1 }} ] }} }}");
        var thing = brief.Floor.Obstacles[0];
        Assert.Equal(("table", 72, true, true), (thing.Kind, thing.Height?.Value, thing.Rated, thing.Padded));
        Assert.Equal((null, null, false, false), (brief.Floor.Obstacles[1].Kind, brief.Floor.Obstacles[1].Height, brief.Floor.Obstacles[1].Rated, brief.Floor.Obstacles[1].Padded));
        Assert.Equal(brief.Floor.Obstacles, Told(BriefWriter.Text(brief)).Floor.Obstacles);
        var routine = new Routine { Brief = brief, LibraryVersion = "1", Placements = [], Moves = [new Move { Start = new HalfCounts(2), Technique = "catch-breath" }] };
        foreach (var (name, text) in new[] { ("x.csv", RoutineWriter.Csv(routine)), ("x.json", RoutineWriter.Text(routine)) })
        {
            var read = RoutineReader.Parse(new SourceFile(name, text), book);
            Assert.True(read.IsGood, read.ToText());
            Assert.Equal(brief.Floor.Obstacles, read.Value.Brief.Floor.Obstacles);
        }
    }

    [Theory]
    [InlineData("\"kind\": \"tabel\"", "obstacles[0].kind: The library knows no kind of thing called \"tabel\"", "table")]
    [InlineData("\"kind\": \"volcano\"", "no kind of thing called \"volcano\"", "Maybe one of these is meant: table, counter")]
    [InlineData("\"kind\": 3", "obstacles[0].kind", "Maybe")]
    [InlineData("\"height\": 75", "obstacles[0].height", "Maybe it is in centimetres; write metres, such as 0.75")]
    [InlineData("\"rated\": \"yes\"", "obstacles[0].rated", "Maybe")]
    [InlineData("\"padding\": true", "padding", "padded")]
    public void What_is_wrong_of_a_thing_is_told(string field, string where, string maybe)
    {
        var read = BriefReader.Parse(new SourceFile("a.json", $"{{ {Least}, \"floor\": {{ \"obstacles\": [ {{ \"x\": 1, \"y\": 1, \"width\": 1, \"depth\": 1, {field} }} ] }} }}"), LibraryLoader.LoadBundled().Value!);
        Assert.False(read.IsGood);
        Assert.Contains(where, read.ToText(), StringComparison.Ordinal);
        Assert.Contains(maybe, read.ToText(), StringComparison.Ordinal);
    }

    /// <summary>Written and read again it stays; without the word the lead decides.</summary>
    [Theory]
    [InlineData("\"kneels\": \"left\"", Stance.KneelingLeft)]
    [InlineData("\"lead\": \"none\", \"kneels\": \"right\"", Stance.KneelingRight)]
    [InlineData("\"lead\": \"right\"", Stance.RightLead)]
    public void The_hero_may_open_on_a_knee(string words, Stance stance)
    {
        var brief = Good($"{{ {Least}, \"hero\": {{ {words} }} }}");
        Assert.Equal((stance, stance), (brief.Hero.OpeningStance, Good(BriefWriter.Text(brief)).Hero.OpeningStance));
    }

    /// <summary>Nobody opens on a knee that must not, or over one that must not bend.</summary>
    [Theory]
    [InlineData("\"kneels\": \"right\", \"limits\": [\"injured-left-knee\"]", "injured-left-knee")]
    [InlineData("\"kneels\": \"right\", \"limits\": [\"right-knee: no kneel\"]", "right-knee: no kneel")]
    [InlineData("\"kneels\": \"left\", \"limits\": [\"no-kneel\"]", "no-kneel")]
    [InlineData("\"kneels\": \"left\", \"limits\": [\"left-shoulder: no work\"]", null)]
    [InlineData("\"limits\": [\"injured-left-knee\"]", null)]
    public void A_limit_keeps_the_hero_from_opening_on_a_knee(string words, string? forbids)
    {
        var read = BriefReader.Parse(new SourceFile("a.json", $"{{ {Least}, \"hero\": {{ {words} }} }}"), LibraryLoader.LoadBundled().Value!);
        Assert.Equal(forbids is null, read.IsGood);
        Assert.Equal(forbids is not null, read.ToText().Contains($"hero.kneels: \"{forbids}\" forbids", StringComparison.Ordinal));
    }

    /// <summary>Within reach and in from the start, whatever is left out; written and read again it stays.</summary>
    [Fact]
    public void An_attacker_may_open_on_a_knee()
    {
        var brief = Good("{ \"length\": { \"moves\": 8 }, \"attackers\": [ { \"name\": \"Bruno\", \"kneels\": \"right\" } ] }");
        var part = brief.Attackers[0];
        Assert.Equal((Side.Right, 100, HalfCounts.Zero), (part.Kneels!.Value, part.Distance!.Value.Value, part.Entrance!.Value));
        Assert.Equal(part, Good(BriefWriter.Text(brief)).Attackers[0] with { Limits = part.Limits, Wardrobe = part.Wardrobe });
    }

    [Theory]
    [InlineData("\"distance\": 1.4", "attackers[0].distance", "1.30 m is the most")]
    [InlineData("\"entrance\": 4", "attackers[0].entrance", "from the start")]
    [InlineData("\"limits\": [\"no-kneel\"]", "attackers[0].kneels", "forbids opening with the right knee down")]
    public void Nobody_opens_on_a_knee_who_cannot_attack_from_it(string words, string field, string says)
    {
        var read = BriefReader.Parse(new SourceFile("a.json", $"{{ \"length\": {{ \"moves\": 8 }}, \"attackers\": [ {{ \"name\": \"Bruno\", \"kneels\": \"right\", {words} }} ] }}"), LibraryLoader.LoadBundled().Value!);
        Assert.Contains(field, read.ToText(), StringComparison.Ordinal);
        Assert.Contains(says, read.ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_knee_is_left_or_right()
    {
        var read = BriefReader.Parse(new SourceFile("a.json", $"{{ {Least}, \"hero\": {{ \"kneels\": \"both\" }} }}"), TinyBook.Book);
        Assert.Contains("hero.kneels", read.ToText(), StringComparison.Ordinal);
        Assert.Contains("Maybe", read.ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_side_of_the_audience_is_a_camera_of_its_own()
    {
        var cameras = Good($"{{ {Least}, \"audience\": [\"6\", \"8:30\"] }}").Cameras;
        Assert.Equal([new Camera("audience 6", new Bearing(12), new(1000), new(120)), new Camera("audience 8:30", new Bearing(17), new(1000), new(120))], cameras);
    }

    [Fact]
    public void Acts_say_their_share_how_the_hero_stands_and_their_setbacks() => Assert.Equal(
        [new Act(45, HeroStanding.OnTop), new Act(30, HeroStanding.InTrouble, 2), new Act(25, HeroStanding.Even)],
        Good($$"""{ {{Least}}, "acts": [ { "share": 0.45, "hero": "on-top" }, { "share": 0.3, "hero": "in-trouble", "setbacks": 2 }, { "share": 0.25, "hero": "even" } ] }""").Acts);

    [Theory]
    [InlineData("", "Bruno Wanda", "master")]
    [InlineData(", \"ending\": { \"out\": [\"Wanda\"], \"last\": \"Wanda\" }", "Wanda", "master")]
    public void A_boss_goes_out_last_and_answers_blows(string more, string names, string manner)
    {
        var brief = BriefReader.Parse(new SourceFile("a.json", $"{{ {Least}, \"boss\": \"wanda\"{more} }}"), BundledLibrary.Book).Value!;
        Assert.Equal((names, "Wanda"), (string.Join(' ', brief.Ending!.Out), brief.Ending.Last));
        Assert.Equal([null, manner], brief.Attackers.Select(a => a.Manner));
        Assert.Equal(40, BundledLibrary.Book.MannerOf(brief.Attackers[1])!.AnsweredPercent);
    }

    [Theory]
    [InlineData("\"boss\": \"Wnda\"", "boss")]
    [InlineData("\"boss\": \"Wanda\", \"ending\": { \"last\": \"Bruno\" }", "boss: Wanda is the boss, and Bruno goes out last.")]
    [InlineData("\"boss\": \"Wanda\", \"ending\": { \"out\": [\"Bruno\"] }", "boss: Wanda is the boss, but is not among those who go out.")]
    public void A_boss_who_does_not_fit_is_refused(string words, string says)
    {
        var text = BriefReader.Parse(new SourceFile("a.json", $"{{ {Least}, {words} }}"), BundledLibrary.Book).ToText();
        Assert.Contains(says, text, StringComparison.Ordinal);
        Assert.Contains("Maybe", text, StringComparison.Ordinal);
    }

    /// <summary>The name of a technique of the hero and of an attack: one is taken, and that and the other are said.</summary>
    [Fact]
    public void A_signature_of_several_meanings_says_which_it_is()
    {
        var read = BriefReader.Parse(new SourceFile("a.json", $"{{ {Least}, \"signature\": \"leg kick\" }}"), BundledLibrary.Book);
        var remark = Assert.Single(read.Remarks);
        Assert.Contains($"the signature is {read.Value!.Signature}.", remark.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(read.Value.Signature!, remark.Maybe, StringComparison.Ordinal);
        Assert.Empty(BriefReader.Parse(new SourceFile("a.json", $"{{ {Least}, \"signature\": \"{read.Value.Signature}\" }}"), BundledLibrary.Book).Remarks);
    }

    [Fact]
    public void Music_has_passages_holds_and_accents()
    {
        var brief = Good($$"""{ {{Least}}, "tempo": [ { "tempo": 90 }, { "from": 9, "tempo": 120, "over": 2.5 }, { "from": "13", "tempo": 60 } ], "holds": [ { "count": 9, "counts": 4 }, { "count": 5, "seconds": 1.5 } ], "accents": [ "7&", 3, 3 ] }""");
        Assert.Equal(new Tempo(120), brief.Tempo);
        Assert.Equal([new Passage(new(0), new(90), new(0)), new Passage(new(16), new(120), new(5)), new Passage(new(24), new(60), new(0))], brief.Music!.Passages);
        Assert.Equal([new MusicHold(new(8), 1.5m, null), new MusicHold(new(16), null, 4)], brief.Music.Holds);
        Assert.Equal([new HalfCounts(4), new HalfCounts(13)], brief.Music.Accents);
        Assert.Null(Good($$"""{ {{Least}}, "tempo": 90, "holds": [], "accents": [] }""").Music);
    }

    [Theory]
    [InlineData("\"tempo\": []", "The list has no passage.")]
    [InlineData("\"tempo\": [ { \"from\": 5, \"tempo\": 90 } ]", "The first passage begins at count 1")]
    [InlineData("\"tempo\": [ { \"tempo\": 90, \"over\": 2 } ]", "The first passage begins at count 1")]
    [InlineData("\"tempo\": [ { \"tempo\": 90 }, { \"from\": 3, \"tempo\": 99, \"over\": 4 }, { \"from\": 6, \"tempo\": 60 } ]", "before the one above it has come to its tempo")]
    [InlineData("\"tempo\": [ { \"from\": 1 } ]", "\"tempo\" is missing.")]
    [InlineData("\"holds\": [ { \"count\": 3 } ]", "so many seconds")]
    [InlineData("\"holds\": [ { \"count\": 3, \"seconds\": 1, \"counts\": 2 } ]", "so many seconds")]
    [InlineData("\"holds\": [ { \"count\": \"3&\", \"seconds\": 1 } ]", "Count 3& lies between two beats")]
    [InlineData("\"holds\": [ { \"count\": 3, \"seconds\": 1 }, { \"count\": 3, \"counts\": 1 } ]", "Count 3 is held twice.")]
    [InlineData("\"holds\": [ { \"count\": 900, \"seconds\": 1 } ]", "The fight is over by count")]
    [InlineData("\"accents\": [ 900 ]", "The fight is over by count")]
    [InlineData("\"accents\": [ 0 ]", "is not a count")]
    public void Music_that_cannot_be_played_is_refused(string words, string says)
    {
        var text = BriefReader.Parse(new SourceFile("a.json", $"{{ {Least}, {words} }}"), TinyBook.Book).ToText();
        Assert.Contains(says, text, StringComparison.Ordinal);
        Assert.Contains("Maybe", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"acts\": [ { \"share\": 0.5, \"hero\": \"even\" } ]", "acts: The shares of the acts add up to 0.5.")]
    [InlineData("\"acts\": [ { \"share\": 1, \"hero\": \"on-top\" } ], \"setbacks\": 1", "setbacks: The brief asks for 1 setback, its acts for 0.")]
    [InlineData("\"acts\": [ { \"hero\": \"even\" } ]", "share")]
    [InlineData("\"acts\": [ { \"share\": 1, \"hero\": \"losing\" } ]", "hero")]
    public void Acts_that_do_not_fit_are_refused(string words, string says)
    {
        var text = BriefReader.Parse(new SourceFile("a.json", $"{{ {Least}, {words} }}"), TinyBook.Book).ToText();
        Assert.Contains(says, text, StringComparison.Ordinal);
        Assert.Contains("Maybe", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_moment_may_name_a_technique_by_any_of_its_words()
    {
        var moments = Good($$"""{ {{Least}}, "moments": [ { "technique": "Hip toss", "attacker": "a2", "counts": [20, "28&"] }, { "moves": [ { "technique": "hip throw left" }, { "technique": "stare-down" } ] } ] }""").Moments;
        Assert.Equal([new MomentMove("hip-throw", "Wanda", null, null)], moments[0].Moves);
        Assert.Equal((38, 55), (moments[0].Earliest?.Value, moments[0].Latest?.Value));
        Assert.Equal(["hip-throw-left", "stare-down"], moments[1].Moves.Select(m => m.Technique));
    }

    [Theory]
    [InlineData("{ \"out\": \"all\" }", "Bruno Wanda", null)]
    [InlineData("{ }", "Bruno Wanda", null)]
    [InlineData("{ \"last\": \"bruno\" }", "Bruno Wanda", "Bruno")]
    [InlineData("{ \"out\": [\"Wanda\"], \"last\": \"A2\" }", "Wanda", "Wanda")]
    [InlineData("{ \"out\": [] }", "", null)]
    public void An_ending_names_who_goes_out(string ending, string names, string? last)
    {
        var read = Good($"{{ {Least}, \"ending\": {ending} }}").Ending!;
        Assert.Equal((names, last), (string.Join(' ', read.Out), read.Last));
    }

    [Fact]
    public void Shares_are_percent_and_speeds_centimetres_a_second()
    {
        var attacker = Good("""{ "length": { "moves": 9 }, "attackers": [ { "name": "Bruno", "share": 0.333, "speed": 2.5, "entrance": 9 } ] }""").Attackers[0];
        Assert.Equal((33, 250, 16), (attacker.SharePercent, attacker.Speed, attacker.Entrance?.Value));
    }

    [Fact]
    public void The_bundled_scenario_reads()
    {
        var brief = BundledScenario.Brief(TinyBook.Book);
        Assert.Equal("Night ferry, car deck", brief.Title);
        Assert.Equal(["Bruno", "Wanda", "Piet"], brief.Attackers.Select(a => a.Name));
        Assert.Equal(["hip-throw"], brief.Moments.SelectMany(m => m.Moves).Select(m => m.Technique));
        Assert.Equal(["Bruno", "Wanda", "Piet"], brief.Ending!.Out);
    }

    private static Brief Good(string text)
    {
        var read = BriefReader.Parse(new SourceFile("x.brief.json", text), TinyBook.Book);
        Assert.Equal(string.Empty, read.ToText());
        return read.Value!;
    }
}
