using Generator.Benchmarks.Measuring;
using Newtonsoft.Json;

namespace Generator.Benchmarks.Peers;

/// <summary>What the other ways took in one run, and what it ran on.</summary>
internal sealed record PeerResults
{
    public Machine Machine { get; init; } = new();

    /// <summary>"MiniZinc 2.6.4, Gecode 6.2.0"; null where they are not installed.</summary>
    public string? Gecode { get; init; }

    /// <summary>Seconds that each solver had.</summary>
    public double Limit { get; init; }

    /// <summary>Cores whose processor time was the limit, for machines on which others work as well; 0 when the clock was.</summary>
    public int ByProcessor { get; init; }

    public IReadOnlyList<PeerAnswer> Answers { get; init; } = [];

    public static PeerResults Load(string path) => JsonConvert.DeserializeObject<PeerResults>(File.ReadAllText(path)) ?? throw new InvalidDataException($"{path} holds no results.");

    public void Save(string path)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(path))!);
        File.WriteAllText(path, JsonConvert.SerializeObject(this, Formatting.Indented) + "\n");
    }
}
