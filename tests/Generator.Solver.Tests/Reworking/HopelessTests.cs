using Generator.Domain;
using Generator.Rules;
using Generator.Solver.Reworking;
using Generator.Solver.Tests.Constructing;
using Generator.Testing;

namespace Generator.Solver.Tests.Reworking;

/// <summary>What of a routine is still said when it is filled anew for somebody who is hurt.</summary>
public class HopelessTests
{
    /// <summary>A cross may be sold otherwise; a finish that nobody with such a knee can sell goes, whatever else changes.</summary>
    [Fact]
    public void A_technique_that_its_partner_cannot_sell_at_all_is_left_open()
    {
        var routine = WrittenFight.Of(Drafts.Plain(), Drafts.Book, "Bruno@12/200", "1 Bruno walk-in cross-right staggers-back ; 5 Bruno - finishing-cross-left out-flat");
        var brief = routine.Brief with { Attackers = [routine.Brief.Attackers[0] with { Limits = ["injured-right-knee"] }] };
        var able = new Scene(brief, Drafts.Book).Able;
        Assert.All(Drafts.Book.Technique("finishing-cross-left").Reactions, r => Assert.NotNull(able.WhyNotReaction(Drafts.Book.ReactionIndex(r), 0)));
        var open = Hopeless.LeftOpen(Original.Of(routine, brief, Drafts.Book), widely: false).Moves;
        Assert.Equal((true, false), (open[0].Technique is not null, open[0].Reaction is not null));
        Assert.Equal((false, false), (open[1].Technique is not null, open[1].Reaction is not null));
    }
}
