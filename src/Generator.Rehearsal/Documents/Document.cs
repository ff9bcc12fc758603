using Generator.Domain;
using Generator.Domain.Edits;
using Generator.Domain.Sketches;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Files.Notes;
using Generator.Library.Reading;
using Generator.Rules;

namespace Generator.Rehearsal.Documents;

/// <summary>The one document of a live page: a sketch, what was done to it, what is found in it, and its file. Whoever edits says which revision they saw.</summary>
public sealed class Document
{
    private readonly System.Threading.Lock door = new();
    private readonly CellTyping typing;
    private readonly Store store;
    private State state;
    private int saved;

    /// <param name="sketch">As it was read.</param>
    /// <param name="book">The library.</param>
    /// <param name="store">Its file.</param>
    /// <param name="isSaved">The file says the same.</param>
    public Document(Sketch sketch, Book book, Store store, bool isSaved = true)
    {
        (Book, this.store, typing) = (book, store, new CellTyping(book));
        state = new State(History.Of(sketch), new Scene(sketch.Brief, book), null!);
        state = state with { Seen = Seen.Of(state.Scene, sketch) };
        saved = isSaved ? 0 : -1;
    }

    /// <summary>Everything as it is at one moment.</summary>
    public sealed record State(History History, Scene Scene, Seen Seen)
    {
        public Sketch Sketch => History.Present;

        public int Revision => History.Revision;
    }

    public Book Book { get; }

    public State Now => state;

    public Store Store => store;

    /// <summary>Nothing has been done since the file was read or saved.</summary>
    public bool IsSaved => saved == state.Revision;

    /// <summary>Told of everything new.</summary>
    public Action Changed { get; set; } = () => { };

    /// <summary>What words in a cell would mean, and the sketch in which they stand; nothing changes.</summary>
    public (TypedCell Cell, Seen Seen) Try(int at, Column column, string text)
    {
        var now = state;
        var cell = typing.Read(now.Sketch, Known(now, at), column, text);
        return (cell, cell.Problem is null ? Seen.Of(now.Scene, Editing.Apply(now.Sketch, new Write(at, column, cell.Said))) : now.Seen);
    }

    /// <summary>Writes words into a cell.</summary>
    /// <exception cref="RefusedEditException">The words mean nothing, or the revision is not the present one.</exception>
    public void Type(int revision, int at, Column column, string text)
    {
        var now = state;
        var cell = typing.Read(now.Sketch, Known(now, at), column, text);
        if (cell.Problem is var (message, maybe))
        {
            throw new RefusedEditException(message, maybe);
        }

        Do(revision, new Write(at, column, cell.Said));
    }

    /// <summary>Another brief for the fight.</summary>
    /// <param name="revision">The revision it was made for.</param>
    /// <param name="what">What is other in it.</param>
    /// <param name="text">The brief in JSON.</param>
    /// <param name="was">For each attacker the number that they had; null for one who is new.</param>
    /// <exception cref="RefusedEditException">It is no good brief.</exception>
    public void Recast(int revision, string what, string text, IReadOnlyList<int?> was)
    {
        var read = BriefReader.Parse(new SourceFile("the form", text), Book, lengthRequired: false);
        if (!read.IsGood)
        {
            throw new RefusedEditException(read.Problems[0].Message, read.Problems[0].Maybe);
        }

        Do(revision, new Recast(what, read.Value, was));
    }

    /// <summary>Puts in the moves that a line of notes says, each where nothing is said of its count as soon as the one before lets it.</summary>
    /// <exception cref="RefusedEditException">The line cannot be read.</exception>
    public void Note(int revision, int before, string line)
    {
        var now = state;
        var read = NotesReader.Parse(new SourceFile("this line", line), Book, now.Sketch.Brief);
        if (!read.IsGood)
        {
            throw new RefusedEditException(read.Problems[0].Message, read.Problems[0].Maybe);
        }

        var behind = now.Sketch with { Moves = [.. now.Sketch.Moves.Take(Math.Clamp(before, 0, now.Sketch.Moves.Count))] };
        var moves = new List<SketchMove>();
        foreach (var move in read.Value.Sketch.Moves)
        {
            var timed = Soonest(now.Scene, behind, move);
            moves.Add(timed);
            behind = behind with { Moves = [.. behind.Moves, timed] };
        }

        Do(revision, new Insert(before, moves));
    }

    /// <exception cref="RefusedEditException">It cannot be done, or the revision is not the present one.</exception>
    public void Do(int revision, Edit edit) => Change(revision, history => history.Do(edit));

    public void Undo(int revision) => Change(revision, history => history.Undo());

    public void Redo(int revision) => Change(revision, history => history.Redo());

    /// <param name="over">Over what another program has written, too, which stays as a version.</param>
    /// <exception cref="RefusedEditException">The file was changed by another program.</exception>
    public void Save(bool over = false)
    {
        lock (door)
        {
            store.Save(state.Sketch, IsPlain(state.Sketch) && state.Seen.Open is null ? state.Seen.Routine : null, over);
            saved = state.Revision;
        }

        Changed();
    }

    /// <summary>The file as another program has left it, as an edit that can be taken back.</summary>
    /// <exception cref="RefusedEditException">It cannot be read, or the revision is not the present one.</exception>
    public void Reread(int revision)
    {
        var mark = store.MarkNow;
        var file = SourceFile.Load(store.Target, new ProblemList()) ?? throw new RefusedEditException($"{Path.GetFileName(store.Target)} is gone, or cannot be read.", "Maybe save: that writes it anew.");
        Do(revision, new Take("read the file anew", Opening.Sketch(file, Book)));
        lock (door)
        {
            store.Read(mark);
            saved = state.Revision;
        }

        Changed();
    }

    /// <summary>A version that was saved before, or another routine of the folder, by its place among them.</summary>
    /// <exception cref="RefusedEditException">There is none, or it cannot be read.</exception>
    public Sketch Other(IReadOnlyList<string> files, int at) => at >= 0 && at < files.Count && SourceFile.Load(files[at], new ProblemList()) is { } file ? Opening.Sketch(file, Book)
        : throw new RefusedEditException("There is no such file, or it cannot be read.", "Maybe it was taken away.");

    private static int Known(State now, int at) => at >= 0 && at < now.Sketch.Moves.Count ? at : throw new RefusedEditException("There is no such move.", "Maybe it was taken out in another tab.");

    /// <summary>Nothing is locked and nothing is a wish, so that a routine says as much.</summary>
    private static bool IsPlain(Sketch sketch) => sketch.Moves.All(m => new[] { m.Attack, m.Technique, m.Reaction }.All(c => c is null or { Firmness: Firmness.Said }));

    /// <summary>The move at the first count at which nothing grave is found in it; where there is none, two counts behind the last; open where what comes before is.</summary>
    private static SketchMove Soonest(Scene scene, Sketch behind, SketchMove move)
    {
        const int Farthest = 24;
        if (move.Count is not null || move.IsGap || (behind.Moves.Count > 0 && behind.Moves[^1].Count is null))
        {
            return move;
        }

        var from = behind.Moves.Count == 0 ? 0 : behind.Moves[^1].Count!.Value.Last.Value + 1;
        for (var start = from; start < from + Farthest; start++)
        {
            var timed = move with { Count = (new HalfCounts(start), new HalfCounts(start)) };
            var seen = Seen.Of(scene, behind with { Moves = [.. behind.Moves, timed, new SketchMove { Line = 1, Open = 1 }] });
            if (seen.Open <= behind.Moves.Count)
            {
                break;
            }

            if (seen.Verdict.Grave.All(f => f.Move != behind.Moves.Count + 1))
            {
                return timed;
            }
        }

        var later = new HalfCounts(behind.Moves.Count == 0 ? 0 : from + 3);
        return move with { Count = (later, later) };
    }

    private void Change(int revision, Func<History, History> change)
    {
        lock (door)
        {
            if (revision != state.Revision)
            {
                throw new RefusedEditException("The fight has changed meanwhile, in another tab perhaps. Nothing was done.", "Maybe look at it as it is now, and do it again.") { IsStale = true };
            }

            try
            {
                var history = change(state.History);
                if (ReferenceEquals(history, state.History))
                {
                    return;
                }

                var scene = ReferenceEquals(history.Present.Brief, state.Sketch.Brief) ? state.Scene : new Scene(history.Present.Brief, Book);
                var seen = Seen.Of(scene, history.Present);
                store.Keep(history.Present);
                state = new State(history, scene, seen);
            }
            catch (EditException fault)
            {
                throw new RefusedEditException(fault.Message, fault.Maybe);
            }
            catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
            {
                throw new RefusedEditException("The working copy cannot be written, so nothing was changed.", "Maybe the disk is full, or its folder may no longer be written.");
            }
        }

        Changed();
    }
}
