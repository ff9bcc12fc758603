using Generator.Domain;
using Generator.Rules.Judging;

namespace Generator.Outside.Tests;

/// <summary>Two-person forms that are taught in print, written in the words of the library: nothing in them is unsafe or broken. The same made wrong still is.</summary>
public sealed class PublishedFormsTests
{
    /// <summary>What a brief asks of a whole fight, and no form is.</summary>
    private static readonly HashSet<string> OfTheWhole = new(StringComparer.Ordinal) { "ending", "setbacks" };

    public static TheoryData<string, string, string> Forms { get; } = new()
    {
        { "Kime-no-kata, tsuki-age", "12", "1 uppercut-right sway-back overswings; 2 - two-on-one-left arm-caught; 3 - straight-arm-lock-left bends-over-lock; 4& - submit-left out-gives-up" },
        { "Kodokan Goshin-jutsu (1956), kakae-dori", "6", "1 bear-hug-rear hugged-from-behind keeps-grip; 2& - heel-stomp-right keeps-grip; 3& - drop-and-turn-right limb-swept-out; 5 - two-on-one-left arm-caught; 6 - straight-arm-lock-left bends-over-lock; 7& - arm-lock-down-left front-fall" },
        { "Kodokan Goshin-jutsu (1956), ago-tsuki", "12", "1 uppercut-right wrist-catch-left arm-caught; 2 - straight-arm-lock-left bends-over-lock; 3& - arm-lock-down-left front-fall" },
        { "Tang Soo Do handbook, lapel grabs", "12", "1 collar-grab-right seized-in-front keeps-grip; 2 - hand-pin-roll-left arm-caught; 3 - straight-arm-lock-left bends-over-lock; 4& - elbow-down-right jolts-in-hold; 5& - submit-left out-gives-up" },
        { "Boxing combination 1-2-5-2", "12", "1 walk-in jab-left head-back; 2 - cross-right head-back; 3 - uppercut-left head-back; 4 - cross-right head-turns" },
        { "Karate school curriculum, lead kick and punch to the face", "12", "1 walk-in lead-kick-left rocks-back; 2 - cross-right head-back" },
        { "Karate school curriculum, side step, back fist, punch", "12", "1 cross-right side-step-left falls-short; 2 - back-fist-left head-turns; 3 - body-punch-right folds" },
        { "Kime-no-kata, ryote-dori", "12", "1 two-wrist-grab both-wrists-taken keeps-grip; 2 - snap-kick-right keeps-grip; 3& - wrists-crossed-right arm-caught; 5 - straight-arm-lock-right bends-over-lock; 6& - submit-right out-gives-up" },
        { "Three-step drill, whiteman-online.com.au, blocks turned inside", "12", "1 cross-right inside-parry-left comes-again; 3 cross-left inside-parry-right comes-again; 5 cross-right wrist-catch-left arm-caught; 6 - low-side-kick-right leg-buckles" },
        { "Boxing combination 1-2-5-2, the partner giving way", "12", "1 walk-in jab-left rocks-back; 2 - cross-right rocks-back; 3 - uppercut-left head-back; 4 - cross-right rocks-back; 5 - jab-left head-back" },
        { "Kodokan Goshin-jutsu (1956), hidari-eri-dori: left lapel hold", "12", "1 collar-grab-right seized-in-front keeps-grip; 2 - short-back-fist-right keeps-grip; 3 - hand-pin-roll-left bends-over-lock; 4 - straight-arm-lock-left bends-over-lock; 5& - arm-lock-down-left down-and-held; 7& - submit-left out-gives-up" },
        { "Kodokan Goshin-jutsu (1956), migi-eri-dori: right lapel hold", "12", "1 collar-grab-right seized-in-front keeps-grip; 2 - uppercut-right keeps-grip; 3 - hand-pin-roll-left arm-caught; 4 - wrist-throw-left down-and-held; 5& - submit-left out-gives-up" },
        { "Kodokan Goshin-jutsu (1956), ushiro-eri-dori: collar hold from behind", "6", "1 collar-grab-rear-right dragged-back keeps-grip; 2& - jacket-spin-left arm-caught; 4 - body-punch-right jolts-in-hold; 5& - straight-arm-lock-left bends-over-lock; 7 - submit-left out-gives-up" },
        { "Kime-no-kata (Kodokan), tsukkake standing: punch to the face", "12", "1 cross-right wrist-catch-left arm-caught; 2 - pull-past-left drawn-past; 3& - rear-arm-hold-right held-fast; 5 - sleeper-finish-right out-sinks" },
        { "Nage-no-kata, ura-nage: rear throw", "12", "1 overhand-right waist-throw-back-left thrown-over" },
        { "Aikido basic form, yokomen-uchi shiho-nage: slanting strike, four-direction throw", "12", "1 swing-right wrist-catch-left arm-caught; 2 - under-arm-throw-left back-fall" },
        { "US Army FM 21-150 (1942), public domain, section V no. 27: front choke, first defence", "12", "1 choke-front seized-in-front keeps-grip; 2 - thumb-peel-left arm-caught; 3 - wrist-throw-left back-fall" },
        { "FM 21-150, section XIII, and 1940s manuals: hair from the front", "12", "1 hair-pull-front-right seized-in-front keeps-grip; 2 - hair-pin-bend-left bends-over-lock; 3& - knee-right jolts-in-hold; 4& - submit-left out-gives-up" },
        { "Every Woman's Encyclopaedia (1910-12), jujutsus: bent arm lock and trip", "12", "1 swing-right wrist-catch-left arm-caught; 2 - bent-arm-lock-left rises-on-toes; 3& - outside-reap-right back-fall" },
        { "self-defence anthology, wrist releases 5-3: palm up with the caught hand", "12", "1 wrist-grab-same-left wrist-taken-right keeps-grip; 2 - caught-palm-right head-back" },
        { "krav maga level text, kravmagaclasses.online UV2 a3: choke from the front, hands pulled off", "12", "1 choke-front seized-in-front keeps-grip; 2 - pluck-down head-drops; 3 - knee-right folds" },
        { "krav maga level text UV2 a1: choke from the front, stopped on the way", "12", "1 choke-front palm-stop-right head-back" },
        { "krav maga level text UV2 b1: choke from the side", "9", "1 choke-side-right choked-from-side-left keeps-grip; 2& - side-pluck-left folds; 4& - elbow-up-left head-back; 5& - knee-right folds" },
        { "karate school curriculum in a public text, orange 2: choke from the left, side kick", "9", "1 choke-side-right side-brush-left limb-swept-out; 2 - low-side-kick-left leg-buckles" },
        { "karate school curriculum in a public text, orange 5: elbow block, back fist of the same hand", "12", "1 lunge-body-punch-right elbow-block-left limb-swept-in; 2 - back-fist-left head-turns" },
        { "karate school curriculum in a public text, green 11: parry and punch, back kick", "12", "1 lunge-punch-right parry-and-punch-left folds; 2 - spinning-back-kick-right back-fall" },
        { "Tang Soo Do handbook (public text), same side grabs: same side grab 1", "12", "1 wrist-grab-same-right thumb-pull-left grip-breaks; 2 - back-fist-right head-turns; 3 - low-hammer-left folds; 4 - fan-chop-right head-turns" },
        { "one-step, malverntaekwondo.co.uk, no. 5: back step, guarding block, front kick", "12", "1 lunge-body-punch-right guarding-step-back-left falls-short; 2 - front-kick-right folds" },
        { "one-step, malverntaekwondo.co.uk, no. 7: crescent kick, round kick", "12", "1 lunge-body-punch-right crescent-block-right limb-swept-out; 2& - high-round-kick-left head-turns" },
    };

    [Theory]
    [MemberData(nameof(Forms))]
    public void Nothing_in_a_published_form_is_unsafe_or_broken(string source, string from, string moves) =>
        Assert.True(Wrong(from, moves).Count == 0, source + ": " + string.Join(" ", Wrong(from, moves).Select(f => f.Message)));

    /// <summary>Each is a form of above with one thing wrong: too far, too near, a hand that holds somebody else's place, a face over a folded body.</summary>
    [Theory]
    [InlineData("in-reach", Severity.Broken, "1 walk-in jab-left rocks-back; 2 - cross-right staggers-back; 3 - uppercut-left head-back")]
    [InlineData("in-reach", Severity.Unsafe, "1 lapel-grab lapel-chop-right head-drops; 2 - chop-left front-fall")]
    [InlineData("in-reach", Severity.Unsafe, "1 bear-hug-front hugged-in-front keeps-grip; 2& - shin-kick-right keeps-grip")]
    [InlineData("flow-hands", Severity.Broken, "1 uppercut-right sway-back overswings; 2 - two-on-one-left arm-caught; 3 - uppercut-right jolts-in-hold")]
    [InlineData("opening", Severity.Broken, "1 walk-in lead-kick-left folds; 2 - cross-right head-back")]
    [InlineData("answers-attack", Severity.Broken, "1 front-kick-right wrist-catch-left arm-caught")]
    [InlineData("reset-window", Severity.Unsafe, "1 cross-right inside-parry-left falls-short; 2 cross-left inside-parry-right falls-short")]
    public void The_same_made_wrong_is_still_found(string rule, Severity severity, string moves) =>
        Assert.Contains(Wrong("12", moves), f => f.Rule == rule && f.Severity == severity);

    private static List<Finding> Wrong(string from, string moves)
    {
        var scene = Outside.Scene();
        Assert.True(Bearing.TryParse(from, out var bearing));
        var routine = new Routine
        {
            Brief = scene.Brief,
            LibraryVersion = scene.Book.Version,
            Placements = [new Placement(bearing, new Centimetres(300), HalfCounts.Zero)],
            Moves = [.. moves.Split("; ").Select(Move)],
        };
        return [.. Audit.Of(scene, routine).Findings.Where(f => f.Severity >= Severity.Broken && !OfTheWhole.Contains(f.Rule))];
    }

    /// <summary>Count, attack (or a dash for a follow-up), technique, reaction; whoever comes from behind calls.</summary>
    private static Move Move(string text)
    {
        var words = text.Split(' ');
        Assert.True(HalfCounts.TryParseCount(words[0], out var start));
        return new Move { Start = start, Attacker = 0, Attack = words[1] == "-" ? null : words[1], Technique = words[2], Reaction = words[3], Cue = Cue.Voice };
    }
}
