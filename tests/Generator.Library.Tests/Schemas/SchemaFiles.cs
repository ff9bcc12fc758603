using Generator.Library.Loading;
using NJsonSchema;

namespace Generator.Library.Tests.Schemas;

/// <summary>The schemas that come with the library, each read once.</summary>
internal static class SchemaFiles
{
    private static readonly Dictionary<string, Lazy<Task<JsonSchema>>> Schemas =
        Directory.EnumerateFiles(Folder, "*.schema.json").ToDictionary(
            f => Path.GetFileName(f), f => new Lazy<Task<JsonSchema>>(() => JsonSchema.FromFileAsync(f)), StringComparer.Ordinal);

    public static string Folder => Path.Combine(LibraryLoader.BundledFolder, "schema");

    public static IEnumerable<string> Names => Schemas.Keys;

    public static Task<JsonSchema> Read(string name) => Schemas[name].Value;

    /// <summary>The schema that belongs to a data file of the library.</summary>
    public static string NameFor(string file) => file switch
    {
        "settle.json" or "stances.json" or "holds.json" or "notebook.json" or "attacks.json" or "reactions.json" or "manners.json" or "combinations.json" or "styles.json" or "things.json" or "props.json" => Path.ChangeExtension(file, ".schema.json"),
        "room.json" or "pairs.json" or "props-moves.json" => "additions.schema.json",
        _ => "techniques.schema.json",
    };
}
