using Generator.Domain;
using Generator.Library.Reading;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Files;

/// <summary>Reads what a brief says of its music: <c>tempo</c>, a number or a list of passages, <c>holds</c> and <c>accents</c>.</summary>
internal static class MusicReader
{
    private const string PassageExample = "\"tempo\": [ { \"from\": 1, \"tempo\": 90 }, { \"from\": 25, \"tempo\": 120, \"over\": 8 } ]";

    /// <summary>The tempo by which lengths are worked out, and the music; null where it is one tempo and nothing else.</summary>
    /// <param name="root">The brief.</param>
    /// <param name="latest">The end of the longest fight that it allows.</param>
    public static (Tempo Tempo, Music? Music) Of(ObjectReader root, HalfCounts latest)
    {
        var passages = root.Token("tempo") is JArray ? Passages(root) : [];
        var tempo = passages.Count > 0 ? passages.MaxBy(p => p.Tempo.CountsPerMinute)!.Tempo
            : root.Token("tempo") is not JArray && root.Whole("tempo", Measures.Tempo) is { } one ? new Tempo(one) : Tempo.Default;
        var music = new Music { Passages = passages, Holds = Holds(root, latest), Accents = Accents(root, latest) };
        return (tempo, music.IsEmpty ? null : music);
    }

    private static List<Passage> Passages(ObjectReader root)
    {
        var passages = new List<Passage>();
        foreach (var reader in root.Objects("tempo"))
        {
            var from = reader.Has("from") ? reader.Count("from") : HalfCounts.Zero;
            if (!reader.Has("tempo"))
            {
                reader.Missing("tempo", "\"tempo\": 120");
            }

            var passage = new Passage(from ?? HalfCounts.Zero, new Tempo(reader.Whole("tempo", Measures.Tempo) ?? Tempo.Default.CountsPerMinute), reader.Span("over", Measures.Span) ?? HalfCounts.Zero);
            reader.Finish();
            if (passages.Count == 0 && (passage.From != HalfCounts.Zero || passage.Over != HalfCounts.Zero))
            {
                reader.Refuse(reader.Has("over") ? "over" : "from", "The first passage begins at count 1 and has nothing to come from.", $"Maybe write {PassageExample}.");
            }
            else if (passages.Count > 0 && passages[^1] is var before && passage.From < before.From + before.Over + new HalfCounts(1))
            {
                reader.Refuse("from", $"The passage begins at count {passage.From.ToCountText()}, before the one above it has come to its tempo.", "Maybe sort the passages by count, or let that one take fewer counts.");
            }

            passages.Add(passage);
        }

        if (passages.Count == 0 && root.Entries("tempo").Count == 0)
        {
            root.Refuse("tempo", "The list has no passage.", $"Maybe write one number, or {PassageExample}.");
        }

        return passages;
    }

    private static List<MusicHold> Holds(ObjectReader root, HalfCounts latest)
    {
        var holds = new List<MusicHold>();
        foreach (var reader in root.Objects("holds"))
        {
            if (!reader.Has("count"))
            {
                reader.Missing("count", "\"count\": 24");
            }

            var at = reader.Count("count") ?? HalfCounts.Zero;
            var (seconds, counts) = (reader.Number("seconds", Measures.HeldSeconds), reader.Whole("counts", Measures.HeldCounts));
            if (reader.Has("seconds") == reader.Has("counts"))
            {
                reader.Refuse("seconds", "A hold lasts so many seconds, the music standing still, or so many counts of music that goes on.", "Maybe add \"seconds\": 2 or \"counts\": 4, one of the two.");
            }

            if (at.Value % HalfCounts.PerCount != 0)
            {
                reader.Refuse("count", $"Count {at.ToCountText()} lies between two beats; a beat is held.", "Maybe take the whole count before or after it.");
            }
            else if (at > latest)
            {
                reader.Refuse("count", $"The fight is over by count {latest.ToCountText()}.", "Maybe ask for a longer fight.");
            }
            else if (holds.Exists(h => h.At == at))
            {
                reader.Refuse("count", $"Count {at.ToCountText()} is held twice.", "Maybe one of the two can go.");
            }

            holds.Add(new MusicHold(at, seconds is { } s ? decimal.Round(s, 3) : null, counts));
            reader.Finish();
        }

        return [.. holds.OrderBy(h => h.At)];
    }

    private static List<HalfCounts> Accents(ObjectReader root, HalfCounts latest)
    {
        var accents = new List<HalfCounts>();
        foreach (var (value, path) in root.Entries("accents"))
        {
            if (FieldForms.CountOf(root, value, path) is not { } at)
            {
                continue;
            }

            if (at > latest)
            {
                root.Refuse(value, path, $"The fight is over by count {latest.ToCountText()}.", "Maybe ask for a longer fight.");
            }

            if (!accents.Contains(at))
            {
                accents.Add(at);
            }
        }

        if (accents.Count > Most)
        {
            root.Refuse("accents", $"There are {accents.Count} accents; {Most} are the most.", "Maybe keep those that the audience will hear.");
        }

        return [.. accents.Order().Take(Most)];
    }

    /// <summary>As many accents as a fight can be led by.</summary>
    private const int Most = 60;
}
