using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Questions;
using Generator.Solver.Tests.Constructing;
using Generator.Testing;

namespace Generator.Solver.Tests.Engine;

/// <summary>
/// Somebody comes in late, in the middle or near the end, however long the fight is and however fast: what comes is a clean routine in which nobody acts before they are in, or
/// the word that there is none. A window of the solver that ends long before an entrance once had no place for it, and the program broke down.
/// </summary>
public class LateBriefsTests
{
    private static readonly string[] Names = ["Ash", "Birch", "Cedar", "Dill", "Elm"];

    [Fact]
    public void Late_entrances_never_break_anything()
    {
        var answers = new Dictionary<DraftStatus, int>();
        var (late, cold) = (0, 0);
        for (var seed = 1; seed <= 20; seed++)
        {
            var chance = new Chance(seed);
            var brief = Late(chance);
            var result = seed % 10 == 0 ? Cold(seed) : Drafts.Rounds(brief, seed, 1);
            cold += seed % 10 == 0 ? 1 : 0;
            answers[result.Status] = answers.GetValueOrDefault(result.Status) + 1;
            if (result.Routine is not { } routine || seed % 10 == 0)
            {
                continue;
            }

            Assert.True(Audit.Of(new Scene(routine.Brief, Drafts.Book), routine).IsClean, $"seed {seed}");
            Assert.All(routine.Moves.Where(m => m.Attacker is { } a && brief.Attackers[a].Entrance is not null), m => Assert.True(m.Start + new HalfCounts(4) >= brief.Attackers[m.Attacker!.Value].Entrance, $"seed {seed}"));
            late += routine.Moves.Count(m => m.Attacker is { } a && brief.Attackers[a].Entrance > HalfCounts.FromCounts(20));
        }

        Assert.True(answers.GetValueOrDefault(DraftStatus.Found) >= 7 && answers.GetValueOrDefault(DraftStatus.Impossible) > 0 && late > 12 && cold == 2, $"{string.Join(", ", answers)}; {late} moves of people who came in after count 20");
    }

    /// <summary>By the solver's windows alone, the very brief at which they broke; a second is enough for some of them, and nothing is asked of what comes of it.</summary>
    private static DraftResult Cold(int seed)
    {
        var brief = new Brief
        {
            Tempo = new Tempo(120),
            Length = new Length(154, null, 3),
            Attackers = [new AttackerPart { Name = "Cleo", Entrance = HalfCounts.FromCounts(49) }, new AttackerPart { Name = "Esra", Skill = Skill.Novice }],
        };
        return Drafting.Draft(brief, Drafts.Book, new DraftOptions { Seed = seed, Cold = true, Time = TimeSpan.FromSeconds(1) });
    }

    private static Brief Late(Chance chance)
    {
        var counts = chance.One([20, 20, 40, 60]);
        return new Brief
        {
            Tempo = new Tempo(chance.One([60, 100, 120, 140, 160])),
            Length = new Length(counts, null, chance.One([0, 3])),
            Attackers =
            [
                .. Names.Take(chance.Whole(1, 4)).Select(n => new AttackerPart
                {
                    Name = n,
                    Skill = chance.One([Skill.Novice, Skill.Trained, Skill.Trained, Skill.Stunt]),
                    Distance = chance.Percent(30) ? new Centimetres(chance.One([200, 300, 350])) : null,
                    Entrance = chance.Percent(70) ? HalfCounts.FromCounts(chance.One([counts / 3, counts / 2, counts * 3 / 4, counts - 3, counts])) : null,
                }),
            ],
        };
    }
}
