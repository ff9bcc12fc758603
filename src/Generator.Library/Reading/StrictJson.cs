using System.Globalization;
using Newtonsoft.Json;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Reading;

/// <summary>
/// Reads JSON with line numbers. Comments and trailing commas pass; a field given twice, a number such as 007 and text after the
/// end are problems. Nothing is thrown for bad text.
/// </summary>
public static class StrictJson
{
    private static readonly JsonLoadSettings Settings = new()
    {
        CommentHandling = CommentHandling.Ignore,
        LineInfoHandling = LineInfoHandling.Load,
        DuplicatePropertyNameHandling = DuplicatePropertyNameHandling.Ignore,
    };

    /// <summary>The object that the text holds, or null when it cannot be read or is no object (the problems say why).</summary>
    public static ObjectReader? Object(string file, string text, ProblemList problems)
    {
        var token = Parse(file, text, problems);
        if (token is null or JObject)
        {
            return token is JObject whole ? new ObjectReader(whole, string.Empty, file, problems) : null;
        }

        problems.Add(new Problem(file, 1, string.Empty, FieldText.Of(token), "The file must hold one object, from { to }.", "Maybe put { and } round it."));
        return null;
    }

    /// <summary>The value that the text holds, or null when it cannot be read.</summary>
    public static JToken? Parse(string file, string text, ProblemList problems)
    {
        text = text.TrimStart('\uFEFF');
        try
        {
            if (!Scan(file, text, problems))
            {
                problems.Add(new Problem(file, 0, string.Empty, string.Empty, "The file is empty.", "Maybe it was saved before anything was written."));
                return null;
            }

            using var reader = Open(text);
            return JToken.Load(reader, Settings);
        }
        catch (JsonReaderException error)
        {
            problems.Add(SyntaxProblem(file, text, error));
            return null;
        }
    }

    private static JsonTextReader Open(string text) => new(new StringReader(text))
    {
        Culture = CultureInfo.InvariantCulture,
        DateParseHandling = DateParseHandling.None,
        FloatParseHandling = FloatParseHandling.Decimal,
    };

    /// <summary>Reports what the parser would let pass: fields given twice and numbers that begin with 0.</summary>
    /// <returns>False when there is no value at all.</returns>
    private static bool Scan(string file, string text, ProblemList problems)
    {
        using var reader = Open(text);
        var lines = Lines(text);
        var open = new Stack<HashSet<string>>();
        var any = false;
        while (reader.Read())
        {
            any |= reader.TokenType != JsonToken.Comment;
            switch (reader.TokenType)
            {
                case JsonToken.StartObject:
                    open.Push(new HashSet<string>(StringComparer.Ordinal));
                    break;
                case JsonToken.EndObject:
                    open.Pop();
                    break;
                case JsonToken.PropertyName when !open.Peek().Add((string)reader.Value!):
                    problems.Add(new Problem(
                        file, reader.LineNumber, FieldText.Path(reader.Path), string.Empty, "This field is given twice.", "Maybe one of the two can go, or was meant to have another name."));
                    break;
                case JsonToken.String or JsonToken.PropertyName when HasHalfLetter((string)reader.Value!):
                    problems.Add(new Problem(
                        file, reader.LineNumber, FieldText.Path(reader.Path), string.Empty, "The text holds half a letter, or the mark for one that was lost.", "Maybe write the letter itself; \\u and a number is only half of some."));
                    break;
                case JsonToken.Integer or JsonToken.Float when OddNumber(lines, reader) is { } odd:
                    problems.Add(new Problem(file, reader.LineNumber, FieldText.Path(reader.Path), odd, $"{odd} is not a number in JSON.", "Maybe leave out the 0 at its beginning."));
                    break;
            }
        }

        return any;
    }

    /// <summary>The lines as the parser counts them: only CR, LF and CR LF end one, not a form feed or a line separator.</summary>
    private static string[] Lines(string text) => text.Split(["\r\n", "\n", "\r"], StringSplitOptions.None);

    /// <summary>The parser takes 010 for eight; a person means ten.</summary>
    private static string? OddNumber(string[] lines, JsonTextReader reader)
    {
        var before = lines[reader.LineNumber - 1].AsSpan(0, reader.LinePosition);
        var start = before.Length;
        while (start > 0 && (char.IsAsciiLetterOrDigit(before[start - 1]) || before[start - 1] is '.' or '-' or '+'))
        {
            start--;
        }

        var number = before[start..].TrimStart('-');
        return number.Length > 1 && number[0] == '0' && number[1] is not ('.' or 'e' or 'E') ? before[start..].ToString() : null;
    }

    /// <summary>The parser puts a mark of its own in the place of half a surrogate pair, which no file and no screen could hold.</summary>
    private static bool HasHalfLetter(string text) => text.Contains('\uFFFD', StringComparison.Ordinal);

    /// <summary>The number that ends at the place where the parser gave up, when it is one; else null.</summary>
    private static string? NumberAt(string line, int position)
    {
        var (start, end) = (Math.Clamp(position, 0, line.Length), Math.Clamp(position, 0, line.Length));
        while (start > 0 && IsOfNumber(line[start - 1]))
        {
            start--;
        }

        while (end < line.Length && IsOfNumber(line[end]))
        {
            end++;
        }

        var word = line[start..end];
        return word.Length > 0 && word.TrimStart('-') is [>= '0' and <= '9', ..] && double.TryParse(word, NumberStyles.Float, CultureInfo.InvariantCulture, out _) ? word : null;
    }

    private static bool IsOfNumber(char letter) => char.IsAsciiDigit(letter) || letter is '.' or '-' or '+' or 'e' or 'E';

    private static Problem SyntaxProblem(string file, string text, JsonReaderException error)
    {
        var lines = Lines(text);
        var line = Math.Clamp(error.LineNumber, 1, lines.Length);
        if (NumberAt(lines[line - 1], error.LinePosition) is { } number && !decimal.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out _))
        {
            return new Problem(file, line, FieldText.Path(error.Path ?? string.Empty), FieldText.Shorten(number), $"{FieldText.Shorten(number)} is larger than any number that is meant anywhere.", "Maybe a digit or the power of ten is mistyped.");
        }

        var rest = lines[line - 1][Math.Clamp(error.LinePosition, 0, lines[line - 1].Length)..].Trim();
        var atEnd = rest.Length == 0 && lines.Skip(line).All(string.IsNullOrWhiteSpace);
        if (atEnd)
        {
            return new Problem(file, line, FieldText.Path(error.Path ?? string.Empty), string.Empty, "The file ends too early.", "Maybe a closing }, ] or \" is missing.");
        }

        var shown = FieldText.Shorten(rest.Length > 0 ? rest : lines[line - 1].Trim());
        return new Problem(
            file, line, FieldText.Path(error.Path ?? string.Empty), shown, $"This is not JSON, at: {shown}", "Maybe a comma, a quotation mark or a bracket is missing just before it.");
    }
}
