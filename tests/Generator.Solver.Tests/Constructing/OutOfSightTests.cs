using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Rules;
using Generator.Solver.Constructing;

namespace Generator.Solver.Tests.Constructing;

/// <summary>How far a bearing is from where a camera would see a hero moment, against the rule of the audit asked bearing by bearing.</summary>
public sealed class OutOfSightTests
{
    [Theory]
    [InlineData("side-kick", false)]
    [InlineData("uppercut", false)]
    [InlineData("elbow-across", false)]
    [InlineData("slap", false)]
    [InlineData("shin-kick", true)]
    [InlineData("collar-hold", true)]
    public void It_is_the_way_to_the_nearest_bearing_that_the_rule_lets_pass(string technique, bool anywhere)
    {
        var told = 0;
        for (var camera = 0; camera < Bearing.Circle; camera++)
        {
            var brief = Drafts.Plain(new Moment([new MomentMove(technique, "Wanda", null, null)], null, null)) with
            {
                Cameras = [new Camera("A", new Bearing(camera), new Centimetres(600), new Centimetres(150))],
            };
            var scene = new Scene(DraftBrief.Complete(brief, Drafts.Book), Drafts.Book);
            var moment = new Ground(scene).Aims.Moments[0];
            var techniques = Drafts.Book.Techniques.Where(t => t.GoesBy(technique)).ToList();
            bool[] seen = [.. Enumerable.Range(0, Bearing.Circle).Select(b => techniques.Exists(t => Sightline.IsSeen(scene, t, b)))];
            if (seen.All(s => s) || !seen.Any(s => s))
            {
                Assert.Null(moment.OutOfSight);
                continue;
            }

            told++;
            for (var b = 0; b < Bearing.Circle; b++)
            {
                var way = Enumerable.Range(0, Bearing.Circle).First(w => seen[new Bearing(b + w).HalfHours] || seen[new Bearing(b - w).HalfHours]);
                Assert.Equal(way, moment.OutOfSight![b]);
            }
        }

        Assert.Equal(anywhere ? 0 : Bearing.Circle, told);
    }
}
