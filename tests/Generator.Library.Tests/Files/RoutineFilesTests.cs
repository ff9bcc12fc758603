using Generator.Library.Files;

namespace Generator.Library.Tests.Files;

public sealed class RoutineFilesTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("routine-files-");

    private string Target => Path.Combine(folder.FullName, "fight.routine.json");

    public void Dispose() => folder.Delete(recursive: true);

    [Fact]
    public void A_new_file_and_an_old_one_get_the_whole_text()
    {
        RoutineFiles.Write(Target, "first, and longer");
        RoutineFiles.Write(Target, "second é");
        Assert.Equal("second é"u8.ToArray(), File.ReadAllBytes(Target));
        Assert.Single(folder.GetFiles());
    }

    [Fact]
    public void A_failure_in_the_middle_leaves_the_old_file_whole_and_nothing_else()
    {
        RoutineFiles.Write(Target, "old");
        var error = Assert.Throws<IOException>(() => RoutineFiles.Write(Target, stream =>
        {
            stream.Write("half of the ne"u8);
            throw new IOException("The disk is full.");
        }));
        Assert.Equal("The disk is full.", error.Message);
        Assert.Equal("old", File.ReadAllText(Target));
        Assert.Single(folder.GetFiles());
    }

    /// <summary>What lies on the disk while the new text is half written is what a crash at that moment would leave.</summary>
    [Fact]
    public void While_the_new_file_grows_the_old_one_is_whole()
    {
        RoutineFiles.Write(Target, "old");
        var seen = new List<string>();
        RoutineFiles.Write(Target, stream =>
        {
            for (var i = 0; i < 3; i++)
            {
                stream.Write("part "u8);
                stream.Flush();
                seen.Add(File.ReadAllText(Target));
            }
        });
        Assert.Equal(["old", "old", "old"], seen);
        Assert.Equal("part part part ", File.ReadAllText(Target));
    }

    [Fact]
    public void A_missing_folder_is_an_error_and_makes_nothing()
    {
        Assert.ThrowsAny<IOException>(() => RoutineFiles.Write(Path.Combine(folder.FullName, "none", "x.json"), "text"));
        Assert.Empty(folder.GetFileSystemInfos());
    }

    [Fact]
    public void A_link_stays_a_link_and_its_file_is_replaced()
    {
        RoutineFiles.Write(Target, "old");
        var link = Path.Combine(folder.FullName, "link.json");
        File.CreateSymbolicLink(link, Target);
        RoutineFiles.Write(link, "new");
        Assert.Equal("new", File.ReadAllText(Target));
        Assert.NotNull(new FileInfo(link).LinkTarget);
    }
}
