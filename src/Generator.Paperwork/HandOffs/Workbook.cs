using System.IO.Compression;
using System.Security;
using System.Text;
using System.Text.RegularExpressions;
using Generator.Paperwork.Text;
using MiniExcelLibs;
using MiniExcelLibs.OpenXml;

namespace Generator.Paperwork.HandOffs;

/// <summary>Tables as one XLSX file, a sheet each. Times and identities inside the file are fixed, so that the same tables give the same bytes.</summary>
public static partial class Workbook
{
    /// <summary>Letters of a foot that a workbook may hold are 255, marks and number among them, and a doubled mark counts twice.</summary>
    private const int MostInAFoot = 110;

    private const string FitsAPage = "<x:sheetPr><x:pageSetUpPr fitToPage=\"1\" /></x:sheetPr>";

    private static readonly DateTimeOffset Stamp = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <param name="head">What stands at the foot of every printed page, beside its number, and the warning above it.</param>
    /// <param name="tables">The sheets.</param>
    public static byte[] Of(PaperHead head, params IReadOnlyList<Table> tables)
    {
        using var raw = new MemoryStream();
        MiniExcel.SaveAs(raw, tables.ToDictionary(t => t.Name, t => (object)t.Rows.Select(r => Named(t.Columns, r)).ToList(), StringComparer.Ordinal), excelType: ExcelType.XLSX, configuration: new OpenXmlConfiguration { EnableAutoWidth = true, FastMode = true });
        raw.Position = 0;
        return Restamped(raw, PrintedOn(head));
    }

    private static Dictionary<string, object> Named(IReadOnlyList<string> columns, IReadOnlyList<Cell> row) =>
        columns.Zip(row).ToDictionary(p => p.First, p => p.Second.Value is { } number ? (object)number : Printable(p.Second.Text), StringComparer.Ordinal);

    /// <summary>Without the control characters that XML cannot hold.</summary>
    private static string Printable(string text) => string.Concat(text.Where(c => c is '\t' or '\n' or '\r' || !char.IsControl(c)));

    private static byte[] Restamped(Stream raw, string printedOn)
    {
        using var target = new MemoryStream();
        using (var from = new ZipArchive(raw, ZipArchiveMode.Read))
        using (var to = new ZipArchive(target, ZipArchiveMode.Create, leaveOpen: true))
        {
            var identities = new Dictionary<string, string>(StringComparer.Ordinal);
            foreach (var entry in from.Entries.OrderBy(e => e.FullName, StringComparer.Ordinal))
            {
                var copy = to.CreateEntry(entry.FullName);
                copy.LastWriteTime = Stamp;
                using var read = entry.Open();
                using var write = copy.Open();
                if (entry.Name is "workbook.xml" or "workbook.xml.rels")
                {
                    using var text = new StreamReader(read);
                    write.Write(Encoding.UTF8.GetBytes(Identity().Replace(text.ReadToEnd(), m => Numbered(identities, m.Value))));
                }
                else if (entry.FullName.StartsWith("xl/worksheets/sheet", StringComparison.Ordinal))
                {
                    using var text = new StreamReader(read);
                    write.Write(Encoding.UTF8.GetBytes(text.ReadToEnd().Replace("<x:dimension ", FitsAPage + "<x:dimension ", StringComparison.Ordinal).Replace("<x:drawing ", printedOn + "<x:drawing ", StringComparison.Ordinal)));
                }
                else
                {
                    read.CopyTo(write);
                }
            }
        }

        return target.ToArray();
    }

    /// <summary>Across, all columns on one sheet, with title, version and page number under it.</summary>
    private static string PrintedOn(PaperHead head)
    {
        var whole = Page.Wrap($"{head.Identity}. {head.Title}", MostInAFoot)[0];
        var kept = (whole.Length > 2 * MostInAFoot ? head.Identity : whole).Replace("&", "&&", StringComparison.Ordinal);
        var warning = head.Warning is null ? string.Empty : $"<x:oddHeader>{SecurityElement.Escape($"&C{PaperHead.Sign} {PaperHead.Forbidden.ToUpperInvariant()}")}</x:oddHeader>";
        return $"<x:pageSetup orientation=\"landscape\" fitToHeight=\"0\" /><x:headerFooter>{warning}<x:oddFooter>{SecurityElement.Escape($"&L{kept}&Rpage &P of &N")}</x:oddFooter></x:headerFooter>";
    }

    private static string Numbered(Dictionary<string, string> identities, string identity)
    {
        identities.TryAdd(identity, "R" + Words.Number(identities.Count + 1));
        return identities[identity];
    }

    /// <summary>The writer gives each sheet an identity drawn by chance.</summary>
    [GeneratedRegex("R[0-9a-f]{32}", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex Identity();
}
