using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Rehearsal.Documents;
using Newtonsoft.Json.Linq;

namespace Generator.Rehearsal.Offers;

/// <summary>Makes cards of what a command answers; whatever is offered has been audited here once more.</summary>
internal static class Answers
{
    /// <exception cref="InvalidOperationException">The answer cannot be read.</exception>
    public static IReadOnlyList<Card> Of(Question question, string json, Book book)
    {
        var answer = JObject.Parse(json);
        return answer["alternatives"] is JArray several ? [.. several.Select(a => Of(question, (JObject)a, book))] : [Of(question, answer, book)];
    }

    /// <summary>Of each finding, in the order of the audit, what is known of its cause.</summary>
    public static IReadOnlyList<Cause> CausesOf(string json) =>
        [.. JObject.Parse(json)["findings"]!.Select(f => new Cause((int?)f["under"], (string?)f["mended"] ?? string.Empty))];

    private static Card Of(Question question, JObject answer, Book book)
    {
        var before = question.Of.Sketch;
        var brief = question.Brief ?? before.Brief;
        var routine = RoutineReader.Parse(new SourceFile("answer.json", answer["routine"]!.ToString()), book, brief);
        if (!routine.IsGood)
        {
            throw new InvalidOperationException(routine.ToText());
        }

        var card = Card.Of(question.Name, question.Of, Padlocks.Kept(before, Opening.Whole(routine.Value) with { Brief = brief }), book);
        return card with
        {
            Gave = [.. question.Gone, .. (answer["gave"] ?? new JArray()).Select(g => $"Move {g["move"]}, {g["cell"]}: {Said(g["was"], "nothing written")} gives way to {Said(g["is"], "nothing")}. {g["message"]}".TrimEnd())],
            Remark = (string?)answer["standing"] switch
            {
                "nothing to repair" => "Nothing is unsafe or broken, so nothing changes.",
                "proven fewest" => "No mend changes fewer moves.",
                _ => string.Empty,
            },
        };
    }

    private static string Said(JToken? word, string none) => word?.ToString() is { Length: > 0 } said ? said : none;
}
