using Generator.Cli.Guarding;
using Generator.Cli.Work;
using Generator.Domain;

namespace Generator.Cli.Tests.Guarding;

/// <summary>What is kept is a help: no trouble with it may make a good run look broken.</summary>
public sealed class RescueFileTests
{
    private static readonly Routine Nothing = new() { Brief = QuickBrief.Of(2, 24, null), LibraryVersion = string.Empty, Placements = [], Moves = [] };

    [Fact]
    public void What_is_kept_is_there_until_it_is_not_needed()
    {
        using var rig = new Rig();
        var path = Path.Combine(rig.Folder, "mine.rescued-abc");
        var rescue = new RescueFile(path);
        Assert.Null(Kept.Find(path));
        _ = rescue.Keep(() => Nothing, 3);
        rescue.Close(delete: false);
        Assert.Equal(new Kept(path + ".3.routine.json", 3), Kept.Find(path));
        rescue.Close(delete: true);
        Assert.Null(Kept.Find(path));
    }

    [Fact]
    public async Task A_better_one_takes_its_place()
    {
        using var rig = new Rig();
        var path = Path.Combine(rig.Folder, "mine.rescued-abc");
        var rescue = new RescueFile(path);
        foreach (var points in new[] { 12, 12, 3 })
        {
            await rescue.Keep(() => Nothing, points)!;
            Assert.Equal([Kept.PathOf(path, points)], Directory.EnumerateFiles(rig.Folder));
        }

        rescue.Close(delete: true);
        Assert.Null(rescue.Keep(() => Nothing, 1));
        Assert.Empty(Directory.EnumerateFiles(rig.Folder));
    }

    /// <summary>The worker was lost after the second was in its place and before the first was deleted; files of other runs and unfinished ones lie about.</summary>
    [Fact]
    public void Of_two_left_behind_the_later_one_counts()
    {
        using var rig = new Rig();
        var path = Path.Combine(rig.Folder, "mine.rescued-abc");
        foreach (var (name, age) in new[] { (path + ".7.routine.json", 2), (path + ".12.routine.json", 3), (path + "d.1.routine.json", 1), (path + ".routine.json", 0), (path + ".x.routine.json", 0) })
        {
            File.WriteAllText(name, string.Empty);
            File.SetLastWriteTimeUtc(name, new DateTime(2026, 1, 9, 0, 0, 0, DateTimeKind.Utc).AddSeconds(-age));
        }

        Assert.Equal(new Kept(path + ".7.routine.json", 7), Kept.Find(path));
    }

    /// <summary>No system takes a name with a zero in it, and says so otherwise than by a fault of input or output.</summary>
    [Fact]
    public void A_path_that_no_system_takes_is_no_fault_of_the_run()
    {
        var rescue = new RescueFile("kept\0");
        _ = rescue.Keep(() => Nothing, 3);
        rescue.Close(delete: true);
        Assert.Null(Kept.Find("kept\0"));
    }

    [Fact]
    public async Task After_trouble_with_one_routine_the_next_is_kept()
    {
        using var rig = new Rig();
        var path = Path.Combine(rig.Folder, "mine.rescued-abc");
        Directory.CreateDirectory(Kept.PathOf(path, 3));
        var rescue = new RescueFile(path);
        await rescue.Keep(() => Nothing, 3)!;
        Assert.Null(Kept.Find(path));
        await rescue.Keep(() => Nothing, 2)!;
        Assert.Equal(new Kept(Kept.PathOf(path, 2), 2), Kept.Find(path));
    }
}
