namespace Generator.Library.Words;

/// <summary>The form in which words are compared: small letters and figures, everything else a single space.</summary>
public static class PlainWord
{
    /// <summary>"Two-on-One " becomes "two on one".</summary>
    public static string Of(string text)
    {
        var plain = new System.Text.StringBuilder(text.Length);
        foreach (var letter in text)
        {
            if (char.IsLetterOrDigit(letter))
            {
                plain.Append(char.ToLowerInvariant(letter));
            }
            else if (letter is not ('\'' or '’' or '.') && plain.Length > 0 && plain[^1] != ' ')
            {
                plain.Append(' ');
            }
        }

        return plain.ToString().TrimEnd();
    }
}
