using System.CommandLine;
using Generator.Library.Reading;
using Generator.Paperwork.HandOffs;

namespace Generator.Cli.Options;

/// <summary>The option that takes a frame rate.</summary>
internal static class FramesOption
{
    public static Option<FrameRate?> Of() => new("--frames")
    {
        HelpName = "RATE",
        Description = "Frames a second of the timecodes: 24, 25, 29.97 (drop-frame) or 30; 25 when nothing is said.",
        CustomParser = result =>
        {
            var text = result.Tokens[0].Value;
            if (FrameRate.All.FirstOrDefault(r => string.Equals(r.Name, text, StringComparison.Ordinal)) is { } rate)
            {
                return rate;
            }

            result.AddError($"--frames {FieldText.Shorten(text)} is not a frame rate that these papers know.\nMaybe one of these is meant: {string.Join(", ", FrameRate.All.Select(r => r.Name))}.");
            return null;
        },
    };
}
