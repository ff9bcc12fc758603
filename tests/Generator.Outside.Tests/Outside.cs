using Generator.Domain;
using Generator.Library;
using Generator.Library.Loading;
using Generator.Rules;

namespace Generator.Outside.Tests;

/// <summary>The bundled library, and scenes of a hero and one attacker made for a check.</summary>
internal static class Outside
{
    /// <summary>Mean stature of the men and women of ANSUR II (2012), in metres.</summary>
    public const decimal MeanMan = 1.756m;

    public const decimal MeanWoman = 1.629m;

    private static readonly Lazy<Book> Loaded = new(() =>
    {
        var read = LibraryLoader.LoadBundled();
        return read.Value ?? throw new InvalidOperationException(read.ToText());
    });

    public static Book Book => Loaded.Value;

    public static Scene Scene(Func<HeroPart, HeroPart>? hero = null, Func<AttackerPart, AttackerPart>? attacker = null, int tempo = 100) => new(
        Brief(hero, attacker, tempo),
        Book);

    public static Brief Brief(Func<HeroPart, HeroPart>? hero = null, Func<AttackerPart, AttackerPart>? attacker = null, int tempo = 100)
    {
        var lead = new HeroPart { Name = "Ines", Skill = Skill.Stunt };
        var part = new AttackerPart { Name = "Bruno", Skill = Skill.Stunt };
        return new Brief { Tempo = new Tempo(tempo), Hero = hero?.Invoke(lead) ?? lead, Attackers = [attacker?.Invoke(part) ?? part] };
    }

    /// <summary>Technique records by base id, one side each.</summary>
    public static IReadOnlyList<Technique> Techniques(params string[] baseIds)
    {
        var found = Book.Techniques.Where(t => baseIds.Contains(t.BaseId, StringComparer.Ordinal)).DistinctBy(t => t.BaseId).ToList();
        Assert.Equal(baseIds.Length, found.Count);
        return found;
    }

    public static IReadOnlyList<Attack> Attacks(params string[] baseIds)
    {
        var found = Book.Attacks.Where(a => baseIds.Contains(a.BaseId, StringComparer.Ordinal)).DistinctBy(a => a.BaseId).ToList();
        Assert.Equal(baseIds.Length, found.Count);
        return found;
    }

    /// <summary>Half counts at a tempo in seconds.</summary>
    public static double Seconds(int halfCounts, int tempo = 100) => (double)new Tempo(tempo).SecondsIn(new HalfCounts(halfCounts));
}
