using Generator.Domain;
using Generator.Rules.Connecting;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.Text;

/// <summary>How a move left the hero, in words.</summary>
internal static class FormWords
{
    private static readonly string[] Names = ["A", "B", "C"];

    /// <summary>"square, left hand holds A, right hand out; A held arm".</summary>
    public static string Of(HeroForm form)
    {
        var parts = new List<string> { Words.Of(form.Stance), "left hand " + Of(form.Left), "right hand " + Of(form.Right) };
        if (form.Bound != Bound.Free)
        {
            parts.Add(form.Bound == Bound.Front ? "bound from the front" : "bound from behind");
        }

        var ties = Enumerable.Range(0, HeroForm.MostTies).Where(who => form[who].IsThere).Select(who => $"{Names[who]} {Of(form[who])}").ToList();
        return string.Join(", ", parts) + (ties.Count > 0 ? "; " + string.Join(", ", ties) : string.Empty);
    }

    private static string Of(Hand hand) => hand.Kind switch
    {
        HandKind.Guard => "in guard",
        HandKind.Out => "out",
        HandKind.Holding => "holds " + Names[hand.Who],
        _ => "held by " + Names[hand.Who],
    };

    private static string Of(Tie tie) => tie.Grip is { } grip ? $"{Words.Of(tie.Posture)} ({Words.Of(grip.Kind)} {Words.Of(grip.Side)})" : Words.Of(tie.Posture);
}
