using Generator.Domain;

namespace Generator.Outside.Tests;

/// <summary>
/// What two-person forms that are taught in print do, thing by thing, and which record does it here; the forms are those of <c>benchmarks/forms.json</c> and <c>PublishedForms.txt</c> with their sources. What is left out
/// on purpose stands in the guide of the library, with the grounds.
/// </summary>
public sealed class PublishedNeedsTests
{
    [Theory]
    [InlineData("hair from the front (FM 21-150)", "hair-pull-front")]
    [InlineData("choke from the side (krav maga level text)", "choke-side")]
    [InlineData("one wrist with both hands (wrist releases)", "wrist-grab-double")]
    [InlineData("wrist and elbow of one arm from the side (FM 21-150)", "arm-grab-side")]
    [InlineData("both wrists from behind (aikido)", "wrists-grab-rear")]
    [InlineData("back of the collar with one hand (Goshin-jutsu)", "collar-grab-rear")]
    [InlineData("bear hug from the front under the arms (FM 21-150)", "bear-hug-front-under")]
    [InlineData("bear hug from behind under the arms (FM 21-150)", "bear-hug-rear-under")]
    [InlineData("belt from the front (FM 21-150)", "belt-grab")]
    [InlineData("headlock from the front (FM 21-150)", "front-headlock")]
    [InlineData("choke while sitting astride (FM 21-150)", "straddle-choke")]
    [InlineData("palm thrust to the face (Goshin-jutsu)", "palm-thrust")]
    [InlineData("stepping punch to the head (Shotokan)", "lunge-punch")]
    [InlineData("stepping punch to the middle (Shotokan)", "lunge-body-punch")]
    public void An_attack_of_published_forms_is_there_and_something_answers_it(string form, string attack)
    {
        var found = Outside.Book.Attacks.Where(a => a.BaseId == attack).ToList();
        Assert.True(found.Count > 0, form);
        Assert.All(found, a => Assert.True(Outside.Book.Techniques.Any(t => t.Meets(a)), $"{form}: nothing answers {a.Id}"));
    }

    /// <param name="form">What is done, and where it is taught.</param>
    /// <param name="technique">The record.</param>
    /// <param name="finds">Postures in which it finds whoever it is done to, one of which is enough; none where it answers an attack.</param>
    [Theory]
    [InlineData("edge of the hand at somebody held by the arm (karate school)", "chop", "held-arm")]
    [InlineData("punch at somebody held by the arm or the leg (karate school)", "cross", "held-arm held-leg")]
    [InlineData("back fist at somebody held by the arm (Tang Soo Do)", "back-fist", "held-arm")]
    [InlineData("front kick at somebody held by the arm (whiteman drill)", "front-kick", "held-arm")]
    [InlineData("side kick at somebody held by the arm (Tang Soo Do)", "side-kick", "held-arm")]
    [InlineData("high round kick at somebody held by the arm (Tang Soo Do)", "high-round-kick", "held-arm")]
    [InlineData("back of the hand to the face of whoever holds the lapel (Goshin-jutsu)", "short-back-fist", "gripping")]
    [InlineData("uppercut to the chin of whoever holds the lapel (Goshin-jutsu)", "uppercut", "gripping")]
    [InlineData("strike with the hand that is held (wrist releases)", "caught-palm", "gripping")]
    [InlineData("groin kick at somebody who holds on (Kime-no-kata)", "snap-kick", "gripping")]
    [InlineData("knee to somebody who stands ready (stage lessons)", "knee", "ready")]
    [InlineData("hold of somebody who stands ready (1899 articles)", "come-along", "ready")]
    [InlineData("turn under one held arm (aikido)", "under-arm-turn", "held-arm")]
    [InlineData("arm bent back and down (Every Woman's Encyclopaedia)", "bent-arm-lock", "held-arm")]
    [InlineData("thumb side of the hand (Tang Soo Do)", "fan-chop", "turned")]
    [InlineData("low hammer, standing (Tang Soo Do)", "low-hammer", "held-arm")]
    [InlineData("crescent kick outward (Malvern one-steps)", "outside-crescent", "ready")]
    [InlineData("heel comes back across (taekwondo)", "hook-kick", "ready")]
    [InlineData("foot behind the knee and down by both shoulders (Tang Soo Do)", "knee-fold", "turned")]
    [InlineData("one of two wrists freed (Kime-no-kata)", "one-thumb-free", "gripping")]
    [InlineData("same-side block of a straight punch (Shotokan)", "outside-block", "")]
    [InlineData("block and strike in one (karate school)", "parry-and-punch", "")]
    [InlineData("crescent kick as a block (Malvern one-steps)", "crescent-block", "")]
    [InlineData("elbow block (karate school)", "elbow-block", "")]
    [InlineData("block while stepping back (Malvern one-steps)", "guarding-step-back", "")]
    [InlineData("hand before the grab arrives (krav maga level text)", "palm-stop", "")]
    [InlineData("hands plucked off the throat (krav maga level text)", "pluck-down", "")]
    [InlineData("one hand peeled off the throat (FM 21-150)", "thumb-peel", "")]
    [InlineData("hand pinned to the head, bent forward (FM 21-150)", "hair-pin-bend", "")]
    [InlineData("over the shoulder out of a hug from behind (FM 21-150)", "hug-over-throw", "")]
    [InlineData("ankle taken between the legs (FM 21-150)", "ankle-pull", "")]
    [InlineData("thrown backwards over the own body (Nage-no-kata)", "waist-throw-back", "")]
    [InlineData("wrist caught of an uppercut (Goshin-jutsu)", "wrist-catch", "")]
    [InlineData("a blow that is only shown (boxing lists)", "feint", "ready")]
    [InlineData("a blow that misses (stage lessons)", "wild-miss", "ready")]
    [InlineData("the hero is shoved and staggers (stage lessons)", "shoved-back", "")]
    public void A_technique_of_published_forms_is_there_and_finds_its_target_so(string form, string technique, string finds)
    {
        var found = Outside.Book.Techniques.Where(t => t.BaseId == technique).ToList();
        Assert.True(found.Count > 0, form);
        Assert.All(found, t => Assert.All(finds.Split(' ', StringSplitOptions.RemoveEmptyEntries), p => Assert.True(t.MayFind(PostureOf(p)), $"{form}: {t.Id} {p}")));
        Assert.All(found.Where(t => finds.Length == 0), t => Assert.True(Outside.Book.Attacks.Any(t.Meets), $"{form}: {t.Id} answers nothing"));
    }

    /// <summary>How the partner takes it, as such forms have it.</summary>
    [Theory]
    [InlineData("snap-kick", "keeps-grip")]
    [InlineData("body-punch", "body-turns")]
    [InlineData("elbow-across", "head-turns")]
    [InlineData("outside-block", "comes-again")]
    public void A_reaction_of_published_forms_suits_its_technique(string technique, string reaction) =>
        Assert.All(Outside.Book.Techniques.Where(t => t.BaseId == technique), t => Assert.Contains(reaction, t.Reactions));

    private static Posture PostureOf(string word) => Enum.GetValues<Posture>().Single(p => p.ToString().Equals(word.Replace("-", string.Empty, StringComparison.Ordinal), StringComparison.OrdinalIgnoreCase));
}
