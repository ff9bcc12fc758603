using Newtonsoft.Json.Linq;

namespace Generator.Cli.Tests.Commands;

public class FoldedAuditTests
{
    /// <summary>A fight as it is written down in a rehearsal room: a count a move, whatever the moves take, and no cues.</summary>
    private const string Dock = """
        count,attacker,from,cue,attack,technique,reaction
        1,Milan,,,swing right,outside block left,limb stopped
        2,Milan,,,,cross right,head back
        3,Milan,,,,body hook left,folds
        4,Milan,,,,knee right,folds
        6,Teresa,,,front kick right,parry down right,limb swept out
        7,Teresa,,,,jab left,head turns
        8,Teresa,,,,hip throw right,thrown over
        9,Ruud,,,overhand right,rising block left,limb stopped
        10,Ruud,,,,palm heel right,head back
        11,Ruud,,,,side kick right,staggers back
        12,Milan,,,jab left,slip right,falls short
        13,Milan,,,,hook left,head turns
        14,Milan,,,,uppercut right,head back
        15,Teresa,,,lapel grab right,elbow across right,head turns
        16,Teresa,,,,outside reap right,back fall
        17,Ruud,,,body punch right,parry down left,limb swept out
        18,Ruud,,,,cross right,head back
        19,Ruud,,,,front kick right,folds
        20,Milan,,,round kick mid right,double forearm block left,limb stopped
        21,Milan,,,,body punch right,folds
        22,Milan,,,,knee to head right,knocked flat
        23,Ruud,,,swing left,duck,falls short
        24,Ruud,,,,body hook right,folds
        25,Ruud,,,,shoulder throw right,thrown over
        26,Teresa,,,rush,side step left,stumbles past
        27,Teresa,,,,hook right,head turns
        28,Milan,,,cross right,inside parry right,limb swept in
        29,Milan,,,,jab left,head back
        30,Milan,,,,finishing cross right,out flat
        31,Teresa,,,uppercut right,sway back,falls short
        32,Teresa,,,,finishing hook left,out crumples
        33,Ruud,,,swing right,outside block left,limb stopped
        """;

    [Fact]
    public void A_fight_written_down_by_hand_comes_to_twelve_headings_at_most()
    {
        using var rig = new Rig();
        var file = rig.File("dock.csv", Dock);
        var findings = JObject.Parse(rig.Run("audit", "--json", file).Out)["findings"]!;
        Assert.True(findings.Count() > 40);
        var headings = findings.Where(f => f["under"] is null).ToList();
        Assert.True(headings.Count <= 12, string.Join('\n', headings));
        Assert.All(findings.Where(f => f["under"] is not null), f =>
        {
            var heading = findings[(int)f["under"]!]!;
            Assert.Null(heading["under"]);
            Assert.NotEmpty((string)heading["mended"]!);
        });
    }

    /// <summary>The first moves of it, which take less to mend.</summary>
    [Fact]
    public void In_words_as_many_stand_under_others_as_in_json()
    {
        using var rig = new Rig();
        var file = rig.File("dock.csv", string.Join('\n', Dock.Split('\n').Take(10)));
        var under = JObject.Parse(rig.Run("audit", "--json", file).Out)["findings"]!.Count(f => f["under"] is not null);
        Assert.True(under > 1, $"{under} under others");
        var text = string.Join(' ', rig.Run("audit", file).Out.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains($"{under} of them under others with which they go", text, StringComparison.Ordinal);
    }
}
