using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>
/// A file of rows before their words are looked up, JSON or CSV. A brief that is given replaces the one inside the file; without either, the attackers
/// are those named in the file and everything else takes its default.
/// </summary>
/// <param name="Brief">Its brief.</param>
/// <param name="Version">Library it was made with; empty where it does not say.</param>
/// <param name="Places">Opening places that it says, by number in the cast.</param>
/// <param name="Rows">The moves.</param>
/// <param name="Finish">To be called once all rows are read: tells of fields that nobody asked for.</param>
internal sealed record RowFile(Brief Brief, string Version, IReadOnlyDictionary<int, Place> Places, IReadOnlyList<RoutineRow> Rows, Action Finish)
{
    /// <summary>The rows, or null where the file holds none.</summary>
    /// <param name="file">The file.</param>
    /// <param name="book">The library.</param>
    /// <param name="given">The brief beside; null for none.</param>
    /// <param name="isOpen">Columns may be missing: what is not said is open.</param>
    /// <param name="problems">Is told what is wrong.</param>
    public static RowFile? Of(SourceFile file, Book book, Brief? given, bool isOpen, ProblemList problems) =>
        IsCsv(file) ? FromCsv(file, book, given, isOpen, problems) : FromJson(file, book, given, problems);

    /// <summary>The file is taken as CSV, which may hold no brief.</summary>
    public static bool IsCsv(SourceFile file)
    {
        if (file.Name.EndsWith(".csv", StringComparison.OrdinalIgnoreCase))
        {
            return true;
        }

        return !file.Name.EndsWith(".json", StringComparison.OrdinalIgnoreCase) && file.Text.TrimStart('\uFEFF', ' ', '\t', '\r', '\n') is not (['{' or '[' or '/', ..] or "");
    }

    private static RowFile? FromJson(SourceFile file, Book book, Brief? given, ProblemList problems)
    {
        if (StrictJson.Object(file.Name, file.Text, problems) is not { } root)
        {
            return null;
        }

        if (root.Object("routine") is { } inner)
        {
            root.Allow("findings", "points", "standing");
            root.Finish();
            root = inner;
        }

        root.Allow("$schema", "brief");
        var brief = given ?? (root.Object("brief") is { } inside ? BriefReader.Brief(inside, book, lengthRequired: false) : null);
        if (!root.Has("moves"))
        {
            root.Missing("moves", "\"moves\": [ { \"count\": 1, … } ]");
        }

        var version = root.FreeText("library");
        var places = root.Objects("attackers");
        var readers = root.Objects("moves");
        root.Finish();
        List<JsonRow> rows = [.. readers.Select(r => new JsonRow(r))];
        brief ??= Default([.. places.Select(p => (0, p.Name("name"))), .. rows.Select(r => (r.Line, r.Text("attacker")))], file, problems);
        return new RowFile(brief, version, Placing.Places(places, Cast.Of(brief)), rows, () => readers.ToList().ForEach(r => r.Finish()));
    }

    private static RowFile FromCsv(SourceFile file, Book book, Brief? given, bool isOpen, ProblemList problems)
    {
        var all = CsvRoutine.Rows(file, isOpen, problems);
        var (asked, rows) = (all.Where(BriefColumns.IsOf).ToList(), all.Where(r => !BriefColumns.IsOf(r)).ToList());
        IReadOnlyList<(int Line, string? Word)> named = [.. rows.Select(r => (r.Line, r.Text("attacker")))];
        var brief = given ?? (asked.Count == 0 ? Default(named, file, problems) : Asked(asked, named, file, book, problems));
        var places = OpeningColumns.Places(rows, Cast.Of(brief));
        return new RowFile(brief, BriefColumns.LibraryOf(asked), places, [.. rows.Where(r => !OpeningColumns.IsAllOf(r))], () => { });
    }

    /// <summary>The brief that a table holds. Whom it does not say are, as without any, those who are named in the rows.</summary>
    private static Brief Asked(IReadOnlyList<RoutineRow> asked, IReadOnlyList<(int Line, string? Word)> named, SourceFile file, Book book, ProblemList problems)
    {
        var said = BriefColumns.Object(asked);
        if (!said.ContainsKey("attackers"))
        {
            var whole = BriefWriter.Object(Default(named, file, problems));
            said["attackers"] = whole["attackers"];
            said["hero"] ??= whole["hero"];
        }

        var told = new ProblemList();
        var brief = BriefReader.Brief(new ObjectReader(said, string.Empty, file.Name, told), book, lengthRequired: false);
        foreach (var problem in told.InOrder)
        {
            problems.Add(problem with { Line = BriefColumns.Line(asked, problem.Field) });
        }

        foreach (var remark in told.Remarks)
        {
            problems.Remark(remark with { Line = BriefColumns.Line(asked, remark.Field) });
        }

        return brief;
    }

    /// <summary>The brief of a file that has none: whoever is named in it, names before A1, A2 …, in order of appearance.</summary>
    private static Brief Default(IReadOnlyList<(int Line, string? Word)> words, SourceFile file, ProblemList problems)
    {
        var all = words.Select(w => w.Word).OfType<string>().Distinct(StringComparer.OrdinalIgnoreCase).ToList();
        var names = all.Where(w => LabelNumber(w) == 0).ToList();
        names.AddRange(all.Where(w => LabelNumber(w) > names.Count).OrderBy(LabelNumber).ToList());
        if (names.Count > Cast.Most || (names.Count == 0 && problems.IsEmpty))
        {
            problems.Add(new Problem(
                file.Name,
                0,
                "attacker",
                string.Empty,
                names.Count == 0 ? "The routine names no attacker." : $"The routine names {names.Count} attackers; there must be 1 to {Cast.Most}.",
                names.Count == 0 ? "Maybe its rows are missing, or its brief was meant to be given with --brief." : "Maybe a name is spelt in several ways."));
        }

        foreach (var name in names)
        {
            if (NameForm.Fault(name) is var (message, maybe))
            {
                problems.Add(new Problem(file.Name, words.First(w => string.Equals(w.Word, name, StringComparison.Ordinal)).Line, "attacker", FieldText.Quote(name), message, maybe));
            }
        }

        // Nobody says who they are: what a cast must be able to do is not a fault of the rows.
        return new Brief { Hero = new HeroPart { Name = "Hero", Skill = Skill.Stunt }, Attackers = [.. names.Select(n => new AttackerPart { Name = n, Skill = Skill.Stunt })] };
    }

    /// <summary>3 for "A3"; 0 for what is a name.</summary>
    private static int LabelNumber(string word) =>
        Enumerable.Range(0, Cast.Most).FirstOrDefault(i => string.Equals(Cast.Label(i), word, StringComparison.OrdinalIgnoreCase), -1) + 1;
}
