using System.Net;
using Generator.Library.Files;
using Generator.Library.Files.Notes;
using Generator.Library.Reading;
using Generator.Rehearsal.Offers;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Testing;
using Newtonsoft.Json.Linq;

namespace Generator.Rehearsal.Tests;

/// <summary>Whatever is offered stands beside the fight until it is taken, as one edit, and says what is different.</summary>
public class OfferTests
{
    [Fact]
    public async Task A_filling_is_an_offer_until_it_is_taken_and_too_late_once_the_fight_has_changed()
    {
        var asked = new List<Question>();
        await using var stage = await Stage.Open((question, _) =>
        {
            asked.Add(question);
            return Task.FromResult(Answered(Stage.Yard));
        });
        await stage.Good("lock", """{"revision":0,"move":0,"column":"technique","locked":true}""");
        await stage.Good("type", """{"revision":1,"move":1,"column":"reaction","text":""}""");
        await stage.Good("fill");
        var said = await stage.Settled();
        Assert.Contains("\"?\"", Assert.Single(asked).Text, StringComparison.Ordinal);
        var card = said["offers"]!["cards"]!.Single();
        Assert.Equal(1, (int)card["rows"]!.Single()["now"]!["move"]!);
        Assert.Equal(2, stage.Document.Now.Revision);
        await stage.Good("swap", """{"revision":2,"move":0}""");
        Assert.Equal(HttpStatusCode.Conflict, (await stage.Call("take", """{"revision":3,"card":0}""")).Status);
        await stage.Good("undo", """{"revision":3}""");
        await stage.Good("fill");
        await stage.Settled();
        said = await stage.Good("take", """{"revision":4,"card":0}""");
        Assert.Equal("staggers back", (string?)said["rows"]![1]!["reaction"]);
        Assert.Equal(["technique"], said["rows"]![0]!["locked"]!.Select(l => (string?)l));
        Assert.Equal("fill what was open", (string?)said["undo"]);
    }

    [Fact]
    public async Task A_question_can_be_stopped_and_its_breakdown_is_told()
    {
        await using var stage = await Stage.Open(async (_, stop) =>
        {
            await Task.Delay(Timeout.Infinite, stop);
            return new Answer(string.Empty, string.Empty);
        });
        Assert.Equal("fill what was open", (string?)(await stage.Good("fill"))["offers"]!["running"]);
        Assert.Equal(HttpStatusCode.BadRequest, (await stage.Call("fill")).Status);
        await stage.Good("swap", """{"revision":0,"move":0}""");
        await stage.Good("stop");
        Assert.NotEmpty(((string?)(await stage.Settled())["offers"]!["trouble"])!);
    }

    /// <summary>A worker exercises on the fight as it is, where that can be asked of it.</summary>
    [Fact]
    public async Task What_is_likely_to_be_asked_are_other_ways_for_the_middle()
    {
        var routine = StoredRoutines.All(Stage.Book).First(r => Audit.Of(new Scene(r.Brief, Stage.Book), r).IsClean);
        await using var stage = await Stage.Open(text: RoutineWriter.Text(routine));
        var (likely, moves) = (Question.Likely(stage.Document.Now), routine.Moves.Count);
        Assert.Equal(Errand.OtherWays, likely?.Errand);
        Assert.Equal([(1, (moves - 5) / 2), (((moves - 5) / 2) + 6, moves)], likely!.Kept);
        await stage.Good("clear", """{"revision":0,"move":3}""");
        Assert.Null(Question.Likely(stage.Document.Now));
    }

    [Fact]
    public async Task Other_ways_are_asked_for_the_moves_that_are_chosen_and_not_locked()
    {
        var asked = new List<Question>();
        var other = JObject.Parse(Clean);
        other["moves"]![1]!["reaction"] = "head-back";
        await using var stage = await Stage.Open(
            (question, _) =>
            {
                asked.Add(question);
                return Task.FromResult(new Answer(new JObject { ["alternatives"] = new JArray(new JObject { ["routine"] = other }, new JObject { ["routine"] = JObject.Parse(Clean) }) }.ToString(), string.Empty));
            },
            Clean);
        Assert.True(stage.Document.Now.Seen.Verdict.IsClean, string.Join('\n', stage.Document.Now.Seen.Verdict.Findings.Select(f => f.Message)));
        await stage.Good("lock", """{"revision":0,"move":0,"locked":true}""");
        await stage.Good("ways", """{"revision":1,"move":0,"last":1}""");
        var said = await stage.Settled();
        Assert.Equal([(1, 1)], Assert.Single(asked).Kept);
        Assert.Equal("another way for moves 1 to 2", asked[0].Name);
        Assert.Equal(2, said["offers"]!["cards"]!.Count());
        Assert.Empty(said["offers"]!["cards"]![1]!["rows"]!);
        var figures = await stage.Good("cards");
        Assert.Equal((int)said["offers"]!["number"]!, (int)figures["number"]!);
        Assert.All(figures["cards"]![0]!["comes"]!, f => Assert.Contains("</svg>", (string?)f["svg"], StringComparison.Ordinal));
        Assert.NotEmpty((await stage.Good("time", """{"card":0}"""))["moves"]!);
        await stage.Good("lock", """{"revision":1,"move":1,"locked":true}""");
        Assert.Equal(HttpStatusCode.BadRequest, (await stage.Call("ways", """{"revision":2,"move":0,"last":1}""")).Status);
    }

    [Fact]
    public async Task The_first_of_several_ways_is_offered_before_the_others_are_there_and_may_be_taken_at_once()
    {
        var (first, rest) = (new TaskCompletionSource<Question>(), new TaskCompletionSource());
        var other = JObject.Parse(Clean);
        other["moves"]![1]!["reaction"] = "head-back";
        var one = new JObject { ["routine"] = other }.ToString();
        var stopped = new List<bool>();
        await using var stage = await Stage.Open(
            async (question, stop) =>
            {
                question.Told(one);
                first.TrySetResult(question);
                await rest.Task;
                stopped.Add(stop.IsCancellationRequested);
                question.Told(one);
                return new Answer($$"""{"alternatives":[{{one}},{{one}}]}""", string.Empty);
            },
            Clean);
        await stage.Good("ways", """{"revision":0,"move":1,"last":1}""");
        await first.Task;
        var said = await stage.Good("state");
        Assert.Equal("another way for move 2", (string?)said["offers"]!["running"]);
        Assert.Equal(1, (int)said["offers"]!["cards"]!.Single()["rows"]!.Single()["now"]!["move"]!);
        said = await stage.Good("take", """{"revision":0,"card":0}""");
        Assert.Equal("head back", (string?)said["rows"]![1]!["reaction"]);
        Assert.Equal(JTokenType.Null, said["offers"]!.Type);

        // What comes after is for a fight that is no more.
        rest.SetResult();
        await stage.Good("fill");
        await stage.Settled();
        Assert.Equal([true, false], stopped);
        Assert.DoesNotContain((await stage.Good("state"))["offers"]!["cards"]!, c => (string?)c["name"] == "another way for move 2");
    }

    [Fact]
    public async Task A_solver_that_breaks_down_leaves_what_it_had_found()
    {
        var one = new JObject { ["routine"] = JObject.Parse(Clean) }.ToString();
        await using var stage = await Stage.Open(
            (question, _) =>
            {
                question.Told(one);
                throw new IOException("gone");
            },
            Clean);
        await stage.Good("ways", """{"revision":0,"move":1,"last":1}""");
        Assert.Single((await stage.Settled())["offers"]!["cards"]!);
    }

    [Fact]
    public async Task Somebody_who_is_hurt_is_spared_in_the_brief_of_the_question_and_of_what_is_taken()
    {
        Question? asked = null;
        await using var stage = await Stage.Open(
            (question, _) =>
            {
                asked = question;
                return Task.FromResult(Answered(Clean));
            },
            Clean);
        await stage.Good("hurt", """{"performer":0,"limit":"injured-left-knee"}""");
        await stage.Settled();
        Assert.Equal(["injured-left-knee"], asked!.Brief!.Attackers[0].Limits);
        Assert.Empty(stage.Document.Now.Sketch.Brief.Attackers[0].Limits);
        var said = await stage.Good("take", """{"revision":0,"card":0}""");
        Assert.Equal("injured-left-knee", (string?)said["brief"]!["attackers"]![0]!["limits"]![0]);
        Assert.Equal("Bruno: injured-left-knee", (string?)said["undo"]);

        // The page may have asked for the picture of it just before.
        foreach (var view in new[] { "floor", "time" })
        {
            Assert.True((bool)(await stage.Good(view, """{"card":0}"""))["gone"]!);
        }

        Assert.Equal(HttpStatusCode.BadRequest, (await stage.Call("take", """{"revision":1,"card":0}""")).Status);
        Assert.Equal(HttpStatusCode.BadRequest, (await stage.Call("hurt", """{"performer":0,"limit":"tired"}""")).Status);
    }

    [Fact]
    public async Task Every_mend_that_is_offered_takes_its_finding_away_and_makes_nothing_worse()
    {
        var (found, mended, cards) = (0, 0, 0);
        foreach (var routine in Enumerable.Range(1, 6).Select(seed => RandomRoutine.Of(seed, Stage.Book)))
        {
            await using var stage = await Stage.Open(text: RoutineWriter.Text(routine));
            var before = stage.Document.Now;
            foreach (var finding in before.Seen.Verdict.Grave.Where(f => f.Move > 0).Take(4))
            {
                var mends = Mends.Of(before, Stage.Book, finding);
                Assert.InRange(mends.Count, 0, Mends.Most);
                foreach (var mend in mends)
                {
                    Assert.True(mend.Seen.Verdict.Grave.Count < before.Seen.Verdict.Grave.Count, mend.Name);
                    Assert.True(mend.Seen.Verdict.Findings.Count(f => f.Severity == Domain.Severity.Unsafe) <= before.Seen.Verdict.Findings.Count(f => f.Severity == Domain.Severity.Unsafe), mend.Name);
                }

                (found, mended, cards) = (found + 1, mended + (mends.Count > 0 ? 1 : 0), cards + mends.Count);
            }
        }

        Assert.True(found >= 10 && mended * 2 > found && cards > found, $"{mended} of {found} findings are mended, with {cards} cards");
    }

    [Fact]
    public async Task A_finding_is_mended_with_one_press_unless_the_fight_has_changed()
    {
        await using var stage = await Stage.Open();
        var said = await stage.Good("type", """{"revision":0,"move":1,"column":"count","text":"1"}""");
        var at = said["found"]!["findings"]!.Select((f, i) => (Finding: f, At: i)).First(f => (string?)f.Finding["severity"] is "broken" or "unsafe").At;
        said = await stage.Good("mend", $$"""{"revision":1,"finding":{{at}}}""");
        Assert.Contains(said["offers"]!["cards"]!, c => ((string?)c["name"])!.StartsWith("move 2 at count ", StringComparison.Ordinal));
        var grave = said["found"]!["findings"]!.Count(f => (string?)f["severity"] is "broken" or "unsafe");
        said = await stage.Good("take", """{"revision":1,"card":0}""");
        Assert.True(said["found"]!["findings"]!.Count(f => (string?)f["severity"] is "broken" or "unsafe") < grave);
        Assert.Equal(HttpStatusCode.Conflict, (await stage.Call("mend", """{"revision":1,"finding":0}""")).Status);
    }

    /// <summary>The knee to the head is the hero's own; with the knee hurt it cannot be asked for any more.</summary>
    [Theory]
    [InlineData("injured-right-knee", 0)]
    [InlineData("injured-neck", 1)]
    public async Task A_hero_moment_that_cannot_be_any_more_is_left_out_and_that_is_said(string limit, int kept)
    {
        var fight = JObject.Parse(Clean);
        fight["brief"]!["moments"] = new JArray(new JObject { ["technique"] = "knee-to-head-right", ["attacker"] = "Bruno" });
        var asked = new List<Question>();
        await using var stage = await Stage.Open(
            (question, _) =>
            {
                asked.Add(question);
                return Task.FromResult(Answered(Clean));
            },
            fight.ToString());
        await stage.Good("hurt", new JObject { ["performer"] = -1, ["limit"] = limit }.ToString());
        var card = (await stage.Settled())["offers"]!["cards"]!.Single();
        var brief = Assert.Single(asked).Brief!;
        Assert.Equal((kept, limit), (brief.Moments.Count, brief.Hero.Limits.Single()));
        Assert.Equal(1 - kept, card["gave"]!.Count(g => ((string?)g)!.StartsWith("The hero moment knee to head right goes. ", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task Findings_are_folded_under_those_with_which_they_vanish()
    {
        await using var stage = await Stage.Open((_, _) => Task.FromResult(new Answer("""{"findings":[{"mended":"later"},{"under":0},{}],"points":0}""", string.Empty)));
        await stage.Good("fold");
        var said = (await stage.Settled())["offers"]!;
        Assert.Equal([null, 0, null], said["causes"]!.Select(c => (int?)c["under"]));
        Assert.Equal("later", (string?)said["causes"]![0]!["mended"]);
        Assert.Empty(said["cards"]!);
    }

    [Fact]
    public void Moves_that_were_put_in_before_others_do_not_make_those_look_new()
    {
        var one = SketchReader.Parse(new SourceFile("a.json", Stage.Yard), Stage.Book).Value!.Sketch;
        var other = one with { Moves = [one.Moves[2], .. one.Moves] };
        Assert.Equal([(-1, 0, false), (0, 1, true), (1, 2, true), (2, 3, true)], SideBySide.Of(one, other).Select(p => (p.Was, p.Now, p.IsSame)));
        Assert.Equal([(0, 0, true), (1, 1, false), (2, 2, true)], SideBySide.Of(one, one with { Moves = [one.Moves[0], one.Moves[1] with { Technique = null }, one.Moves[2]] }).Select(p => (p.Was, p.Now, p.IsSame)));
    }

    /// <summary>A fight in which nothing is unsafe or broken.</summary>
    private const string Clean = """
        {
          "brief": { "title": "Behind the cinema", "hero": { "name": "Zora", "skill": "stunt" }, "attackers": [ { "name": "Bruno", "skill": "stunt" } ] },
          "attackers": [ { "name": "Bruno", "bearing": "12", "distance": 2 } ],
          "moves": [
            { "count": 3, "attacker": "Bruno", "attack": "swing-right", "technique": "parry-down-left", "reaction": "head-drops" },
            { "count": 4, "attacker": "Bruno", "technique": "knee-to-head-right", "reaction": "staggers-back" }
          ]
        }
        """;

    private static Answer Answered(string routine) => new(new JObject { ["routine"] = JObject.Parse(routine), ["gave"] = new JArray() }.ToString(), string.Empty);
}
