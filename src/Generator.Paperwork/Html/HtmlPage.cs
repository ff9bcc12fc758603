using System.Security.Cryptography;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.RegularExpressions;
using System.Text.Unicode;
using Generator.Paperwork.Printing;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;

namespace Generator.Paperwork.Html;

/// <summary>
/// One self-contained file: styles and script inside, nothing from outside. A policy in its head lets nothing else load or run, so that even a
/// text that slipped through unescaped would stay text.
/// </summary>
internal static partial class HtmlPage
{
    private static readonly HtmlEncoder Encoder = HtmlEncoder.Create(UnicodeRanges.All);

    /// <summary>The styles of the house.</summary>
    public static string Style => BuiltIn("page.css") + BuiltIn("papers.css");

    /// <summary>Renders a component as the body of a page.</summary>
    /// <typeparam name="TBody">The component; it takes one parameter called View.</typeparam>
    /// <param name="title">Title of the page.</param>
    /// <param name="view">What the component shows.</param>
    /// <param name="script">The script of the page; null for none.</param>
    /// <param name="head">What stands at the foot of every printed page, beside its number.</param>
    /// <param name="paper">The paper on which it must be printed; null leaves that to the printer.</param>
    /// <param name="own">Further styles of the page.</param>
    public static string Of<TBody>(string title, object view, PaperHead head, string? script = null, PageSize? paper = null, string own = "")
        where TBody : IComponent
    {
        var style = Style + own + RunningFoot.Of(head) + (paper is null ? string.Empty : $"@page {{ size: {paper.Css}; }}\n");
        return Shell(title, style, Body<TBody>(new(StringComparer.Ordinal) { ["View"] = view }), script);
    }

    /// <summary>A page round a body that is there: styles as built in and as given, and the policy that lets nothing else load.</summary>
    internal static string Shell(string title, string style, string body, string? code)
    {
        var policy = $"default-src 'none'; style-src {Hash(style)}; script-src {(code is null ? "'none'" : Hash(code))}; base-uri 'none'; form-action 'none'";
        return $"""
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta http-equiv="Content-Security-Policy" content="{policy}">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <meta name="color-scheme" content="light dark">
            <title>{Encoder.Encode(title)}</title>
            <style>{style}</style>
            </head>
            <body>
            {body}
            {(code is null ? string.Empty : $"<script>{code}</script>")}
            </body>
            </html>

            """.ReplaceLineEndings("\n");
    }

    /// <summary>A component as markup.</summary>
    internal static string Body<TBody>(Dictionary<string, object?> parameters)
        where TBody : IComponent
    {
        using var services = new ServiceCollection().AddSingleton(Encoder).BuildServiceProvider();
        using var renderer = new HtmlRenderer(services, NullLoggerFactory.Instance);
        var rendered = renderer.Dispatcher.InvokeAsync(async () =>
        {
            var root = await renderer.RenderComponentAsync<TBody>(ParameterView.FromDictionary(parameters));
            return root.ToHtmlString();
        });
        return Paths().Replace(Empty().Replace(string.Join('\n', Lean(rendered.GetAwaiter().GetResult())), "<$1/>"), m => m.Value.Replace(" -", "-", StringComparison.Ordinal).Replace(",-", "-", StringComparison.Ordinal));
    }

    /// <summary>Shapes of a picture, which hold nothing, close themselves.</summary>
    [GeneratedRegex("""<((?:path|rect|circle|ellipse|use|line)(?:\s+[\w:-]+="[^"]*")*)\s*></(?:path|rect|circle|ellipse|use|line)>""")]
    private static partial Regex Empty();

    /// <summary>Paths, in which a minus parts numbers as well as a blank or a comma does.</summary>
    [GeneratedRegex(" d=\"[^\"]*\"")]
    private static partial Regex Paths();

    /// <summary>Without empty lines and the blanks round a line.</summary>
    private static IEnumerable<string> Lean(string text) => text.ReplaceLineEndings("\n").Split('\n').Select(l => l.Trim()).Where(l => l.Length > 0);

    /// <summary>A line of styles or of a script that is a remark for whoever reads it there.</summary>
    private static bool IsRemark(string line) => line.StartsWith("// ", StringComparison.Ordinal) || (line.StartsWith("/*", StringComparison.Ordinal) && line.EndsWith("*/", StringComparison.Ordinal));

    private static string Hash(string text) => $"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text)))}'";

    internal static string BuiltIn(string name)
    {
        using var stream = typeof(HtmlPage).Assembly.GetManifestResourceStream(name) ?? throw new InvalidOperationException($"{name} is not built in.");
        using var reader = new StreamReader(stream);
        return string.Concat(Lean(reader.ReadToEnd()).Where(l => !IsRemark(l)).Select(l => l + "\n"));
    }
}
