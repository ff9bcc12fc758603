using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using Generator.Paperwork.Text;
using MiniExcelLibs;
using MiniExcelLibs.OpenXml;

namespace Generator.Paperwork.HandOffs;

/// <summary>Tables as one XLSX file, a sheet each. Times and identities inside the file are fixed, so that the same tables give the same bytes.</summary>
public static partial class Workbook
{
    private static readonly DateTimeOffset Stamp = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    public static byte[] Of(params IReadOnlyList<Table> tables)
    {
        using var raw = new MemoryStream();
        MiniExcel.SaveAs(raw, tables.ToDictionary(t => t.Name, t => (object)t.Rows.Select(r => Named(t.Columns, r)).ToList(), StringComparer.Ordinal), excelType: ExcelType.XLSX, configuration: new OpenXmlConfiguration { EnableAutoWidth = true, FastMode = true });
        raw.Position = 0;
        return Restamped(raw);
    }

    private static Dictionary<string, object> Named(IReadOnlyList<string> columns, IReadOnlyList<Cell> row) =>
        columns.Zip(row).ToDictionary(p => p.First, p => p.Second.Value is { } number ? (object)number : Printable(p.Second.Text), StringComparer.Ordinal);

    /// <summary>Without the control characters that XML cannot hold.</summary>
    private static string Printable(string text) => string.Concat(text.Where(c => c is '\t' or '\n' or '\r' || !char.IsControl(c)));

    private static byte[] Restamped(Stream raw)
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
                else
                {
                    read.CopyTo(write);
                }
            }
        }

        return target.ToArray();
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
