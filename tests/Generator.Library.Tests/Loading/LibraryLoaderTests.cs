using Generator.Library.Loading;
using Generator.Library.Reading;
using Generator.Library.Tests.Bundled;

namespace Generator.Library.Tests.Loading;

public class LibraryLoaderTests
{
    private const string Own = """
        {
          "$schema": "schema/additions.schema.json",
          "family": "strike",
          "techniques": [
            {
              "id": "ridge-hand", "name": "Ridge hand", "aliases": ["thumb edge"], "side": "right", "stances": ["left-lead"],
              "hands": { "right": "guard", "endRight": "out" }, "band": { "limb": "arm", "from": 1.4, "to": 1.7 },
              "counts": 1, "fewestSeconds": 0.55, "needs": ["turned"], "reactions": ["sways"], "weight": 2,
              "kind": "non-contact", "demands": ["right-hand"], "load": { "work": ["right-arm"] }, "safety": "Cross in front of the face, 15 cm out."
            }
          ],
          "reactions": [
            { "id": "sways", "name": "Sways", "posture": "off-balance", "openSeconds": 0.9, "readySeconds": 1.2, "load": {}, "sell": "Rocks on both feet." }
          ]
        }
        """;

    [Fact]
    public void Records_of_ones_own_come_after_the_others_and_on_both_sides()
    {
        var read = LibraryLoader.Load(LibraryTexts.With(new SourceFile("own.json", Own)));
        Assert.True(read.IsGood, read.ToText());
        Assert.Equal(["ridge-hand-right", "ridge-hand-left"], read.Value.Techniques.TakeLast(2).Select(t => t.Id));
        Assert.Equal("Ridge hand left", read.Value.Technique("ridge-hand-left").Name);
        Assert.Equal("sways", read.Value.Reactions[^1].Id);
    }

    [Fact]
    public void A_file_of_ones_own_is_read_from_disk()
    {
        var path = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName() + ".json");
        try
        {
            File.WriteAllText(path, Own);
            var read = LibraryLoader.LoadBundled(path);
            Assert.True(read.IsGood, read.ToText());
            Assert.True(read.Value.TechniqueIndex("ridge-hand-left") >= 0);
            Assert.Equal(-1, BundledLibrary.Book.TechniqueIndex("ridge-hand-left"));
        }
        finally
        {
            File.Delete(path);
        }
    }

    [Fact]
    public void Missing_files_are_named_one_by_one()
    {
        var folder = Directory.CreateTempSubdirectory();
        try
        {
            File.Copy(Path.Combine(LibraryLoader.BundledFolder, "settle.json"), Path.Combine(folder.FullName, "settle.json"));
            var read = LibraryLoader.Load(folder.FullName);
            Assert.Equal(
                LibraryLoader.Files.Skip(1).Select(f => Path.Combine(folder.FullName, f) + ": There is no such file."),
                read.Problems.Where(p => p.Line == 0).Select(p => p.ToText().Split('\n')[0]));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void Missing_texts_are_named_too()
    {
        var read = LibraryLoader.Load([.. LibraryTexts.All().Where(f => f.Name is not "kicks.json")]);
        var problem = Assert.Single(read.Problems);
        Assert.Equal("kicks.json", problem.File);
    }

    [Fact]
    public void Problems_of_several_files_are_told_at_once()
    {
        var files = LibraryTexts.All().Select(f => f.Name switch
        {
            "kicks.json" => f with { Text = f.Text.Replace("\"weight\": 2", "\"weight\": 9", StringComparison.Ordinal) },
            "attacks.json" => f with { Text = f.Text.Replace("\"arrives\"", "\"arrive\"", StringComparison.Ordinal) },
            "pauses.json" => f with { Text = f.Text[..^5] },
            _ => f,
        });
        var read = LibraryLoader.Load([.. files]);
        Assert.Superset(new HashSet<string>(["attacks.json", "kicks.json", "pauses.json"], StringComparer.Ordinal), read.Problems.Select(p => p.File).ToHashSet(StringComparer.Ordinal));
        Assert.True(read.Problems.Count > 40);
    }

    [Fact]
    public void The_version_changes_with_every_file_and_not_with_line_endings()
    {
        var plain = LibraryLoader.Load(LibraryTexts.All()).Value!.Version;
        Assert.Matches("^2026\\.1-[0-9a-f]{12}$", plain);
        Assert.Equal(BundledLibrary.Book.Version, plain);

        var windows = LibraryTexts.All().Select(f => f with { Text = f.Text.ReplaceLineEndings("\r\n") });
        Assert.Equal(plain, LibraryLoader.Load([.. windows]).Value!.Version);

        var versions = LibraryTexts.All().Select(f => LibraryLoader.Load(LibraryTexts.With(f with { Text = f.Text + "\n" }, f.Name)).Value!.Version).ToList();
        Assert.DoesNotContain(plain, versions);
        Assert.Equal(versions.Count, versions.Distinct(StringComparer.Ordinal).Count());
        Assert.NotEqual(plain, LibraryLoader.Load(LibraryTexts.With(new SourceFile("own.json", Own))).Value!.Version);
    }
}
