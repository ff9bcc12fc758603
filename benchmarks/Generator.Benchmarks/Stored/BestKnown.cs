using Newtonsoft.Json;

namespace Generator.Benchmarks.Stored;

/// <summary>The fewest points ever found for each stored brief, by its name without ending. Entries only go down.</summary>
internal sealed class BestKnown
{
    private readonly SortedDictionary<string, int> points;

    private BestKnown(SortedDictionary<string, int> points) => this.points = points;

    private static string Path => System.IO.Path.Combine(Places.Benchmarks, "best-known.json");

    public static BestKnown Load() => new(new SortedDictionary<string, int>(
        File.Exists(Path) ? JsonConvert.DeserializeObject<Dictionary<string, int>>(File.ReadAllText(Path))! : [], StringComparer.Ordinal));

    /// <summary>Null for a brief of which nothing is known.</summary>
    public int? Of(string name) => points.TryGetValue(name, out var known) ? known : null;

    /// <summary>Takes the points as the best known if they are fewer; tells whether they were.</summary>
    public bool Lower(string name, int found)
    {
        if (points.TryGetValue(name, out var known) && known <= found)
        {
            return false;
        }

        points[name] = found;
        return true;
    }

    public void Save() => File.WriteAllText(Path, JsonConvert.SerializeObject(points, Formatting.Indented) + "\n");
}
