using Generator.Domain;
using Generator.Paperwork.SafetyPapers;
using Generator.Paperwork.Text;
using Generator.Rules;
using Generator.Testing;

namespace Generator.Paperwork.Tests.SafetyPapers;

/// <summary>A club that is shaken out of a hand and a bottle that breaks: who has them, where they are afterwards, who checks them.</summary>
public sealed class PropsSheetTests
{
    private static readonly PaperSource Source = Armed();

    private static readonly string Sheet = Flat(Block.TextOf(PropsSheet.Blocks(Source)));

    [Fact]
    public void The_list_follows_each_prop_from_hand_to_floor()
    {
        Assert.Contains("before: in Bruno's right hand", Sheet, StringComparison.Ordinal);
        Assert.Contains("shakes it out of the hand left; then on the floor at", Sheet, StringComparison.Ordinal);
        Assert.Contains("then broken", Sheet, StringComparison.Ordinal);
        Assert.Contains("Checked by the fight captain: " + new string('_', 24), Sheet, StringComparison.Ordinal);
        Assert.Contains("Checked by the props master: " + new string('_', 24), Sheet, StringComparison.Ordinal);
    }

    /// <summary>Twelve runs and a fifth of them, rounded up.</summary>
    [Fact]
    public void Break_aways_are_counted_with_spares()
    {
        Assert.Contains("15 a day: one for each of 12 runs and 3 spare", Sheet, StringComparison.Ordinal);
        Assert.Equal((2, 2, 3), (PropsSheet.Spares(1), PropsSheet.Spares(10), PropsSheet.Spares(11)));
    }

    [Fact]
    public void Risk_assessment_and_fight_call_name_them()
    {
        var hazards = Hazards.Of(Source);
        Assert.Contains(hazards, h => h.Title == "On the floor: club" && h.How.Contains("treads on it", StringComparison.Ordinal));
        Assert.Contains(hazards, h => h.Title == "Splinters: bottle" && h.Controls.Any(c => c.Text.Contains("swept", StringComparison.Ordinal)));
        Assert.Contains(hazards, h => h.Title == "Prop: club" && h.Moves.Count == 1);
        var call = Flat(FightCallSheet.Of(Source, hazards));
        Assert.Contains("Prop: club, in Bruno's right hand.", call, StringComparison.Ordinal);
        Assert.Contains("Prop: bottle, in Wanda's right hand.", call, StringComparison.Ordinal);
    }

    [Fact]
    public void The_moves_name_it()
    {
        var lines = MoveLines.Of(Source.Scene, Source.Routine, Source.Steps).Select(l => l.Trim()).ToList();
        Assert.Contains(". with the club", lines);
        Assert.Contains(lines, l => l.StartsWith(". the club goes to the floor at", StringComparison.Ordinal));
        Assert.Contains(lines, l => l.StartsWith(". the bottle breaks", StringComparison.Ordinal));
    }

    [Fact]
    public void A_name_with_an_article_gets_no_second_one()
    {
        var armed = Armed("the mop");
        var lines = MoveLines.Of(armed.Scene, armed.Routine, armed.Steps).Select(l => l.Trim()).ToList();
        Assert.Contains(". with the mop", lines);
        Assert.Contains(lines, l => l.StartsWith(". the mop goes to the floor at", StringComparison.Ordinal));
    }

    private static string Flat(string text) => string.Join(' ', text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));

    internal static PaperSource Armed(string stick = "club")
    {
        var book = Ferry.Scene.Book.Own;
        var routine = WrittenFight.Of(
            new Brief
            {
                Floor = new FloorPlan { Width = new(1200), Depth = new(1200), MarkX = new(600), MarkY = new(600) },
                Hero = new HeroPart { Name = "Ines", Skill = Skill.Stunt },
                Attackers = [],
                Length = new Length(null, 3, 0),
                Safety = Safety.Default with { Runs = 12 },
                Props = [new PropPart(stick, "stick") { With = 0 }, new PropPart("bottle", "sugar-bottle") { With = 1 }],
            },
            book,
            "Bruno@12/250 Wanda@3/300",
            "12 Bruno prop-flank-swing-right prop-catch-wrist-left arm-caught ; 14 Bruno - prop-lock-and-shake-left disarmed-clutch ; 20 Wanda prop-bottle-swing-right prop-takes-bottle-left presses-on");
        return PaperSource.Of(new Scene(routine.Brief, book), routine);
    }
}
