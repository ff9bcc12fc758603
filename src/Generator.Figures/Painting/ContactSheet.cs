using System.Globalization;
using System.Net;
using System.Text;
using Generator.Domain;
using Generator.Figures.Posing;
using Generator.Library;
using Generator.Library.Reading;

namespace Generator.Figures.Painting;

/// <summary>The pictures of all records on one page, sided ones once.</summary>
public static class ContactSheet
{
    private const string Style = "body{font:14px sans-serif;margin:1rem;color:#222;background:#fff}.cards{display:grid;grid-template-columns:repeat(auto-fill,minmax(min(100%,17rem),1fr));gap:.6rem}"
        + "figure{margin:0;border:1px solid #bbb;padding:.3rem;break-inside:avoid}figure svg{width:100%;height:11rem}figcaption{font-weight:bold}h2{break-after:avoid}"
        + "@media screen and (prefers-color-scheme:dark){body{color:#f4f5f7;background:#0f1115}}";

    public static string Html(Cards cards, Book book)
    {
        var page = new StringBuilder();
        page.Append(CultureInfo.InvariantCulture, $"<!DOCTYPE html><html lang=\"en\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"><meta name=\"color-scheme\" content=\"light dark\"><title>The library in pictures</title><style>{Style}</style></head><body><main><h1>The library in pictures</h1>");
        page.Append(CultureInfo.InvariantCulture, $"<p>{CardPicture.Caution} The hero is dark and wears a belt, the attacker is light and wears a cap; left forearms and shins have two bands, a seam runs down the front of the trunk. A wedge stands under whoever does it; rays are a touch, broken rays a planned miss, a ring is a grip; a prop is white with a black line. Poses are common practice, no source. Library {WebUtility.HtmlEncode(book.Version)}.</p>");
        foreach (var family in Enum.GetValues<Family>())
        {
            Section(EnumWords.Of(family), book.Techniques.Where(t => t.Family == family).DistinctBy(t => t.BaseId, StringComparer.Ordinal).Select(t => cards.Pictured(t)));
        }

        Section("attack", book.Attacks.DistinctBy(a => a.BaseId, StringComparer.Ordinal).Select(a => cards.Pictured(a)));
        Section("reaction", book.Reactions.Select(r => cards.Pictured(r)));
        return page.Append("</main></body></html>\n").ToString();

        void Section(string title, IEnumerable<Card?> some)
        {
            page.Append(CultureInfo.InvariantCulture, $"<h2>{title}</h2><div class=\"cards\">");
            foreach (var card in some.OfType<Card>())
            {
                page.Append(CultureInfo.InvariantCulture, $"<figure>{CardPicture.Svg(card, titled: false)}<figcaption>{WebUtility.HtmlEncode(card.Name)}</figcaption></figure>");
            }

            page.Append("</div>");
        }
    }
}
