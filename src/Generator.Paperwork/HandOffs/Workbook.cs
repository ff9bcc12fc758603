using System.IO.Compression;
using System.Xml;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;

namespace Generator.Paperwork.HandOffs;

/// <summary>Tables as one XLSX file, a sheet each. Times and identities inside the file are fixed, so that the same tables give the same bytes.</summary>
public static class Workbook
{
    private static readonly DateTimeOffset Stamp = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <param name="head">What stands at the foot of every printed page, beside its number, and the warning above it.</param>
    /// <param name="tables">The sheets.</param>
    public static byte[] Of(PaperHead head, params IReadOnlyList<Table> tables)
    {
        using var raw = new MemoryStream();
        using (var document = SpreadsheetDocument.Create(raw, SpreadsheetDocumentType.Workbook))
        {
            var book = document.AddWorkbookPart();
            document.ChangeIdOfPart(book, "book");
            book.AddNewPart<WorkbookStylesPart>("styles").Stylesheet = SheetStyles.Of();
            var sheets = new Sheets();
            var names = new DefinedNames();
            for (var i = 0; i < tables.Count; i++)
            {
                var part = book.AddNewPart<WorksheetPart>($"sheet{i + 1}");
                part.Worksheet = TableSheet.Of(tables[i], head, isFirst: i == 0);
                sheets.Append(new Sheet { Name = tables[i].Name, SheetId = (uint)i + 1, Id = book.GetIdOfPart(part) });
                names.Append(TableSheet.Names(tables[i], (uint)i));
            }

            book.Workbook = new DocumentFormat.OpenXml.Spreadsheet.Workbook(new BookViews(new WorkbookView()), sheets, names);
        }

        raw.Position = 0;
        return Restamped(raw);
    }

    /// <summary>Without the characters that XML cannot hold.</summary>
    internal static string Printable(string text) => string.Concat(text.EnumerateRunes().Where(r => !r.IsBmp || XmlConvert.IsXmlChar((char)r.Value)).Select(r => r.ToString()));

    private static byte[] Restamped(Stream raw)
    {
        using var target = new MemoryStream();
        using (var from = new ZipArchive(raw, ZipArchiveMode.Read))
        using (var to = new ZipArchive(target, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var entry in from.Entries.OrderBy(e => e.FullName, StringComparer.Ordinal))
            {
                var copy = to.CreateEntry(entry.FullName);
                copy.LastWriteTime = Stamp;
                using var read = entry.Open();
                using var write = copy.Open();
                read.CopyTo(write);
            }
        }

        return target.ToArray();
    }
}
