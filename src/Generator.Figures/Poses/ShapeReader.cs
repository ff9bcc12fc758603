using Generator.Domain;
using Generator.Library;
using Generator.Library.Reading;

namespace Generator.Figures.Poses;

/// <summary>Reads the shapes of <c>poses.json</c>.</summary>
internal sealed class ShapeReader(IReadOnlyDictionary<string, Pose> poses, Book book)
{
    private readonly HashSet<(RecordKind Kind, string Id)> named = [];

    public Shape Read(ObjectReader source)
    {
        var of = source.RequiredWord<RecordKind>("of");
        var ids = Ids(of);
        var records = source.Texts("records");
        foreach (var record in records)
        {
            if (!ids.Contains(record, StringComparer.Ordinal))
            {
                source.Refuse("records", $"There is no {EnumWords.Of(of)} {FieldText.Quote(record)}.", NearestWords.Maybe(record, ids, "Maybe it is in another file; ids stand here without a side."));
            }
            else if (!named.Add((of, record)))
            {
                source.Refuse("records", $"{FieldText.Quote(record)} is named by two shapes.", "Maybe one of the two is meant for another record.");
            }
        }

        var shape = new Shape
        {
            Id = source.RequiredText("id"),
            Of = of,
            Records = records,
            When = source.Object("when") is { } when ? When(when) : null,
            Side = source.Word<Side>("side") ?? Side.Right,
            Against = Known(source, "against", Ids(RecordKind.Attack)),
            Reaction = Known(source, "reaction", Ids(RecordKind.Reaction)),
            Keeps = source.Flag("keeps"),
            ShowsStart = source.Flag("showsStart"),
            View = PoseReader.AngleOf(source, "view") ?? 0,
            Start = source.Object("start") is { } start ? Instant(start) : null,
            Contact = source.Object("contact") is { } contact ? Instant(contact) : new Instant(),
            End = source.Object("end") is { } end ? Instant(end) : null,
        };
        if (shape.Records.Count == 0 && shape.When is null)
        {
            source.Refuse("id", "The shape is for no record.", "Maybe add \"records\": [ … ] or \"when\": { … }.");
        }

        if (!source.Has("contact"))
        {
            source.Missing("contact");
        }

        source.Finish();
        return shape;
    }

    private static ShapeWhen When(ObjectReader source)
    {
        var when = new ShapeWhen
        {
            Families = source.Words<Family>("families"),
            Heights = source.Words<Height>("heights"),
            Kinds = source.Words<ContactKind>("kinds"),
            Lines = source.Words<LineKind>("lines"),
            Falls = source.Words<FallClass>("falls"),
            Postures = source.Words<Posture>("postures"),
            Props = source.Words<PropUse>("props"),
            Limb = source.Word<Limb>("limb"),
        };
        source.Finish();
        return when;
    }

    private Instant Instant(ObjectReader source)
    {
        var instant = new Instant
        {
            Pose = PoseReader.PoseName(source, "pose", poses),
            Other = PoseReader.PoseName(source, "other", poses),
            Turn = PoseReader.AngleOf(source, "turn"),
            OtherTurn = PoseReader.AngleOf(source, "otherTurn"),
            Distance = PoseReader.ShareOf(source, "distance"),
            Aside = PoseReader.ShareOf(source, "aside") ?? 0,
            OtherLift = PoseReader.ShareOf(source, "otherLift") ?? 0,
            InHand = PoseReader.AngleOf(source, "inHand"),
            Aims = Aims(source, "aims"),
            OtherAims = Aims(source, "otherAims"),
            SecondAims = Aims(source, "secondAims"),
        };
        source.Finish();
        return instant;
    }

    private static List<Aim> Aims(ObjectReader source, string field)
    {
        var aims = new List<Aim>();
        foreach (var aim in source.Objects(field))
        {
            aims.Add(new Aim(aim.RequiredWord<Part>("part"), aim.RequiredWord<Target>("at"), PoseReader.GapOf(aim)) { Grips = aim.Flag("grips") });
            aim.Finish();
        }

        return aims;
    }

    private static string? Known(ObjectReader source, string field, List<string> ids)
    {
        var id = source.Text(field);
        if (id is not null && !ids.Contains(id, StringComparer.Ordinal))
        {
            source.Refuse(field, $"There is no {field} {FieldText.Quote(id)}.", NearestWords.Maybe(id, ids, "Maybe an id without a side is meant."));
        }

        return id;
    }

    private List<string> Ids(RecordKind kind) => [.. (kind switch
    {
        RecordKind.Technique => book.Techniques.Select(t => t.BaseId),
        RecordKind.Attack => book.Attacks.Select(a => a.BaseId),
        _ => book.Reactions.Select(r => r.Id),
    }).Distinct(StringComparer.Ordinal)];
}
