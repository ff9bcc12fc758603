using System.Text;

namespace Generator.Library.Reading;

/// <summary>The text of a file together with the name by which the user knows it.</summary>
public sealed record SourceFile(string Name, string Text)
{
    /// <summary>Letters of the longest file that is read, some ten times as many as the longest fight has.</summary>
    public const int Longest = 4_000_000;

    /// <summary>Reads a file as UTF-8 (or UTF-16 when its first bytes say so); null with a problem when that fails.</summary>
    public static SourceFile? Load(string path, ProblemList problems)
    {
        try
        {
            using var reader = new StreamReader(path, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true));
            return Read(path, reader, problems);
        }
        catch (DecoderFallbackException) when (path.EndsWith(".xlsx", StringComparison.OrdinalIgnoreCase) || path.EndsWith(".ods", StringComparison.OrdinalIgnoreCase))
        {
            problems.Add(new Problem(path, 0, string.Empty, string.Empty, "This is a workbook, which holds many sheets.", "Maybe save its sheet of moves as CSV (\"CSV UTF-8\") and name that."));
        }
        catch (DecoderFallbackException)
        {
            problems.Add(new Problem(path, 0, string.Empty, string.Empty, "The file is not text in UTF-8.", "Maybe save it again as UTF-8 (spreadsheets call it \"CSV UTF-8\")."));
        }
        catch (Exception error) when (error is FileNotFoundException or DirectoryNotFoundException)
        {
            problems.Add(new Problem(path, 0, string.Empty, string.Empty, "There is no such file.", "Maybe it lies in another folder or its name is spelt otherwise."));
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            problems.Add(new Problem(path, 0, string.Empty, string.Empty, "The file cannot be opened.", "Maybe another program holds it open, it is a folder, or you may not read it."));
        }

        return null;
    }

    /// <summary>The text of a reader; null with a problem when it does not end, or not soon enough.</summary>
    public static SourceFile? Read(string name, TextReader reader, ProblemList problems)
    {
        var text = new StringBuilder();
        var part = new char[16 * 1024];
        while (text.Length <= Longest)
        {
            var length = reader.Read(part, 0, part.Length);
            if (length == 0)
            {
                return new SourceFile(name, text.ToString());
            }

            text.Append(part, 0, length);
        }

        problems.Add(new Problem(name, 0, string.Empty, string.Empty, $"There is no end after {Longest / 1_000_000} million letters.", "Maybe another file is meant; no brief, routine or library is as long."));
        return null;
    }
}
