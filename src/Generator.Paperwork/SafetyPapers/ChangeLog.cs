using Generator.Domain;
using Generator.Library.Files;
using Generator.Paperwork.Text;
using Newtonsoft.Json;
using Newtonsoft.Json.Linq;

namespace Generator.Paperwork.SafetyPapers;

/// <summary>
/// The change log: which routine the sign-offs stand for, and every change since. People fill in name and date of a sign-off in the file; the
/// same routine leaves them as they are, any other one clears them and keeps the old ones with the change.
/// </summary>
public static class ChangeLog
{
    public const string FileName = "change-log.json";

    private const int MostChanges = 10_000;

    private static readonly string[] Parts = ["brief", "library", "attackers"];

    /// <summary>The text of the log after the papers of a routine were made.</summary>
    /// <param name="routine">The routine.</param>
    /// <param name="before">The log as it stands; null when there is none.</param>
    /// <param name="head">What every paper of the routine says of itself.</param>
    /// <exception cref="ChangeLogException">The log as it stands is not one.</exception>
    public static string Next(Routine routine, string? before, PaperHead head)
    {
        var hash = RoutineHash.Of(routine);
        var now = Fingerprints(routine);
        if (before is null)
        {
            return Text(head, hash, now, SignOffs(routine), [Entry(1, hash, ["first version"], [])]);
        }

        var log = Read(before);
        if (string.Equals((string?)log["routine"], hash, StringComparison.Ordinal))
        {
            return JsonText.Of(Under(log, head));
        }

        var changes = (JArray)log["changes"]!;
        var signed = ((JArray)log["signOffs"]!).Where(s => !string.IsNullOrWhiteSpace((string?)s["name"])).Select(s => s.DeepClone());
        return Text(head, hash, now, SignOffs(routine), [.. changes.Select(c => c.DeepClone()), Entry(changes.Count + 1, hash, Differences((JObject)log["fingerprints"]!, now), signed)]);
    }

    /// <summary>Whether a log can be gone on with.</summary>
    /// <exception cref="ChangeLogException">It is not one.</exception>
    public static void Check(string log) => Read(log);

    /// <summary>Whether anybody has signed the log for the routine it names.</summary>
    public static bool IsSigned(string log) => ((JArray)Read(log)["signOffs"]!).Any(s => !string.IsNullOrWhiteSpace((string?)s["name"]));

    private static string Text(PaperHead head, string hash, JToken fingerprints, JToken signOffs, IEnumerable<JToken> changes)
    {
        var log = Under([], head);
        log["routine"] = hash;
        log["caution"] = SafetyCautions.NoClearance;
        log["signOffs"] = signOffs;
        log["changes"] = new JArray(changes);
        log["fingerprints"] = fingerprints;
        return JsonText.Of(log);
    }

    /// <summary>What every paper says of itself; all else in the log stays as somebody wrote it.</summary>
    private static JObject Under(JObject log, PaperHead head)
    {
        foreach (var (name, value) in new[] { ("title", head.Title), ("version", head.Version), ("library", head.Library), ("from", head.From is null ? null : head.Date), ("warning", head.Warning) })
        {
            if (value is null)
            {
                log.Remove(name);
            }
            else
            {
                log[name] = value;
            }
        }

        return log;
    }

    private static JArray SignOffs(Routine routine) =>
        new(Signer.Of(routine.Brief).Select(s => new JObject { ["role"] = s.Role, ["who"] = s.Who, ["name"] = string.Empty, ["date"] = string.Empty }));

    private static JObject Entry(int number, string hash, IEnumerable<string> what, IEnumerable<JToken> cleared) => new()
    {
        ["number"] = number,
        ["routine"] = hash,
        ["what"] = new JArray(what),
        ["clearedSignOffs"] = new JArray(cleared),
    };

    /// <summary>Short fingerprints of brief, library, opening places and every move, to say later what has changed.</summary>
    private static JObject Fingerprints(Routine routine)
    {
        var whole = RoutineWriter.Object(routine);
        var prints = new JObject();
        foreach (var part in Parts)
        {
            prints[part] = Short(whole[part]);
        }

        prints["moves"] = new JArray(((JArray)whole["moves"]!).Select(Short));
        return prints;
    }

    private static string Short(JToken? token) => token is null ? string.Empty : RoutineHash.OfText(token.ToString(Formatting.None))[..12];

    private static IEnumerable<string> Differences(JObject before, JObject now)
    {
        foreach (var part in Parts.Where(p => !string.Equals((string?)before[p], (string?)now[p], StringComparison.Ordinal)))
        {
            yield return part switch
            {
                "brief" => "the brief has changed",
                "library" => "the library has changed",
                _ => "opening places have changed",
            };
        }

        var (old, moves) = (Strings(before["moves"]), Strings(now["moves"]));
        var (gone, added) = MoveChanges.Of(old, moves);
        if (gone.Count > 0)
        {
            yield return $"no longer there: move {string.Join(", ", gone.Select(Words.Number))} of the version before";
        }

        if (added.Count > 0)
        {
            yield return $"new or changed: move {string.Join(", ", added.Select(Words.Number))}";
        }
    }

    private static List<string> Strings(JToken? token) => [.. ((JArray)token!).Select(t => (string?)t ?? string.Empty)];

    private static JObject Read(string text)
    {
        try
        {
            using var reader = new JsonTextReader(new StringReader(text)) { DateParseHandling = DateParseHandling.None };
            var log = JObject.Load(reader, new JsonLoadSettings { DuplicatePropertyNameHandling = DuplicatePropertyNameHandling.Error });
            var good = log["routine"] is JValue { Type: JTokenType.String }
                && log["signOffs"] is JArray signOffs && signOffs.All(s => s is JObject o && o["name"] is null or JValue { Type: JTokenType.String or JTokenType.Null })
                && log["changes"] is JArray { Count: < MostChanges }
                && log["fingerprints"] is JObject prints && prints["moves"] is JArray moves && moves.All(m => m is JValue { Type: JTokenType.String });
            return good ? log : throw new ChangeLogException("it lacks routine, signOffs, changes or fingerprints as this program writes them");
        }
        catch (JsonReaderException error)
        {
            throw new ChangeLogException($"it is not JSON (line {Words.Number(error.LineNumber)})", error);
        }
        catch (JsonException error)
        {
            throw new ChangeLogException("it is not JSON", error);
        }
    }
}
