using Microsoft.Playwright;

namespace Generator.Browser.Tests;

/// <summary>An open page that notes every error, dialogue and request for something from outside.</summary>
public sealed class Sheet : IAsyncDisposable
{
    private readonly IBrowserContext context;
    private readonly List<string> faults = [];

    public Sheet(IBrowserContext context, IPage page, string from = "file:")
    {
        (this.context, Page) = (context, page);
        page.PageError += (_, error) => Note("error: " + error);
        page.Console += (_, line) => NoteIf(line.Type is "error" or "warning", "console: " + line.Text);
        page.Response += (_, response) => NoteIf(response.Status >= 400, $"answer: {response.Status} to {response.Url}");
        page.Request += (_, request) => NoteIf(!request.Url.StartsWith(from, StringComparison.Ordinal), "request: " + request.Url);
        page.Dialog += (_, dialog) =>
        {
            Note("dialogue: " + dialog.Message);
            _ = dialog.DismissAsync();
        };
    }

    public IPage Page { get; }

    public async ValueTask DisposeAsync()
    {
        await context.DisposeAsync();
        Assert.Empty(faults);
    }

    /// <summary>Text of an element.</summary>
    public Task<string> Text(string selector) => Page.Locator(selector).InnerTextAsync();

    /// <summary>Runs an expression in the page.</summary>
    public Task<T> Eval<T>(string expression) => Page.EvaluateAsync<T>(expression);

    /// <summary>Waits until an expression is true. (The pages' own policy forbids the waiting that evaluates text inside them.)</summary>
    public async Task Until(string expression)
    {
        for (var tries = 0; tries < 6000; tries++)
        {
            if (await Eval<bool>(expression))
            {
                return;
            }

            await Task.Delay(50);
        }

        Assert.Fail($"This never came true: {expression}");
    }

    /// <summary>What is refused on purpose is no fault: the answer to this call, and what the browser says of it.</summary>
    public void Refused(string call)
    {
        lock (faults)
        {
            Assert.NotEqual(0, faults.RemoveAll(f => f.StartsWith("answer: 400", StringComparison.Ordinal) && f.EndsWith("/" + call, StringComparison.Ordinal)));
            faults.RemoveAll(f => f.StartsWith("console: Failed to load resource", StringComparison.Ordinal));
        }
    }

    private void NoteIf(bool happened, string what)
    {
        if (happened)
        {
            Note(what);
        }
    }

    private void Note(string what)
    {
        lock (faults)
        {
            faults.Add(what);
        }
    }
}
