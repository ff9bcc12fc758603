using Generator.Cli.Tests.Readme;
using Generator.Testing;

namespace Generator.Cli.Tests.Built;

/// <summary>The house is built as its map in DEVELOPERS.md says.</summary>
public sealed class HouseTests
{
    [Fact]
    public void Rooms_know_only_what_the_map_says()
    {
        var map = Map();
        var rooms = House.Rooms();
        Assert.Equal(map.Keys.Order(StringComparer.Ordinal), rooms.Keys);

        foreach (var (name, assembly) in rooms)
        {
            var known = assembly.MainModule.AssemblyReferences.Select(r => House.RoomOf(r.Name)).OfType<string>();
            Assert.Equal([], known.Where(k => !Reaches(map, name).Contains(k)).Select(k => $"{name} uses {k}"));
        }
    }

    [Fact]
    public void A_ring_is_found()
    {
        Assert.Equal(["a, b, c", "d, e"], Cycles.Of([("a", "b"), ("b", "c"), ("c", "a"), ("c", "d"), ("d", "e"), ("e", "d"), ("e", "f")]));
        Assert.Equal([], Cycles.Of([("a", "b"), ("a", "c"), ("b", "c")]));
    }

    /// <summary>Rings that are still there, each a line of the golden file: a new one is a fault, a line that goes is a gain.</summary>
    [Fact]
    public void No_folders_of_a_room_use_one_another_but_those_that_are_known()
    {
        Golden.Matches("rings", string.Concat(House.Rooms().SelectMany(r => Cycles.Of(House.Uses(r.Value).Keys)).Select(ring => ring.Replace("Generator.", "", StringComparison.Ordinal) + "\n")));
    }

    private static HashSet<string> Reaches(Dictionary<string, string[]> map, string room) =>
        [.. map[room].SelectMany(k => Reaches(map, k).Append(k))];

    /// <summary>What each room knows, from the table under "The house".</summary>
    private static Dictionary<string, string[]> Map()
    {
        var rows = File.ReadLines(Path.Combine(ReadmeBlock.Top, "DEVELOPERS.md")).Select(l => l.Split('|', StringSplitOptions.TrimEntries)).Where(c => c.Length > 3 && c[1].StartsWith("`src/Generator.", StringComparison.Ordinal));
        var map = rows.ToDictionary(c => c[1].Trim('`')["src/Generator.".Length..], c => c[3].Split(", ").Where(k => k != "nothing").ToArray(), StringComparer.Ordinal);
        return map.ToDictionary(m => m.Key, m => m.Value is ["all"] ? [.. map.Keys.Where(k => k != m.Key)] : m.Value, StringComparer.Ordinal);
    }
}
