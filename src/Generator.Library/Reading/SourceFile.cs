using System.Text;

namespace Generator.Library.Reading;

/// <summary>The text of a file together with the name by which the user knows it.</summary>
public sealed record SourceFile(string Name, string Text)
{
    /// <summary>Reads a file as UTF-8 (or UTF-16 when its first bytes say so); null with a problem when that fails.</summary>
    public static SourceFile? Load(string path, ProblemList problems)
    {
        try
        {
            using var reader = new StreamReader(path, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true));
            return new SourceFile(path, reader.ReadToEnd());
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
}
