using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.Tests;

/// <summary>Hand-built routines to print. Nobody says that they are good fights.</summary>
internal static class Fights
{
    public static Brief Ferry { get; } = new()
    {
        Title = "Night ferry, car deck",
        Length = new Length(24, null, 4),
        Floor = new FloorPlan
        {
            Width = new Centimetres(800),
            Depth = new Centimetres(700),
            MarkX = new Centimetres(400),
            MarkY = new Centimetres(350),
            Obstacles = [new Obstacle("bollard", new Centimetres(100), new Centimetres(200), new Centimetres(60), new Centimetres(60))],
        },
        Hero = new HeroPart { Name = "Ines", Height = new Centimetres(168), Skill = Skill.Stunt },
        Attackers =
        [
            new AttackerPart { Name = "Bruno", Height = new Centimetres(186), Skill = Skill.Stunt },
            new AttackerPart { Name = "Wanda", Height = new Centimetres(170), Limits = ["no-back-fall"], Wardrobe = ["heels"], FallsPerRun = 1 },
            new AttackerPart { Name = "Piet", Height = new Centimetres(178), Skill = Skill.Novice },
        ],
        Cameras = [new Camera("Camera A", new Bearing(12), new Centimetres(500), new Centimetres(150))],
    };

    public static Routine Night { get; } = new()
    {
        Brief = Ferry,
        LibraryVersion = "paper-1",
        Placements =
        [
            new Placement(new Bearing(0), new Centimetres(300), HalfCounts.Zero),
            new Placement(new Bearing(6), new Centimetres(300), HalfCounts.FromCounts(4)),
            new Placement(new Bearing(17), new Centimetres(350), HalfCounts.Zero),
        ],
        Moves =
        [
            new Move { Start = Count("3"), Attacker = 0, Attack = "swing", Technique = "parry-down", Reaction = "head-drops" },
            new Move { Start = Count("5"), Attacker = 0, Technique = "rising-knee", Reaction = "back-fall", Linger = HalfCounts.FromCounts(1) },
            new Move { Start = Count("7"), Attacker = 1, Attack = "swing", Technique = "arm-catch", Reaction = "arm-held", Note = "Eyes first,\nthen the hand." },
            new Move { Start = Count("8"), Attacker = 1, Technique = "elbow-finish", Reaction = "out-flat" },
            new Move { Start = Count("11"), Technique = "catch-breath" },
            new Move { Start = Count("12&"), Attacker = 2, Attack = "swing", Cue = Cue.Voice, Technique = "parry-down", Reaction = "head-drops" },
            new Move { Start = Count("13&"), Attacker = 2, Technique = "shove-on", Reaction = "crashes-on" },
            new Move { Start = Count("16"), Attacker = 0, From = new Bearing(4), Attack = "rush", Technique = "knocked-down", Reaction = "holds-off" },
            new Move { Start = Count("19"), Attacker = 0, Attack = "rush" },
        ],
    };

    /// <summary>No cameras, names that try the page, one attacker off the floor and two on one spot; the last stays held.</summary>
    public static Routine Crowded { get; } = new()
    {
        Brief = new Brief
        {
            Title = "A title that somebody went on writing until it no longer fitted on one line of the sheet, \u001b[31mcolours\u001b[0m and all",
            Tempo = new Tempo(90),
            Floor = new FloorPlan { Width = new Centimetres(2000), Depth = new Centimetres(300), MarkX = new Centimetres(1500), MarkY = new Centimetres(150), Surface = Surface.Hard },
            Hero = new HeroPart { Name = "Zoé", Lead = null },
            Attackers =
            [
                new AttackerPart { Name = "Maximiliana-Konstantina the Younger" },
                new AttackerPart { Name = "Bo" },
                new AttackerPart { Name = "Cy" },
            ],
        },
        Placements =
        [
            new Placement(new Bearing(18), new Centimetres(500), HalfCounts.Zero),
            new Placement(new Bearing(18), new Centimetres(500), HalfCounts.Zero),
            new Placement(new Bearing(0), new Centimetres(400), new HalfCounts(5)),
        ],
        Moves =
        [
            new Move { Start = Count("4"), Attacker = 0, Attack = "swing", Technique = "shove-on", Reaction = "crashes-on" },
            new Move { Start = Count("5&"), Attacker = 1, Technique = "arm-catch", Reaction = "arm-held" },
            new Move { Start = Count("7"), Attacker = 0, Technique = "shove-on", Reaction = "crashes-on" },
        ],
    };

    public static Scene SceneOf(Routine routine) => new(routine.Brief, PaperBook.Book);

    public static Verdict NothingFound { get; } = new([], 0, [.. RuleBook.All.Select(_ => 0)]);

    public static Verdict Found { get; } = new(
        [
            new Finding
            {
                Rule = "flow-stance", Severity = Severity.Broken, Move = 2, Count = Count("5"), Who = "Bruno", Measured = 0.5m, Allowed = 1, Unit = "counts",
                Message = "From left lead to right lead takes longer than the gap before Rising knee.", Advice = "Leave 1 counts before this move.",
            },
            new Finding { Rule = "no-waiting", Severity = Severity.Rough, Count = Count("20"), Who = "Piet", Measured = 5.5m, Allowed = 4, Unit = "counts", Points = 3, Message = "Piet could attack but stands waiting." },
            new Finding { Rule = "exposure", Severity = Severity.Note, Move = 8, Count = Count("16"), Who = "Ines", Message = "One fall in this run." },
            new Finding { Rule = "spacing", Severity = Severity.Unsafe, Move = 1, Count = Count("3"), Who = "Bruno, Wanda", Measured = 0.8m, Allowed = 1, Unit = "m", Message = "Bruno and Wanda stand too near one another.", Advice = "Maybe let Wanda enter from another bearing." },
        ],
        3,
        [.. RuleBook.All.Select(r => r.Id == "no-waiting" ? 3 : 0)]);

    public static IReadOnlyList<Step> Steps(Routine routine) => Replay.Of(SceneOf(routine), routine);

    private static HalfCounts Count(string text) => HalfCounts.TryParseCount(text, out var moment) ? moment : throw new FormatException(text);
}
