using Generator.Domain;
using Generator.Library;
using Generator.Library.Loading;
using Generator.Library.Words;

namespace Generator.Library.Tests.Bundled;

public class BundledLibraryTests
{
    private static Book Book => BundledLibrary.Book;

    [Fact]
    public void Loads_without_a_problem()
    {
        var read = LibraryLoader.LoadBundled();
        Assert.True(read.IsGood, read.ToText());
    }

    [Fact]
    public void Holds_at_least_the_records_of_this_edition()
    {
        Assert.True(Book.Techniques.Select(t => t.BaseId).Distinct(StringComparer.Ordinal).Count() >= 300);
        Assert.True(Book.Attacks.Select(a => a.BaseId).Distinct(StringComparer.Ordinal).Count() >= 40);
        Assert.True(Book.Reactions.Count >= 50);
        Assert.Equal(Enum.GetValues<Stance>().Length, Book.Stances.Stances.Count);
    }

    [Fact]
    public void Every_family_has_techniques() => Assert.All(Enum.GetValues<Family>(), f => Assert.True(Book.Techniques.Count(t => t.Family == f) >= 10));

    [Fact]
    public void Every_alias_is_unique_within_its_kind()
    {
        AssertUnique(Book.Techniques.DistinctBy(t => t.BaseId, StringComparer.Ordinal).SelectMany(t => t.Aliases.Append(t.BaseId)));
        AssertUnique(Book.Attacks.DistinctBy(a => a.BaseId, StringComparer.Ordinal).SelectMany(a => a.Aliases.Append(a.BaseId)));
        AssertUnique(Book.Reactions.SelectMany(r => r.Aliases.Append(r.Id)));

        static void AssertUnique(IEnumerable<string> words) =>
            Assert.DoesNotContain(words.GroupBy(PlainWord.Squeezed, StringComparer.Ordinal), g => g.Count() > 1);
    }

    [Fact]
    public void Every_record_says_how_it_is_kept_safe_or_sold_in_a_sentence()
    {
        Assert.All(Book.Techniques.Select(t => t.Safety).Concat(Book.Attacks.Select(a => a.Safety)).Concat(Book.Reactions.Select(r => r.Sell)), text =>
        {
            Assert.True(char.IsAsciiLetterUpper(text[0]), text);
            Assert.EndsWith(".", text, StringComparison.Ordinal);
            Assert.InRange(text.Length, 20, 110);
        });
    }

    [Fact]
    public void Every_reaction_is_used_and_every_finish_has_one()
    {
        var used = Book.Techniques.SelectMany(t => t.Reactions).ToHashSet(StringComparer.Ordinal);
        Assert.All(Book.Reactions, r => Assert.Contains(r.Id, used));
        Assert.All(Book.Techniques.Where(t => t.Family == Family.Finish), t => Assert.NotEmpty(t.Reactions));
    }

    [Fact]
    public void Every_attack_has_an_answer_and_a_setback()
    {
        foreach (var attack in Book.Attacks.Where(a => !a.IsWalkIn))
        {
            var answers = Book.Techniques.Where(t => t.Answers.Contains(attack.Line)).ToList();
            Assert.Contains(answers, t => t.Family is Family.Defence or Family.Escape);

            // A cut, and a prop at the height of the head, nobody takes: that is refused when the library is read.
            Assert.Equal(attack.Line.Kind is not (LineKind.PropOver or LineKind.PropRoundHigh or LineKind.PropSlash), answers.Exists(t => t.Family == Family.Setback));
        }
    }

    [Fact]
    public void What_grips_can_be_escaped_from_where_it_leaves_the_hero()
    {
        foreach (var grab in Book.Attacks.Where(a => a.IsGrab))
        {
            Assert.Contains(Book.Techniques, t => t.Family == Family.Escape
                && t.Answers.Contains(grab.Line)
                && t.Bounds.HasFlag((BoundSet)(1 << (int)grab.GripsBound!.Value))
                && (grab.GripsLeft != HandEnd.Held || t.LeftNeed is HandNeed.Held or HandNeed.Any)
                && (grab.GripsRight != HandEnd.Held || t.RightNeed is HandNeed.Held or HandNeed.Any));
        }
    }

    [Theory]
    [InlineData(Stance.FloorBack, Stance.Square, 8, 14)]
    [InlineData(Stance.FloorBack, Stance.Low, 8, 14)]
    [InlineData(Stance.FloorBack, Stance.KneelingRight, 4, 6)]
    [InlineData(Stance.FloorFront, Stance.LeftLead, 5, 9)]
    [InlineData(Stance.FloorFront, Stance.KneelingLeft, 2, 2)]
    [InlineData(Stance.KneelingLeft, Stance.RightLead, 2, 3)]
    [InlineData(Stance.KneelingLeft, Stance.KneelingRight, 2, 2)]
    [InlineData(Stance.OnLeftLeg, Stance.Square, 2, 2)]
    [InlineData(Stance.LeftLead, Stance.FloorBack, StanceTable.Never, StanceTable.Never)]
    public void Changes_of_stance_take_their_time(Stance from, Stance to, int trained, int novice)
    {
        Assert.Equal(trained, Book.Stances.Time(from, to, Skill.Trained));
        Assert.Equal(trained, Book.Stances.Time(from, to, Skill.Stunt));
        Assert.Equal(novice, Book.Stances.Time(from, to, Skill.Novice));
    }

    [Fact]
    public void Wardrobe_forbids_what_there_is()
    {
        Assert.NotEmpty(Book.Settle.Wardrobe);
        Assert.Equal([Demand.Jump, Demand.Spin, Demand.HighKick], Book.Settle.Wardrobe["heels"]);
        var demanded = Book.Techniques.SelectMany(t => t.Demands).ToHashSet(StringComparer.Ordinal);
        Assert.All(Book.Settle.Wardrobe, w => Assert.Contains(w.Value, demanded.Contains));
        Assert.All(Demand.All, d => Assert.Contains(d, demanded));
    }
}
