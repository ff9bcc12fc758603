using System.Runtime.CompilerServices;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Library.Tests.Bundled;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Tests.Files;

/// <summary>The briefs that benchmarks draft must stay readable, whatever is added to library and format.</summary>
public sealed class StoredBriefsTests
{
    [Fact]
    public void Each_is_read_without_a_problem_and_has_a_best_known()
    {
        var folder = Benchmarks();
        var known = JObject.Parse(File.ReadAllText(Path.Combine(folder, "best-known.json")));
        var files = Directory.GetFiles(Path.Combine(folder, "briefs"), "*.brief.json");
        Assert.All(files, file =>
        {
            var problems = new ProblemList();
            var read = BriefReader.Parse(SourceFile.Load(file, problems)!, BundledLibrary.Book);
            Assert.True(read.IsGood, read.ToText());
            var name = Path.GetFileName(file).Replace(".brief.json", string.Empty, StringComparison.Ordinal);
            Assert.Equal(name, read.Value.Title);
            Assert.True(known[name]?.Value<int>() >= 0, $"{name} has no best known");
        });
        Assert.Equal(200, files.Length);
    }

    private static string Benchmarks([CallerFilePath] string caller = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(caller)!, "..", "..", "..", "benchmarks"));
}
