using System.CommandLine;
using System.Globalization;
using Generator.Library.Reading;

namespace Generator.Cli.Options;

/// <summary>Options that take a number within a range, refused in the words of the house.</summary>
internal static class NumberOption
{
    /// <summary>A whole number.</summary>
    public static Option<int?> Whole(string name, string value, string description, int least, int most) => new(name)
    {
        HelpName = value,
        Description = description,
        CustomParser = result =>
        {
            var text = result.Tokens[0].Value;
            var isNumber = long.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number);
            if (isNumber && number >= least && number <= most)
            {
                return (int)number;
            }

            result.AddError($"{name} {FieldText.Shorten(text)} is not a whole number from {least} to {most}.\nMaybe write {name} {Math.Clamp(isNumber ? number : 1, least, most)}.");
            return null;
        },
    };

    /// <summary>A length of time in seconds.</summary>
    public static Option<TimeSpan?> Seconds(string name, string description, decimal least, decimal most) => new(name)
    {
        HelpName = "SECONDS",
        Description = description,
        CustomParser = result =>
        {
            var text = result.Tokens[0].Value;
            if (decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && number >= least && number <= most)
            {
                return TimeSpan.FromTicks((long)(number * TimeSpan.TicksPerSecond));
            }

            result.AddError($"{name} {FieldText.Shorten(text)} is not a number of seconds from {least} to {most}.\nMaybe write {name} 10, or {name} 2.5 with a point.");
            return null;
        },
    };
}
