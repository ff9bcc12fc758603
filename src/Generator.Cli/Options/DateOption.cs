using System.CommandLine;
using System.Globalization;
using Generator.Library.Reading;

namespace Generator.Cli.Options;

/// <summary>An option that takes a date, year first.</summary>
internal static class DateOption
{
    public static Option<DateOnly?> Of(string name, string description) => new(name)
    {
        HelpName = "DATE",
        Description = description,
        CustomParser = result =>
        {
            var text = result.Tokens[0].Value;
            if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) && date.Year is >= 1900 and < 9999)
            {
                return date;
            }

            result.AddError($"{name} {FieldText.Shorten(text)} is not a date.\nMaybe write year, month and day: {name} 2027-03-15.");
            return null;
        },
    };
}
