using System.Text;

namespace Generator.Library;

/// <summary>The form in which words are compared: small letters and figures; apostrophes and full stops are left out, everything else is a gap.</summary>
public static class PlainWord
{
    /// <summary>"Two-on-One " becomes "two on one".</summary>
    public static string Of(string text)
    {
        var plain = new StringBuilder(text.Length);
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

    /// <summary>The same without gaps, so that "headbutt" is "Head butt".</summary>
    public static string Squeezed(string text) => Of(text).Replace(" ", string.Empty, StringComparison.Ordinal);
}
