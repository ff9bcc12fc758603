using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>
/// Reads a brief and checks it against the library and against itself. Only attackers and length are required; the defaults of the
/// rest are those of <see cref="Brief"/> and its parts, except that the mark lies in the middle of the floor that is given.
/// </summary>
public static class BriefReader
{
    /// <summary>The brief, or everything that is wrong with it. Of a routine, or of what a draft printed, it is the brief inside.</summary>
    /// <param name="file">The file.</param>
    /// <param name="book">The library.</param>
    /// <param name="lengthRequired">Whether a brief on its own must say how long the fight is; beside rows it need not.</param>
    /// <param name="choice">By what marks are chosen that the brief does not name; null: as usual.</param>
    public static Read<Brief> Parse(SourceFile file, Book book, bool lengthRequired = true, MarkChoice? choice = null)
    {
        var problems = new ProblemList();
        var root = StrictJson.Object(file.Name, file.Text, problems);
        return new Read<Brief>(root is null ? null : Inside(root) is { } inside ? Brief(inside, book, lengthRequired: false, choice) : Brief(root, book, lengthRequired, choice), problems);
    }

    private static ObjectReader? Inside(ObjectReader root)
    {
        var routine = root.Has("routine") ? root.Object("routine") : root;
        return routine is not null && routine.Has("moves") && routine.Has("brief") ? routine.Object("brief") : null;
    }

    /// <summary>
    /// Reads a brief that lies inside another file; worthless once a problem has been added. One inside a routine may lack its length,
    /// since a routine can be written without a brief.
    /// </summary>
    internal static Brief Brief(ObjectReader root, Book book, bool lengthRequired = true, MarkChoice? choice = null)
    {
        root.Allow("$schema");
        var length = Length(root, lengthRequired);
        var latest = length is { Counts: { } counts } ? HalfCounts.FromCounts(counts + length.Tolerance) : new HalfCounts(int.MaxValue);
        var hero = PerformerReader.Hero(root.Object("hero"), book);
        var isFree = ChosenMarks.IsAsked(root);
        var told = isFree ? [] : MarksReader.Read(root);
        var floor = FloorReader.Floor(root.Object("floor"), book.Things, told.Count > 0 ? told[0].Mark : null, isFree);
        var cameras = FloorReader.Cameras(root);
        IReadOnlyList<HeroMark> marks = isFree ? ChosenMarks.Of(root, floor, cameras, book, choice ?? MarkChoice.Usual) : [.. told.Select(m => m.Mark)];
        floor = isFree && marks.Count > 0 ? floor with { MarkX = marks[0].X, MarkY = marks[0].Y } : floor;
        var ally = AllyReader.Of(root, hero, floor, book);
        var attackers = PerformerReader.Attackers(root, ally is null ? [hero.Name] : [hero.Name, ally.Part.Name], floor, latest, book);
        var cast = new Cast([.. attackers.Select(a => a.Name)]);
        var setbacks = root.Whole("setbacks", Measures.Asked);
        var (tempo, music) = MusicReader.Of(root, latest);
        var brief = new Brief
        {
            Title = root.Name("title") ?? "Untitled fight",
            Tempo = tempo,
            Music = music,
            Length = length,
            Floor = floor,
            Marks = marks,
            Hero = hero,
            Ally = ally,
            Attackers = attackers,
            Cameras = cameras,
            Moments = MomentReader.Moments(root, cast, latest, book),
            Arc = root.Word<Arc>("arc") ?? Arc.Free,
            Acts = ActReader.Acts(root, setbacks),
            Judged = root.Has("judged") ? root.Words<FightRule>("judged") : null,
            Avoid = WishReader.Wishes(root, "avoid", book),
            Signature = WishReader.Signature(root, book),
            Favour = WishReader.Wishes(root, "favour", book),
            Setbacks = setbacks,
            Pauses = root.Whole("pauses", Measures.Asked),
            AnsweredPercent = root.Number("answered", Measures.Answered) is { } part ? (int)Math.Round(part * 100, MidpointRounding.AwayFromZero) : null,
            Pace = Pace(root.Object("pace")),
            Safety = Safety(root.Object("safety")),
            Ending = Ending(root.Object("ending"), cast),
        };
        brief = brief with { Props = PropPartReader.Of(root, brief, cast, book.Props) };
        AllyReader.Check(root, brief);
        MarksReader.Check(told, floor, brief.Cameras);
        WishReader.Check(root, brief);
        brief = StyleWord.Of(root, BossReader.Of(root, brief, cast, book), book);
        root.Finish();
        return brief;
    }

    private static Length? Length(ObjectReader root, bool required)
    {
        const string Example = "\"length\": { \"counts\": 48 }";
        if (required && !root.Has("length"))
        {
            root.Missing("length", Example);
        }

        if (root.Object("length") is not { } reader)
        {
            return null;
        }

        var counts = reader.Whole("counts", Measures.Counts);
        var moves = reader.Whole("moves", Measures.Moves);
        if (!reader.Has("counts") && !reader.Has("moves"))
        {
            root.Refuse("length", "The length says neither counts nor moves.", $"Maybe write {Example}.");
        }

        var tolerance = reader.Whole("tolerance", Measures.Tolerance) ?? (counts is null ? 1 : 4);
        reader.Finish();
        return new Length(counts, moves, tolerance);
    }

    private static Pace Pace(ObjectReader? reader)
    {
        if (reader is null)
        {
            return Domain.Pace.Default;
        }

        var pace = new Pace(
            reader.Span("patienceCounts", Measures.Span) ?? Domain.Pace.Default.Patience,
            reader.Span("longestPauseCounts", Measures.Span) ?? Domain.Pace.Default.LongestPause,
            reader.Span("lingerCounts", Measures.Span) ?? Domain.Pace.Default.Linger);
        reader.Finish();
        return pace;
    }

    private static Safety Safety(ObjectReader? reader)
    {
        if (reader is null)
        {
            return Domain.Safety.Default;
        }

        var safety = new Safety(
            reader.Span("marginCounts", Measures.Span) ?? Domain.Safety.Default.Margin,
            reader.Whole("runs", Measures.Runs) ?? Domain.Safety.Default.Runs,
            reader.Whole("fallsPerDay", Measures.FallsPerDay) ?? Domain.Safety.Default.FallsPerDay,
            reader.Whole("headHitsPerDay", Measures.HeadHitsPerDay) ?? Domain.Safety.Default.HeadHitsPerDay);
        reader.Finish();
        return safety;
    }

    private static Ending? Ending(ObjectReader? reader, Cast cast)
    {
        if (reader is null)
        {
            return null;
        }

        var all = reader.Token("out") is null or { Type: Newtonsoft.Json.Linq.JTokenType.String };
        if (all && reader.Text("out") is { } word && !string.Equals(word, "all", StringComparison.Ordinal))
        {
            reader.Refuse("out", $"{FieldText.Quote(word)} is neither \"all\" nor a list of names.", $"Maybe write [ {FieldText.Quote(word)} ].");
        }

        var named = all ? [.. Enumerable.Range(0, cast.Names.Count)] : Named(reader, cast);
        int? last = null;
        if (reader.Text("last") is { } name)
        {
            last = cast.Find(name);
            if (last < 0)
            {
                reader.Refuse("last", Cast.Unknown(name), cast.Advice(name));
            }
            else if (!named.Contains(last.Value))
            {
                reader.Refuse("last", $"{cast.Names[last.Value]} is to go out last, but is not among those who go out.", "Maybe add the name to \"out\".");
            }
        }

        reader.Finish();
        return new Ending([.. named.Select(i => cast.Names[i])], last is { } index and >= 0 ? cast.Names[index] : null);
    }

    private static List<int> Named(ObjectReader reader, Cast cast)
    {
        var named = new List<int>();
        var names = reader.Texts("out");
        foreach (var (value, path) in reader.Entries("out").Where(e => names.Contains(e.Value.ToString().Trim(), StringComparer.Ordinal)))
        {
            var name = value.ToString().Trim();
            var index = cast.Find(name);
            if (index < 0)
            {
                reader.Refuse(value, path, Cast.Unknown(name), cast.Advice(name));
            }
            else if (named.Contains(index))
            {
                reader.Refuse(value, path, $"{cast.Names[index]} is named twice.", "Maybe one of the two can go.");
            }
            else
            {
                named.Add(index);
            }
        }

        return named;
    }
}
