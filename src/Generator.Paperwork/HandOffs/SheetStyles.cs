using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Spreadsheet;

namespace Generator.Paperwork.HandOffs;

/// <summary>How cells of a workbook look: black on white, the heading bold on grey between two lines, long texts wrapped, numbers with as many digits behind the point all down a column.</summary>
internal static class SheetStyles
{
    /// <summary>A text that goes on in further lines of its cell.</summary>
    public const uint Wrapped = 1;

    public const uint Heading = 2;

    /// <summary>A text that stays on one line, for the columns aside.</summary>
    public const uint OneLine = 3;

    /// <summary>That this must not be performed.</summary>
    public const uint Warning = 4;

    private const uint Numbers = 5;

    /// <summary>Numbers that a program may use for formats of its own begin here.</summary>
    private const uint FirstOwn = 164;

    private static readonly string[] Formats = ["0", "0.0", "0.00", "0.000"];

    /// <summary>Of a number with so many digits behind the point, at most three.</summary>
    public static uint Number(int decimals) => Numbers + (uint)Math.Min(decimals, Formats.Length - 1);

    public static Stylesheet Of() => new(
        new NumberingFormats(Formats.Select((f, i) => new NumberingFormat { NumberFormatId = FirstOwn + (uint)i, FormatCode = f })),
        new Fonts(Font(isBold: false), Font(isBold: true), Font(isBold: true, "FF8C1420")),
        new Fills(Fill(PatternValues.None), Fill(PatternValues.Gray125), new Fill(new PatternFill(new ForegroundColor { Rgb = "FFE3E5EA" }) { PatternType = PatternValues.Solid })),
        new Borders(new Border(), new Border(new LeftBorder(), new RightBorder(), new TopBorder(new Color { Rgb = "FF14161B" }) { Style = BorderStyleValues.Thin }, new BottomBorder(new Color { Rgb = "FF14161B" }) { Style = BorderStyleValues.Medium })),
        new CellStyleFormats(new CellFormat()),
        new CellFormats((IEnumerable<CellFormat>)
        [
            new CellFormat(),
            Look(font: 0, wraps: true),
            Look(font: 1, wraps: true, fill: 2, border: 1),
            Look(font: 0, wraps: false),
            Look(font: 2, wraps: true),
            .. Formats.Select((_, i) => new CellFormat(new Alignment { Vertical = VerticalAlignmentValues.Top }) { NumberFormatId = FirstOwn + (uint)i, ApplyNumberFormat = true, ApplyAlignment = true }),
        ]));

    private static Font Font(bool isBold, string colour = "FF000000") =>
        new([.. isBold ? (OpenXmlElement[])[new Bold()] : [], new FontSize { Val = 11 }, new Color { Rgb = colour }, new FontName { Val = "Calibri" }]);

    private static Fill Fill(PatternValues pattern) => new(new PatternFill { PatternType = pattern });

    private static CellFormat Look(uint font, bool wraps, uint fill = 0, uint border = 0) =>
        new(new Alignment { Vertical = VerticalAlignmentValues.Top, WrapText = wraps }) { FontId = font, FillId = fill, BorderId = border, ApplyFont = true, ApplyFill = true, ApplyBorder = true, ApplyAlignment = true };
}
