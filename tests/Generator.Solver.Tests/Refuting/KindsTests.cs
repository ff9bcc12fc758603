using System.Runtime.CompilerServices;
using System.Text;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Solver.Explaining;
using Generator.Solver.Questions;
using Generator.Solver.Tests.Constructing;
using Generator.Testing;

namespace Generator.Solver.Tests.Refuting;

/// <summary>Kinds of brief of which anybody sees that they cannot be.</summary>
public class KindsTests
{
    /// <summary>What is said of each: refused when it is read, or the smallest clash and why, the same from a draft as from an explanation.</summary>
    [Fact]
    public void Each_kind_is_refused_or_proven_impossible_with_its_smallest_clash()
    {
        var (text, proven) = (new StringBuilder(), 0);
        var files = Directory.GetFiles(Folder(), "*.brief.json").Order(StringComparer.Ordinal).ToList();
        foreach (var file in files)
        {
            text.Append(Path.GetFileName(file)[..^".brief.json".Length]).Append('\n');
            var read = BriefReader.Parse(new SourceFile(Path.GetFileName(file), File.ReadAllText(file)), Drafts.Book);
            if (read.Value is not { } brief || !read.IsGood)
            {
                text.Append("  refused: ").Append(read.ToText().ReplaceLineEndings("\n    ")).Append("\n\n");
                continue;
            }

            // No search: what is not proven by arithmetic stays unknown.
            var (clash, reasons) = Explain.Quickly(brief, Drafts.Book, CancellationToken.None);
            text.Append(clash.Count == 0 ? "  not proven\n" : string.Concat(clash.Select(c => $"  - {c}\n"))).Append(string.Concat(reasons.Select(r => $"  {r}\n"))).Append('\n');
            proven += clash.Count > 0 ? 1 : 0;
        }

        Assert.Equal(44, files.Count);
        Assert.True(proven >= 40, $"only {proven} proven");
        Golden.Matches("impossible-kinds", text.ToString());
    }

    /// <summary>A draft and an explanation say the same of a brief, and begin with the same clash.</summary>
    [Fact]
    public void A_draft_and_an_explanation_agree()
    {
        foreach (var file in Directory.GetFiles(Folder(), "*.brief.json").Order(StringComparer.Ordinal).Where((_, i) => i % 16 == 3))
        {
            if (BriefReader.Parse(new SourceFile(Path.GetFileName(file), File.ReadAllText(file)), Drafts.Book) is not { IsGood: true, Value: { } brief })
            {
                continue;
            }

            // What to give up is not asked for: the first word of the explanation ends it.
            using var said = new CancellationTokenSource();
            var drafted = Drafts.Ended(brief);
            var explained = Explain.Of(brief, Drafts.Book, new ExplainOptions { Time = Drafts.Hang }, _ => said.Cancel(), said.Token);
            Assert.Equal((DraftStatus.Impossible, Answer.Impossible), (drafted.Status, explained.Brief));
            Assert.Equal(drafted.Clash, explained.Clashes[0]);
            Assert.Equal(drafted.Reasons, explained.Reasons);
        }
    }

    private static string Folder([CallerFilePath] string caller = "") => Path.Combine(Path.GetDirectoryName(caller)!, "Kinds");
}
