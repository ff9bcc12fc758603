using Generator.Domain;
using Generator.Library;
using Generator.Library.Loading;
using Generator.Library.Reading;

namespace Generator.Figures.Poses;

/// <summary>Reads <c>poses.json</c>, or tells everything that is wrong with it at once.</summary>
public static class PoseReader
{
    /// <summary>What stands behind the name of a pose that is meant for the other side.</summary>
    private const string Other = ".other";

    private static readonly string[] Parts = ["poses", "walking", "shapes"];

    private static readonly Quantity Angle = new("an angle", -360m, 360m, "degrees");

    private static readonly Quantity Hinge = new("a bend of elbow or knee", 0m, 160m, "degrees", "Maybe the other way is meant: elbows and knees bend one way, so turn the limb with its third number.");

    private static readonly Quantity Share = new("a share of stature", -1m, 1.5m, string.Empty, "Maybe it is in metres or centimetres; write it as a share of stature, such as 0.5.");

    private static readonly Quantity Gap = new("a gap", 0m, 60m, "cm");

    /// <summary>The poses that come with the program.</summary>
    public static Read<PoseBook> LoadBundled(Book book)
    {
        var problems = new ProblemList();
        var file = SourceFile.Load(Path.Combine(LibraryLoader.BundledFolder, "poses.json"), problems);
        return file is null ? new Read<PoseBook>(null, problems) : Load(file, book, problems);
    }

    /// <summary>Poses from a text.</summary>
    public static Read<PoseBook> Load(SourceFile file, Book book) => Load(file, book, new ProblemList());

    private static Read<PoseBook> Load(SourceFile file, Book book, ProblemList problems)
    {
        if (StrictJson.Object(file.Name, file.Text, problems) is not { } root)
        {
            return new Read<PoseBook>(null, problems);
        }

        root.Allow("$schema");
        foreach (var part in Parts.Where(p => !root.Has(p)))
        {
            root.Missing(part);
        }

        var poses = new Dictionary<string, Pose>(StringComparer.Ordinal);
        foreach (var source in root.Objects("poses"))
        {
            var pose = ReadPose(source);
            if (!poses.TryAdd(pose.Id, pose) && pose.Id.Length > 0)
            {
                source.Refuse("id", "This pose is given twice.", "Maybe one of the two can go.");
            }

            poses.TryAdd(pose.Id + Other, pose.Mirrored);
        }

        var stances = Table<Stance>(root, "stances", poses);
        var postures = Table<Posture>(root, "postures", poses);
        var walking = PoseName(root, "walking", poses) ?? string.Empty;
        var reader = new ShapeReader(poses, book);
        var shapes = root.Objects("shapes").Select(reader.Read).ToList();
        root.Finish();
        return new Read<PoseBook>(problems.IsEmpty ? new PoseBook(poses, stances, postures, poses[walking], shapes) : null, problems);
    }

    /// <summary>The name of a pose; a problem when there is none of that name.</summary>
    internal static string? PoseName(ObjectReader source, string field, IReadOnlyDictionary<string, Pose> poses)
    {
        var name = source.Text(field);
        if (name is not null && !poses.ContainsKey(name))
        {
            source.Refuse(field, $"There is no pose {FieldText.Quote(name)}.", NearestWords.Maybe(name, [.. poses.Keys], "Maybe add it to \"poses\"."));
        }

        return name;
    }

    /// <summary>A share of stature; null when absent.</summary>
    internal static double? ShareOf(ObjectReader source, string field) => (double?)source.Number(field, Share);

    /// <summary>An angle; null when absent.</summary>
    internal static double? AngleOf(ObjectReader source, string field) => (double?)source.Number(field, Angle);

    /// <summary>A gap in centimetres; null when absent.</summary>
    internal static int? GapOf(ObjectReader source) => source.Whole("gap", Gap);

    private static Dictionary<T, string> Table<T>(ObjectReader root, string field, Dictionary<string, Pose> poses)
        where T : struct, Enum
    {
        var table = new Dictionary<T, string>();
        if (!root.Has(field))
        {
            root.Missing(field);
        }

        if (root.Object(field) is { } source)
        {
            foreach (var key in Enum.GetValues<T>())
            {
                var word = EnumWords.Of(key);
                if (!source.Has(word))
                {
                    source.Missing(word);
                }

                table[key] = PoseName(source, word, poses) ?? string.Empty;
            }

            source.Finish();
        }

        return table;
    }

    private static Pose ReadPose(ObjectReader source)
    {
        var pose = new Pose
        {
            Id = source.RequiredText("id"),
            Whole = Three(source, "whole"),
            Trunk = Three(source, "trunk"),
            Head = Three(source, "head"),
            LeftArm = Limb(source, "leftArm"),
            RightArm = Limb(source, "rightArm"),
            LeftLeg = Limb(source, "leftLeg"),
            RightLeg = Limb(source, "rightLeg"),
            Open = source.Flag("open"),
            Lift = ShareOf(source, "lift") ?? 0,
        };
        source.Finish();
        return pose;
    }

    private static Bends Three(ObjectReader source, string field) =>
        source.Numbers(field, 3, Angle) is [var forward, var left, var turn] ? new Bends((double)forward, (double)left, (double)turn) : default;

    private static LimbPose Limb(ObjectReader source, string field)
    {
        if (!source.Has(field))
        {
            source.Missing(field, $"\"{field}\": [30, 10, 0, 60]");
            return default;
        }

        var count = source.Entries(field).Count;
        if (source.Numbers(field, count == 5 ? 5 : 4, Angle) is not [var raise, var spread, var twist, var bend, ..] numbers)
        {
            return default;
        }

        if (!Hinge.Allows(bend))
        {
            source.Refuse(field, $"{FieldText.Of(source.Token(field)![3])} is not {Hinge.Range}.", Hinge.Advice);
        }

        return new LimbPose((double)raise, (double)spread, (double)twist, (double)bend, numbers.Count == 5 ? (double)numbers[4] : null);
    }
}
