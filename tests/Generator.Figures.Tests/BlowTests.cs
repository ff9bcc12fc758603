using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Figures.Poses;
using Generator.Figures.Posing;

namespace Generator.Figures.Tests;

/// <summary>
/// What strikes, kicks and attacks must reach and stay out of, at both ends of every band and for small and tall people. Poses and library are judged together:
/// the records that are named do not keep to it with the poses that they have, and each that is mended leaves its list.
/// </summary>
public class BlowTests
{
    private const double Reached = 0.05;

    private const double Within = 0.03;

    private const double Deep = 0.05;

    private static readonly Lazy<List<Blow>> Blows = new(() => [.. All()]);

    /// <summary>At some end of the band with some statures, the blow ends more than 5 cm before or inside what it should touch.</summary>
    private static readonly string[] TooFar =
    [
        "attack ankle-sweep", "attack charge-rear", "attack prop-back-swing", "attack rush", "attack tackle", "back-kick-stop", "body-backhand", "double-fist-down", "elbow-back",
        "elbow-down", "elbow-side", "elbows-to-both-sides", "floor-sole-push", "foot-shield", "guarding-step-back", "held-back-elbow", "hold-and-elbow", "kick-and-palm-both",
        "kick-scoop", "raised-leg-stop", "raised-push-kick", "rear-elbow-stop",
        "shoulder-barge", "side-elbow-stop",
    ];

    /// <summary>It comes more than 3 cm into the planned gap.</summary>
    private static readonly string[] TooNear =
    [
        "axe-kick", "fists-to-both-sides", "head-pull-knee", "knee-to-head", "rising-knee", "shin-kick", "shin-scrape", "shoulder-lift",
    ];

    /// <summary>Trunks or heads are more than 5 cm inside each other.</summary>
    private static readonly string[] ThroughEachOther =
    [
        "double-fist-down", "elbow-down", "face-push", "head-pull-knee", "knee-to-head", "leapfrog", "rising-knee", "shoulder-lift", "sprawl",
    ];

    /// <summary>With two of one stature a foot cannot be lifted so far: it stays more than 10 cm farther off than planned.</summary>
    private static readonly string[] FartherOff = ["finishing-round-kick", "finishing-spin-kick", "ground-elbow", "high-round-kick", "inside-crescent", "outside-crescent"];

    [Fact]
    public void Blows_that_touch_reach() => Same(TooFar, Blows.Value.Where(b => b.Aim.Gap == 0), b => Math.Abs(b.Apart), Reached);

    [Fact]
    public void Blows_that_miss_stay_out_of_the_planned_gap() => Same(TooNear, Blows.Value.Where(b => b.Aim.Gap > 0), b => (b.Aim.Gap!.Value / 100.0) - b.Apart, Within);

    [Fact]
    public void Bodies_are_not_through_each_other() => Same(ThroughEachOther, Blows.Value, b => b.Depth, Deep);

    /// <summary>
    /// What a card says of a planned miss is what the naive measure of its figures says, and with two of one stature in the middle of the band no hand or foot is much farther off than planned: what is
    /// farther off is told to the camera plan. Props are measured from the hand here and are left out.
    /// </summary>
    [Fact]
    public void The_gap_of_a_card_is_the_gap_of_its_figures()
    {
        var cards = new Cards(Library.Poses, Library.Book);
        var (seen, far) = (0, new List<string>());
        foreach (var technique in Library.Book.Techniques.Where(t => t.Family is Family.Strike or Family.Kick or Family.Finish && t.Prop is null && (t.Side is null || t.Side == Library.Poses.Of(t)!.Side)))
        {
            var contact = cards.Of(technique)!.Contact;
            var aim = Library.Poses.Of(technique)!.Contact.Aims.FirstOrDefault(a => a.Gap > 0);
            if (contact is { Hero: { } hero, Attacker: { } other } && aim.Gap > 0)
            {
                Assert.Equal(Aiming.Apart(hero, other, aim), contact.Gap!.Value, 6);
                if (contact.Gap > (aim.Gap.Value / 100.0) + 0.1)
                {
                    far.Add(technique.BaseId);
                }

                seen++;
            }
        }

        Assert.True(seen > 40, $"{seen}");
        Assert.Equal(FartherOff, far.Order(StringComparer.Ordinal));
    }

    private static void Same(string[] known, IEnumerable<Blow> blows, Func<Blow, double> wrong, double most)
    {
        var list = blows.ToList();
        Assert.True(list.Count > 200, $"{list.Count} blows");
        var found = list.GroupBy(b => b.Id, StringComparer.Ordinal).Select(g => (Id: g.Key, Worst: g.Max(wrong))).Where(g => g.Worst > most).OrderBy(g => g.Id, StringComparer.Ordinal).ToList();
        Assert.True(known.SequenceEqual(found.Select(f => f.Id), StringComparer.Ordinal), string.Join(' ', found.Select(f => FormattableString.Invariant($"{f.Id}={f.Worst:0.00}"))));
    }

    private static IEnumerable<Blow> All()
    {
        foreach (var (hero, attacker) in new[] { (1.50, 1.50), (1.50, 2.00), (2.00, 1.50), (2.00, 2.00) })
        {
            var cards = new Cards(Library.Poses, Library.Book, hero, attacker);
            foreach (var at in new[] { 0.0, 1.0 })
            {
                foreach (var technique in Library.Book.Techniques.Where(t => t.Family is Family.Strike or Family.Kick or Family.Defence))
                {
                    var shape = Library.Poses.Of(technique)!;
                    if (technique.Side is null || technique.Side == shape.Side)
                    {
                        var contact = cards.Of(technique, at)!.Contact;
                        if (contact.Attacker is not null)
                        {
                            yield return Blow.Of(technique.BaseId, shape.Contact, contact.Hero!, contact.Attacker, contact.Props);
                        }
                    }
                }

                foreach (var attack in Library.Book.Attacks.Where(a => !a.IsGrab && (a.Side is null or Side.Right)))
                {
                    var contact = cards.Of(attack, at)!.Contact;
                    yield return Blow.Of("attack " + attack.BaseId, Library.Poses.Of(attack)!.Contact, contact.Attacker!, contact.Hero!, contact.Props);
                }
            }
        }
    }

    private sealed record Blow(string Id, Aim Aim, double Apart, double Depth)
    {
        private static readonly (Joint From, Joint To, double Radius)[] Trunk =
            [(Joint.Hips, Joint.Chest, 0.062), (Joint.Chest, Joint.Neck, 0.055), (Joint.Head, Joint.Crown, 0.040)];

        public static Blow Of(string id, Instant contact, Figure doer, Figure other, IReadOnlyList<HeldProp> props)
        {
            var aim = contact.Aims.Count > 0 ? contact.Aims[0] : default;
            if (aim.Part == Part.RightHand && props.FirstOrDefault(p => p.Hand.To(doer[Joint.RightHand]) < 1e-6) is { } armed)
            {
                aim = aim with { Longer = armed.Kind.Length.Value / 100.0 };
            }

            return new Blow(id, aim, contact.Aims.Count > 0 ? Aiming.Apart(doer, other, aim) : 0, DepthOf(doer, other));
        }

        /// <summary>How deep trunks and heads are inside each other; metres. Points along each, a tenth of its length apart.</summary>
        private static double DepthOf(Figure one, Figure other)
        {
            var depth = double.MinValue;
            foreach (var a in Trunk)
            {
                foreach (var b in Trunk)
                {
                    for (var step = 0; step < 121; step++)
                    {
                        var apart = At(one, a.From, a.To, step / 11 / 10.0).To(At(other, b.From, b.To, step % 11 / 10.0));
                        depth = Math.Max(depth, (a.Radius * one.Stature) + (b.Radius * other.Stature) - apart);
                    }
                }
            }

            return depth;
        }

        private static Vec At(Figure figure, Joint from, Joint to, double share) => figure[from] + ((figure[to] - figure[from]) * share);
    }
}
