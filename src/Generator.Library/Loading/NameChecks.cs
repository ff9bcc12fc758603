using Generator.Domain;
using Generator.Library.Reading;
using Generator.Library.Words;

namespace Generator.Library.Loading;

/// <summary>Checks that every id, name and alias stands for one record of its kind only.</summary>
internal static class NameChecks
{
    public static void Check(Records records)
    {
        Check(records.Techniques.Select(p => (p.Source, p.Record.BaseId, p.Record.Name, p.Record.Side, p.Record.Aliases)));
        Check(records.Attacks.Select(p => (p.Source, p.Record.BaseId, p.Record.Name, p.Record.Side, p.Record.Aliases)));
        Check(records.Reactions.Select(p => (p.Source, p.Record.Id, p.Record.Name, (Side?)null, p.Record.Aliases)));
        Check(records.Manners.Select(p => (p.Source, p.Record.Id, p.Record.Name, (Side?)null, p.Record.Aliases)));
        Check(records.Styles.Select(p => (p.Source, p.Record.Id, p.Record.Name, (Side?)null, p.Record.Aliases)));
        Check(records.Combinations.Select(p => (p.Source, p.Record.Id, p.Record.Name, (Side?)null, p.Record.Aliases)));
    }

    private static void Check(IEnumerable<(ObjectReader Source, string Id, string Name, Side? Side, IReadOnlyList<string> Aliases)> records)
    {
        var owners = new Dictionary<string, string>(StringComparer.Ordinal);
        var ids = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (source, id, name, side, aliases) in records)
        {
            if (id.Length > 0 && !ids.Add(id))
            {
                source.Refuse("id", $"There is another record with the id {FieldText.Quote(id)}.", "Maybe give one of the two another id.");
                continue;
            }

            Claim("id", id);
            Claim("name", SideWords.WithoutSide(name, side));
            foreach (var (value, path) in source.EntriesAgain("aliases"))
            {
                ClaimAt(value.ToString(), (message, maybe) => source.Refuse(value, path, message, maybe));
            }

            void Claim(string field, string word) => ClaimAt(word, (message, maybe) => source.Refuse(field, message, maybe));

            void ClaimAt(string word, Action<string, string> refuse)
            {
                var plain = PlainWord.Squeezed(word);
                if (plain.Length > 0 && !owners.TryAdd(plain, id) && !string.Equals(owners[plain], id, StringComparison.Ordinal))
                {
                    refuse($"{FieldText.Quote(word)} already stands for {owners[plain]}.", "Maybe another word tells the two apart.");
                }
            }
        }
    }
}
