using Generator.Cli.Changes;
using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Revising;
using Generator.Solver.Reworking;

namespace Generator.Cli.Tests.Changes;

/// <summary>What the cast is told of a phrase that was taught: every new move stands under one phrase and no other.</summary>
public class PhraseNewsTests
{
    private static readonly Book Book = Rig.Book;

    private static readonly Routine Taught = RoutineReader.Parse(new SourceFile("taught.json", File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Data", "ferry.routine.json"))), Book).Value!;

    [Fact]
    public void A_move_put_in_anywhere_is_told_once_before_the_first_and_after_the_last_too()
    {
        for (var at = 0; at <= Taught.Moves.Count; at++)
        {
            var extra = Taught.Moves[0] with { Technique = "catch-breath", Attack = null, Attacker = null, Reaction = null };
            var now = Taught with { Moves = [.. Taught.Moves.Take(at), extra, .. Taught.Moves.Skip(at)] };
            var news = News(now);
            var told = Assert.Single(news.SelectMany(n => n.News.Select(text => (n.Phrase, Text: text))), t => t.Text.Contains("new move", StringComparison.Ordinal));
            Assert.Equal(at == 0 ? "1 new move before it" : $"1 new move after {at}", told.Text);
            Assert.InRange(Math.Max(at, 1), told.Phrase.First, told.Phrase.Last);
        }
    }

    [Fact]
    public void Nothing_new_is_no_news() => Assert.All(News(Taught), n => Assert.True(n.IsUnchanged));

    private static IReadOnlyList<PhraseNews> News(Routine now)
    {
        var scene = new Scene(Taught.Brief, Book);
        var revised = new Reworked(scene, Taught, now, Audit.Of(scene, now), RoutineChange.Between(Taught, now));
        return PhraseNews.Of(scene, Taught, revised, [.. Enumerable.Range(0, Taught.Moves.Count)], MarkNews.None);
    }
}
