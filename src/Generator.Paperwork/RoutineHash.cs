using System.Security.Cryptography;
using System.Text;
using Generator.Domain;
using Generator.Library.Files;
using Newtonsoft.Json;

namespace Generator.Paperwork;

/// <summary>
/// A routine's fingerprint: SHA-256 over its canonical form, the routine file with its brief, library version, opening places and moves on one
/// line, fields in their fixed order. Any change of content changes it; line ends and indents of the file do not.
/// </summary>
public static class RoutineHash
{
    /// <summary>64 small hexadecimal digits.</summary>
    public static string Of(Routine routine) => OfText(RoutineWriter.Object(routine).ToString(Formatting.None));

    /// <summary>The first eight digits, as papers name the version of a routine.</summary>
    public static string Short(Routine routine) => Of(routine)[..8];

    /// <summary>The same of one text.</summary>
    public static string OfText(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
}
