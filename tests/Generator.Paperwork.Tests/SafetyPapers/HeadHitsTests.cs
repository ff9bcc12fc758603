using System.Globalization;
using System.Text.RegularExpressions;
using Generator.Library;
using Generator.Library.Loading;
using Generator.Paperwork.SafetyPapers;
using Generator.Paperwork.Teaching;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Memories;
using Generator.Testing;
using Newtonsoft.Json.Linq;

namespace Generator.Paperwork.Tests.SafetyPapers;

/// <summary>One count of head-height hits for the rule and for every paper, against a naive one from the library's own files.</summary>
public partial class HeadHitsTests
{
    private static readonly HashSet<string> AtHead =
    [
        .. ((string[])["strikes.json", "kicks.json", "finishes.json"]).SelectMany(Techniques).Where(t => (string?)t["height"] == "high" && (string?)t["knap"] != "breath").Select(t => (string)t["id"]!),

        .. ((string[])["room.json", "pairs.json", "props-moves.json"]).SelectMany(Techniques).Where(t => (string?)t["family"] is "strike" or "kick" or "finish" && (string?)t["height"] == "high" && (string?)t["knap"] != "breath").Select(t => (string)t["id"]!),

        // A defence is a hit where it stops whoever comes in and they clap for it: the palm under the chin.
        .. Techniques("defences.json").Where(t => (string?)t["height"] == "high" && (string?)t["knap"] == "victim" && (bool)t["band"]!["meets"]!).Select(t => (string)t["id"]!),
    ];

    private static readonly HashSet<string> Answering =
        [.. JObject.Parse(File.ReadAllText(Path.Combine(LibraryLoader.BundledFolder, "reactions.json")))["reactions"]!.Where(r => (bool?)r["answersBlow"] == true).Select(r => (string)r["id"]!)];

    private static JToken Techniques(string file) => JObject.Parse(File.ReadAllText(Path.Combine(LibraryLoader.BundledFolder, file)))["techniques"]!;

    [Fact]
    public void The_rule_the_teaching_plan_and_the_risk_assessment_count_the_same()
    {
        var (hits, uncounted) = (0, 0);
        for (var seed = 0; seed < 80; seed++)
        {
            var routine = RandomRoutine.Of(seed, Ferry.Book);
            var scene = new Scene(routine.Brief, Ferry.Book);
            var source = PaperSource.Of(scene, routine);
            var naive = routine.Moves.Count(m => m is { Attacker: not null, Technique: { } id } && AtHead.Contains(Ferry.Book.Technique(id).BaseId) && !Answering.Contains(m.Reaction ?? string.Empty));
            var score = source.Steps.Aggregate(Score.Begin(scene, source.Steps.Count > 0 ? source.Steps[0].Before : Rules.Replaying.Replay.Open(scene, routine)), (s, step) => s.Observe(scene, step));
            var memory = (ExposureMemory)score.MemoryOf("exposure")!;
            var load = Load.Of(scene, source.Steps);
            var twos = source.Steps.Count(s => s is { HasTarget: true, Second: >= 0, Technique: { TakesTwo: true } t } && AtHead.Contains(t.BaseId));
            Assert.Equal(naive + twos, memory.HeadHits.Sum());
            Assert.Equal(memory.HeadHits, load.Skip(1).Select(l => l.HeadHits));
            Assert.Equal(memory.HeroHeadHits, load[0].HeadHits);
            foreach (var told in Hazards.Of(source).Where(h => h.Title.EndsWith("at head height", StringComparison.Ordinal)))
            {
                Assert.Equal(memory.HeadHits.Sum() + memory.HeroHeadHits, int.Parse(InARun().Match(told.How).Groups[1].Value, CultureInfo.InvariantCulture));
            }

            hits += memory.HeadHits.Sum();
            uncounted += source.Steps.Count(s => s is { HasTarget: true, Technique.IsHeadHit: true, Reaction: { AnswersBlow: false, Id: not ("head-back" or "head-turns" or "clutches-face" or "spinning-fall") } });
        }

        Assert.True(hits > 20 && uncounted > 4, $"{hits} hits, {uncounted} of them sold otherwise than by the head");
    }

    [GeneratedRegex(@"(\d+) head-height hits? sold in a run")]
    private static partial Regex InARun();
}
