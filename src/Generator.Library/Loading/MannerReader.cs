using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Loading;

/// <summary>Reads one manner.</summary>
internal static class MannerReader
{
    private static readonly Quantity Answered = new("a share", 0m, 0.5m, string.Empty, "Maybe it is in percent; write 0.1 for one blow in ten. Half of all is the most.");

    private static readonly Quantity Combinations = new("a share", 0m, 1m, string.Empty, "Maybe it is in percent; write 0.3 for three attacks in ten.");

    private static readonly Family[] Chosen = [Family.Strike, Family.Kick, Family.Throw, Family.Lock];

    public static Manner Read(ObjectReader source)
    {
        var families = source.SomeWords<Family>("families");
        if (families.Any(f => Array.IndexOf(Chosen, f) < 0))
        {
            source.Refuse("families", "A manner chooses among strikes, kicks, throws and locks only.", "Maybe leave the others out: everybody defends, escapes and finishes.");
        }

        var manner = new Manner
        {
            Id = source.BaseId(),
            Name = source.RequiredText("name", "\"name\": \"Brawler\""),
            Aliases = source.Texts("aliases"),
            Attacks = source.SomeWords<AttackKind>("attacks"),
            Families = families,
            AnsweredPercent = (int)Math.Round(100 * (source.Number("answered", Answered) ?? 0), MidpointRounding.AwayFromZero),
            CombinationPercent = (int)Math.Round(100 * (source.Number("combinations", Combinations) ?? 0), MidpointRounding.AwayFromZero),
            Usual = source.Flag("usual"),
            Note = source.RequiredText("note", "\"note\": \"What it looks like.\""),
        };
        source.Finish();
        return manner;
    }
}
