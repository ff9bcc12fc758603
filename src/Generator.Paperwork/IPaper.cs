namespace Generator.Paperwork;

/// <summary>One file of a pack. The same source gives the same bytes.</summary>
public interface IPaper
{
    /// <summary>Name of the file, without folder; letters, digits, hyphens and dots.</summary>
    string FileName { get; }

    /// <summary>Who it is for, in a few words: what the list of the pack says beside the name.</summary>
    string Purpose { get; }

    /// <summary>Writes the whole content; leaves the stream open.</summary>
    void Write(PaperSource source, Stream stream);
}
