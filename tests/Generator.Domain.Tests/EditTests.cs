using FsCheck.Xunit;
using Generator.Domain.Edits;
using Generator.Domain.Sketches;

namespace Generator.Domain.Tests;

/// <summary>Edits of a sketch: each does what its name says, all can be taken back, and the same ones give the same sketch.</summary>
public class EditTests
{
    private static readonly Brief Three = new() { Attackers = [.. new[] { "Bruno", "Wanda", "Piet" }.Select(n => new AttackerPart { Name = n })] };

    private static Sketch Fight(int moves) => new()
    {
        Brief = Three,
        Placements = [null, null, null],
        Moves = [.. Enumerable.Range(0, moves).Select(i => new SketchMove { Line = i + 1, Attacker = i % 3, Technique = Cell($"t{i}"), Count = (new(4 * i), new(4 * i)) })],
    };

    private static SketchCell Cell(string id) => new(id, [id]);

    [Property(MaxTest = 30)]
    public void Edits_are_undone_to_the_start_done_again_to_the_end_and_replayed_to_the_same(int seed) => Worked(seed, 80);

    [Fact]
    public void So_are_two_thousand() => Worked(1, 2001);

    private static void Worked(int seed, int most)
    {
        var random = new Random(seed);
        var start = Fight(random.Next(0, 8));
        var history = History.Of(start);
        var seen = new List<Sketch> { start };
        var kinds = new HashSet<Type>();
        while (seen.Count < most)
        {
            var edit = AnyEdit(random, history.Present);
            kinds.Add(edit.GetType());
            try
            {
                history = history.Do(edit);
                seen.Add(history.Present);
            }
            catch (EditException)
            {
                // One that cannot be made changes nothing.
                Assert.Same(seen[^1], history.Present);
            }
        }

        Assert.True(kinds.Count >= 8);
        Assert.Equal(seen.Count - 1, history.Done.Count());
        var replayed = history.Done.Aggregate(start, Editing.Apply);
        Assert.Equal(history.Present.Moves, replayed.Moves);
        Assert.Equal(history.Present.Placements, replayed.Placements);
        Assert.Same(history.Present.Brief, replayed.Brief);
        for (var i = seen.Count - 1; i > 0; i--)
        {
            Assert.Same(seen[i], history.Present);
            var name = history.ToUndo;
            history = history.Undo();
            Assert.Equal(name, history.ToRedo);
        }

        Assert.Same(start, history.Present);
        Assert.Null(history.ToUndo);
        Assert.Same(history, history.Undo());
        Assert.Same(seen[^1], Enumerable.Range(0, seen.Count - 1).Aggregate(history, (h, _) => h.Redo()).Present);
    }

    [Fact]
    public void Swapped_moves_leave_the_counts_where_they_are()
    {
        var after = Editing.Apply(Fight(3), new Swap(1));
        Assert.Equal(["t0", "t2", "t1"], after.Moves.Select(m => m.Technique!.Text));
        Assert.Equal([0, 4, 8], after.Moves.Select(m => m.Count!.Value.First.Value));
        Assert.Equal([1, 2, 3], after.Moves.Select(m => m.Line));
    }

    [Fact]
    public void A_shift_moves_everything_behind_and_nothing_before()
    {
        var after = Editing.Apply(Fight(3), new Shift(1, 3));
        Assert.Equal([0, 7, 11], after.Moves.Select(m => m.Count!.Value.First.Value));
        Assert.Equal(0, Editing.Apply(Fight(3), new Shift(0, -9)).Moves[1].Count!.Value.First.Value);
    }

    [Fact]
    public void A_lock_holds_what_is_said_and_leaves_open_what_is_open()
    {
        var locked = Editing.Apply(Fight(2), new Padlock(0, 0, null, true)).Moves;
        Assert.Equal(Firmness.Fixed, locked[0].Technique!.Firmness);
        Assert.Null(locked[0].Reaction);
        Assert.Equal(Firmness.Said, locked[1].Technique!.Firmness);
    }

    [Fact]
    public void One_cell_is_written_and_no_other()
    {
        var before = Fight(2);
        var after = Editing.Apply(before, new Write(1, Column.Note, new SketchMove { Line = 9, Note = "slow" }));
        Assert.Equal(before.Moves[1] with { Note = "slow" }, after.Moves[1]);
        Assert.Same(before.Moves[0], after.Moves[0]);
    }

    [Fact]
    public void Undoing_says_what_it_takes_back()
    {
        var history = History.Of(Fight(12)).Do(new Swap(10));
        Assert.Equal("swap moves 11 and 12", history.ToUndo);
        Assert.Equal("later from move 1 on", history.Do(new Shift(0, 1)).ToUndo);
        Assert.Equal("lock technique of move 2", history.Do(new Padlock(1, 1, Column.Technique, true)).ToUndo);
    }

    [Theory]
    [InlineData(3)]
    [InlineData(-1)]
    public void A_move_that_is_not_there_cannot_be_changed(int move)
    {
        var fault = Assert.Throws<EditException>(() => Editing.Apply(Fight(3), new Delete(move, move)));
        Assert.StartsWith("Maybe ", fault.Maybe, StringComparison.Ordinal);
    }

    [Fact]
    public void Another_cast_keeps_the_moves_and_places_of_whoever_stays()
    {
        var place = new Placement(new Bearing(5), new Centimetres(300), HalfCounts.Zero);
        var before = Editing.Apply(Fight(6), new Place(2, "Piet", place));
        var after = Editing.Apply(before, new Recast("Wanda leaves", Three with { Attackers = [Three.Attackers[2], Three.Attackers[0] with { Name = "Ines" }, Three.Attackers[1]] }, [2, 0, null]));
        Assert.Equal([1, null, 0, 1, null, 0], after.Moves.Select(m => m.Attacker));
        Assert.Equal([place, null, null], after.Placements);
        foreach (var was in new int?[][] { [0, 1], [0, 0, 1], [0, 1, 3], [-1, 0, 1] })
        {
            Assert.Throws<EditException>(() => Editing.Apply(before, new Recast("x", Three, was)));
        }
    }

    /// <summary>With another name or place a mark is itself; where marks come or go, each is the one of its name.</summary>
    [Theory]
    [InlineData("door,window,stage", "door,window,stage", 2)]
    [InlineData("door,window,stage", "door,window,wing", 2)]
    [InlineData("door,window,stage", "door,stage", 1)]
    [InlineData("door,window,stage", "door,window", null)]
    [InlineData("door,window,stage", "wing,door,window,Stage", 3)]
    [InlineData("door,window,stage", "stage", null)]
    public void Travel_moves_go_to_the_same_mark_as_before(string was, string now, int? to)
    {
        static Brief On(string marks) => Three with { Marks = [.. marks.Split(',').Select((m, i) => new HeroMark(m, new Centimetres(100 * (i + 1)), new Centimetres(100)))] };
        var before = Fight(3) with { Brief = On(was) };
        before = before with { Moves = [before.Moves[0] with { To = 2 }, .. before.Moves.Skip(1)] };
        Assert.Equal(to, Editing.Apply(before, new Recast("marks", On(now), [0, 1, 2])).Moves[0].To);
    }

    [Fact]
    public void What_is_left_open_is_all_but_who_attacks_when_and_what_is_locked()
    {
        var locked = Editing.Apply(Fight(3), new Padlock(0, 2, null, true) { Of = (1, "Wanda") });
        Assert.Equal([Firmness.Said, Firmness.Fixed, Firmness.Said], locked.Moves.Select(m => m.Technique!.Firmness));
        var after = Editing.Apply(locked, new Clear(0, 1)).Moves;
        Assert.Equal([null, "t1", "t2"], after.Select(m => m.Technique?.Text));
        Assert.Equal(locked.Moves[0].Count, after[0].Count);
        Assert.Equal(0, after[0].Attacker);
    }

    private static Edit AnyEdit(Random random, Sketch sketch)
    {
        var at = random.Next(-1, sketch.Moves.Count + 2);
        return random.Next(11) switch
        {
            0 or 1 => new Insert(at, [.. Enumerable.Range(0, random.Next(1, 3)).Select(_ => new SketchMove { Line = 1, Technique = Cell($"n{random.Next(99)}") })]),
            2 => new Delete(at, at + random.Next(2)),
            3 => new Swap(at),
            4 => new Shift(at, random.Next(-6, 7)),
            5 => new Padlock(at, at, random.Next(2) == 0 ? null : Column.Technique, random.Next(2) == 0) { Of = random.Next(2) == 0 ? null : (random.Next(3), "Wanda") },
            6 => new Place(random.Next(4), "Bruno", new Placement(new Bearing(random.Next(24)), new Centimetres(200), HalfCounts.Zero)),
            7 => new Clear(at, at + random.Next(3)),
            8 => new Recast("another cast", Three, [.. Enumerable.Range(0, 3).OrderBy(_ => random.Next()).Select(i => random.Next(4) == 0 ? (int?)null : i)]),
            9 => new Take("an offer", sketch with { Moves = [.. sketch.Moves.Take(Math.Max(0, at))] }),
            _ => new Write(at, random.Next(2) == 0 ? Column.Note : Column.Attacker, new SketchMove { Line = 1, Attacker = random.Next(3), Note = "x" }),
        };
    }
}
