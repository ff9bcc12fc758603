using Generator.Testing;
using Microsoft.Playwright;

namespace Generator.Browser.Tests;

/// <summary>The machine's own Chromium, started once for all tests. It may open files, and what the program serves on this machine: no page has anything to fetch from elsewhere.</summary>
public sealed class Browser : IAsyncLifetime
{
    private static readonly string[] Places = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome", "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome"];

    /// <summary>Milliseconds after which something hangs on any machine, however busy: 10 minutes.</summary>
    private const float Patience = 600_000;

    private static readonly string? Chromium = Array.Find(Places, File.Exists);

    /// <summary>Why these tests are left out; null when there is Chromium, or when nothing may be left out.</summary>
    public static string? Lacking { get; } = LeftOut.For(() => Chromium is null
        ? "It opens a page, and there is no Chromium at " + string.Join(", ", Places) + ". Maybe install it: apt-get install chromium"
        : null);

    private IPlaywright? playwright;
    private IBrowser? browser;

    public async Task InitializeAsync()
    {
        if (Lacking is not null)
        {
            return;
        }

        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
        {
            ExecutablePath = Chromium ?? throw new InvalidOperationException("There is no Chromium, and GENERATOR_ALL_TESTS says that no test may be left out."),
            Timeout = Patience,
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync", "--mute-audio"],
        });
    }

    /// <summary>Opens a page in a context of its own; whatever goes wrong in it fails the test at <see cref="Sheet.DisposeAsync"/>.</summary>
    public async Task<Sheet> Open(string path, BrowserNewContextOptions? options = null)
    {
        var context = await browser!.NewContextAsync(options ?? new());
        context.SetDefaultTimeout(Patience);
        var sheet = new Sheet(context, await context.NewPageAsync(), path.StartsWith("http://127.0.0.1:", StringComparison.Ordinal) ? new Uri(path).GetLeftPart(UriPartial.Authority) + "/" : "file:");
        await sheet.Page.GotoAsync(new Uri(path).AbsoluteUri);
        return sheet;
    }

    public async Task DisposeAsync()
    {
        if (browser is not null)
        {
            await browser.DisposeAsync();
        }

        playwright?.Dispose();
    }
}
