namespace Generator.Paperwork.HandOffs;

/// <summary>A paper that is not text.</summary>
/// <param name="fileName">Name of the file, without folder.</param>
/// <param name="purpose">Who it is for.</param>
/// <param name="bytes">Makes the content.</param>
internal sealed class BytesPaper(string fileName, string purpose, Func<PaperSource, byte[]> bytes) : IPaper
{
    public string FileName { get; } = fileName;

    public string Purpose { get; } = purpose;

    public void Write(PaperSource source, Stream stream) => stream.Write(bytes(source));
}
