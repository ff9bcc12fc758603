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
        var path = Path.Combine(rig.Folder, "kept.routine.json");
        var points = new List<int>();
        var rescue = new RescueFile(path, points.Add);
        rescue.Keep(Nothing, 3);
        rescue.Close(delete: false);
        Assert.True(File.Exists(path));
        Assert.Equal([3], points);
        rescue.Close(delete: true);
        Assert.False(File.Exists(path));
    }

    /// <summary>No system takes a name with a zero in it, and says so otherwise than by a fault of input or output.</summary>
    [Fact]
    public void A_path_that_no_system_takes_is_no_fault_of_the_run()
    {
        var points = new List<int>();
        var rescue = new RescueFile("kept\0.routine.json", points.Add);
        rescue.Keep(Nothing, 3);
        rescue.Close(delete: true);
        Assert.Empty(points);
    }

    [Fact]
    public void After_trouble_with_one_routine_the_next_is_kept()
    {
        using var rig = new Rig();
        var path = Path.Combine(rig.Folder, "kept.routine.json");
        using var told = new ManualResetEventSlim();
        var points = new List<int>();
        var rescue = new RescueFile(path, p =>
        {
            points.Add(p);
            told.Set();
            if (p == 3)
            {
                throw new InvalidOperationException("The first one fails.");
            }
        });
        rescue.Keep(Nothing, 3);
        told.Wait(TimeSpan.FromMinutes(5));
        rescue.Keep(Nothing, 2);
        rescue.Close(delete: false);
        Assert.Equal([3, 2], points);
    }
}
