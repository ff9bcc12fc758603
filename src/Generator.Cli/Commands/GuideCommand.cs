using Generator.Cli.Guides;
using Generator.Cli.Options;
using Generator.Cli.Work;
using Generator.Library.Reading;
using Generator.Paperwork.Html;
using Generator.Paperwork.Text;

namespace Generator.Cli.Commands;

/// <summary><c>generator guide</c>: what files may hold and what commands give, topic by topic.</summary>
internal static class GuideCommand
{
    public static HouseCommand Of(Desk desk)
    {
        var topic = CommonOptions.File("TOPIC", "What to read about, or the id of a rule; without one the topics are listed.");
        var output = CommonOptions.Out("Writes the guide into a file instead: a page for a browser where the name ends in .html; without TOPIC all of it.");
        var command = new HouseCommand("guide", "Shows what briefs, notes, routines and records may hold, and what the papers are.") { topic, output };
        command.Example = "generator guide brief";
        command.ExitCodes = [(ExitCode.Good, "The guide is shown or written."), (ExitCode.Input, "There is no such topic.")];
        command.SetAction(parsed => Run(desk, parsed.GetValue(topic), parsed.GetValue(output)));
        return command;
    }

    private static int Run(Desk desk, string? topic, string? output)
    {
        Outputs.Check(output);
        if (topic is not null && Guide.Find(topic) is null)
        {
            throw new RefusedException($"generator guide: there is no topic {FieldText.Quote(topic)}.", NearestWords.Maybe(topic, Guide.Known, NearestWords.OneOf(Guide.Topics.Select(t => t.Topic))));
        }

        IReadOnlyList<string> pages = [.. topic is not null ? [topic] : Guide.Topics.Select(t => t.Topic)];
        if (output is null)
        {
            desk.Out.Write(topic is null ? Topics() : GuideText.Of(Guide.Find(topic)!));
            return ExitCode.Good;
        }

        var isPage = output.EndsWith(".html", StringComparison.OrdinalIgnoreCase) || output.EndsWith(".htm", StringComparison.OrdinalIgnoreCase);
        Outputs.Write(output, isPage
            ? ReadingPage.Of("Generator: guide", string.Concat(pages.Select(p => GuideText.Html(Guide.Find(p)!)).Append($"<p>{Cautions.Sheet}</p>\n")))
            : string.Join('\n', pages.Select(p => GuideText.Of(Guide.Find(p)!)).Append(string.Concat(Page.Wrap(Cautions.Sheet, Page.Width).Select(l => l + "\n")))));
        desk.Err.WriteLine($"The guide is in {output}.");
        return ExitCode.Good;
    }

    private static string Topics()
    {
        var width = Guide.Topics.Max(t => t.Topic.Length);
        return string.Concat(Guide.Topics.SelectMany(t => Page.Row(2, (t.Topic, width), (t.About, Page.Width - width - 4))).Prepend("Topics, each shown by generator guide TOPIC:").Select(l => l + "\n"));
    }
}
