using Generator.Domain;
using Generator.Library;
using Generator.Rules;

namespace Generator.Paperwork.Text;

/// <summary>How a fight was asked to be, and how somebody fights in it, as the library calls it.</summary>
internal static class StyleWords
{
    /// <summary>"brutal"; null where the brief names no style.</summary>
    public static string? Of(Scene scene) => scene.Brief.Style is { } id ? Words.Low(Page.Clean(Named(scene, id)?.Name ?? id)) : null;

    /// <summary>"Brutal. Short ways, heavy blows …"; null where the brief names no style.</summary>
    public static string? Told(Scene scene) => scene.Brief.Style is { } id ? Page.Clean($"{Named(scene, id)?.Name ?? id}. {Named(scene, id)?.Note}").Trim() : null;

    /// <summary>"brawler"; null for somebody without one.</summary>
    public static string? Of(Scene scene, Performer performer) =>
        performer.Manner is { } id ? Words.Low(Page.Clean(scene.Book.Manners.FirstOrDefault(m => m.Id == id)?.Name ?? id)) : null;

    private static Style? Named(Scene scene, string id) => scene.Book.Styles.FirstOrDefault(s => s.Id == id);
}
