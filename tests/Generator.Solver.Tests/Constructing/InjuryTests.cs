using Generator.Domain;
using Generator.Library;
using Newtonsoft.Json.Linq;

namespace Generator.Solver.Tests.Constructing;

/// <summary>No draft loads an injured part, by the library's own files and not by the program's reading of limits.</summary>
public class InjuryTests
{
    private static readonly Dictionary<string, JObject> Records = ((string[])["attacks", "defences", "strikes", "kicks", "throws", "locks", "escapes", "finishes", "setbacks", "pauses", "reactions"])
        .SelectMany(f => JObject.Parse(File.ReadAllText(Path.Combine(LibraryLoader.BundledFolder, f + ".json"))).Properties().Where(p => p.Value is JArray).SelectMany(p => p.Value.OfType<JObject>().Select(r => (Key: (f == "attacks" ? "A:" : f == "reactions" ? "R:" : "T:") + (string)r["id"]!, Record: r))))
        .ToDictionary(p => p.Key, p => p.Record, StringComparer.Ordinal);

    [Theory]
    [InlineData("injured-right-knee")]
    [InlineData("injured-left-hip")]
    [InlineData("injured-right-wrist")]
    [InlineData("injured-left-shoulder")]
    [InlineData("injured-neck")]
    public void A_hero_is_never_asked_to_load_what_is_injured(string limit)
    {
        var (moves, other) = (0, 0);
        for (var seed = 1; seed <= 4; seed++)
        {
            var brief = Drafts.Plain() with { Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt, Limits = [limit] } };
            foreach (var move in Drafts.Draft(brief, seed, 10).Routine?.Moves ?? [])
            {
                var technique = Drafts.Book.Technique(move.Technique!);
                Assert.False(Loads(Records["T:" + technique.BaseId], technique.Side, limit["injured-".Length..]), technique.Id);
                moves++;
            }

            foreach (var move in Drafts.Draft(Drafts.Plain(), seed, 10).Routine!.Moves)
            {
                var technique = Drafts.Book.Technique(move.Technique!);
                other += Loads(Records["T:" + technique.BaseId], technique.Side, limit["injured-".Length..]) ? 1 : 0;
            }
        }

        Assert.True(moves > 20 && other > 0, $"{moves} moves; {other} of a sound hero would load it");
    }

    [Theory]
    [InlineData("injured-right-knee")]
    [InlineData("injured-left-shoulder")]
    public void Nor_is_an_attacker(string limit)
    {
        var moves = 0;
        for (var seed = 1; seed <= 3; seed++)
        {
            var brief = Drafts.Plain() with { Attackers = [new AttackerPart { Name = "Bruno", Skill = Skill.Stunt, Limits = [limit] }, new AttackerPart { Name = "Wanda" }], Ending = new Ending(["Wanda"], null) };
            foreach (var move in (Drafts.Draft(brief, seed, 10).Routine?.Moves ?? []).Where(m => m.Attacker == 0))
            {
                if (move.Attack is { } id)
                {
                    var attack = Drafts.Book.Attack(id);
                    Assert.False(Loads(Records["A:" + attack.BaseId], attack.Side, limit["injured-".Length..]), id);
                }

                Assert.False(move.Reaction is { } reaction && Loads(Records["R:" + reaction], null, limit["injured-".Length..]), move.Reaction);
                moves++;
            }
        }

        Assert.True(moves > 3, $"{moves} moves");
    }

    /// <summary>Any act of the record names the part, a limb that holds it, or both of them; a record stands for one side and is mirrored for the other.</summary>
    private static bool Loads(JObject record, Side? side, string part)
    {
        var written = (string?)record["side"];
        var mirrored = side is { } s && written is not null && !string.Equals(s.ToString(), written, StringComparison.OrdinalIgnoreCase);
        var wanted = !mirrored ? part : part.StartsWith("left-", StringComparison.Ordinal) ? "right-" + part[5..] : part.StartsWith("right-", StringComparison.Ordinal) ? "left-" + part[6..] : part;
        var limb = wanted.Contains("hip", StringComparison.Ordinal) || wanted.Contains("knee", StringComparison.Ordinal) || wanted.Contains("ankle", StringComparison.Ordinal) ? "leg" : "arm";
        var joint = wanted[(wanted.IndexOf('-', StringComparison.Ordinal) + 1)..];
        HashSet<string> names = joint == wanted ? [wanted] : [wanted, wanted.Replace(joint, limb, StringComparison.Ordinal), joint + "s", limb + "s"];
        return record["load"] is JObject load && load.Properties().SelectMany(p => p.Value is JArray list ? list.Select(v => (string)v!) : [(string)p.Value!]).Any(names.Contains);
    }
}
