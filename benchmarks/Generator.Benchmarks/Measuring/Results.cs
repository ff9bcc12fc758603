using Newtonsoft.Json;

namespace Generator.Benchmarks.Measuring;

/// <summary>The measurements of one run and what it ran on.</summary>
internal sealed record Results
{
    /// <summary>What was measured, in the words of whoever ran it: a commit, as a rule.</summary>
    public string Of { get; init; } = string.Empty;

    public Machine Machine { get; init; } = new();

    /// <summary>Seconds a brief.</summary>
    public double Time { get; init; }

    /// <summary>
    /// Cores whose processor time was the limit, for machines on which others work as well; 0 when the clock was.
    /// </summary>
    public int ByProcessor { get; init; }

    public IReadOnlyList<Measurement> Measurements { get; init; } = [];

    public static Results Load(string path) => JsonConvert.DeserializeObject<Results>(File.ReadAllText(path)) ?? throw new InvalidDataException($"{path} holds no results.");

    /// <summary>Writes a line a measurement, so that files stay small and differences readable.</summary>
    public void Save(string path)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(path))!);
        var head = JsonConvert.SerializeObject(this with { Measurements = [] });
        var lines = Measurements.Select(m => JsonConvert.SerializeObject(m, new RoundedNumbers()));
        File.WriteAllText(path, $"{head[..head.LastIndexOf('[')]}[\n{string.Join(",\n", lines)}\n]}}\n");
    }

    private sealed class RoundedNumbers : JsonConverter<double>
    {
        public override void WriteJson(JsonWriter writer, double value, JsonSerializer serializer) => writer.WriteValue(Math.Round(value, 1));

        public override double ReadJson(JsonReader reader, Type objectType, double existingValue, bool hasExistingValue, JsonSerializer serializer) => throw new NotSupportedException("Only for writing.");
    }
}
