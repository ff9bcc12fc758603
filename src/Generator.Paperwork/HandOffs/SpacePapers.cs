using Generator.Paperwork.Text;

namespace Generator.Paperwork.HandOffs;

/// <summary>The fight for programs that show it in space.</summary>
internal static class SpacePapers
{
    public const string SceneName = "fight.glb";

    /// <summary>How the names of motion files begin and end.</summary>
    public const string MotionPrefix = "motion-";

    /// <inheritdoc cref="MotionPrefix"/>
    public const string MotionEnding = ".bvh";

    /// <summary>None where no figures are drawn.</summary>
    public static IEnumerable<IPaper> Of(PaperSource source)
    {
        if (source.Options.Cards is null)
        {
            yield break;
        }

        var names = PartNames.Of(source.Brief);
        yield return new BytesPaper(SceneName, "previs, layout and game engines: the fight to scale in 3D", s => FightGlb.Of(s, s.Acted!));
        for (var i = 0; i < names.Count; i++)
        {
            var number = i;
            var who = Page.Clean(AllyWords.Everybody(source.Brief).ElementAt(i).Name);
            yield return new TextPaper($"{MotionPrefix}{names[i]}{MotionEnding}", $"animators: how {who} moves", s => BvhFile.Of(s.Acted!.Parts[number], s.Brief.Pulse, s.Acted.To, s.Options.Frames));
        }
    }
}
