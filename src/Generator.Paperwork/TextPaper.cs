using System.Text;

namespace Generator.Paperwork;

/// <summary>A paper that is text: UTF-8 without byte order mark.</summary>
/// <param name="fileName">Name of the file, without folder.</param>
/// <param name="purpose">Who it is for.</param>
/// <param name="text">Makes the text.</param>
public sealed class TextPaper(string fileName, string purpose, Func<PaperSource, string> text) : IPaper
{
    public string FileName { get; } = fileName;

    public string Purpose { get; } = purpose;

    public void Write(PaperSource source, Stream stream) => stream.Write(Encoding.UTF8.GetBytes(text(source)));
}
