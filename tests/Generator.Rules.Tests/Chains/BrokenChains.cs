namespace Generator.Rules.Tests.Chains;

/// <summary>Invented sequences with one planted fault each (common practice, no source): the rule that must speak and the move at which it must (0 for the routine as a whole), start, moves.</summary>
internal static class BrokenChains
{
    public static TheoryData<string, int, string, string> All => new()
    {
        // The blocking hand is still out; needs half a count or the other hand.
        {
            "flow-hands",
            2,
            "left-lead Bruno@12/250",
            "swing-right > outside-block-left {limb-stopped} ; hook-left {head-turns}"
        },
        // Left hand still holds Bruno's wrist.
        {
            "flow-hands",
            2,
            "square Bruno@12/250 Wanda@2/350",
            "cross-right > wrist-catch-left {arm-caught} ; Wanda: +1 cross-right > inside-parry-left {limb-swept-in}"
        },
        // On the back; getting up takes 8 half counts, the gap gives 4.
        {
            "flow-stance",
            2,
            "left-lead Bruno@12/250",
            "swing-right > knocked-down {presses-on} ; +4 cross-right {head-back}"
        },
        // Still on the right leg, left knee up; a foot must come down first.
        {
            "flow-stance",
            2,
            "left-lead Bruno@12/300",
            "round-kick-low-right > shin-check-left {limb-stopped} ; cross-right {head-back}"
        },
        // Wanda is 8 half hours round, the block covers 4 and the gap turns 2.
        {
            "flow-facing",
            3,
            "left-lead Bruno@12/250 Wanda@4/350",
            "swing-right > outside-block-left {limb-stopped} ; cross-right {sits-down} ; Wanda: +1 !swing-left > outside-block-right {limb-stopped}"
        },
        // Too near: a head kick at arm's length has no gap left.
        {
            "in-reach",
            2,
            "right-lead Bruno@12/250",
            "choke-front > wedge {limb-swept-out} ; high-round-kick-left {head-turns}"
        },
        // A left swing comes at the hero's right; the left block guards the left.
        {
            "answers-attack",
            1,
            "left-lead Bruno@12/250",
            "swing-left > outside-block-left {limb-stopped}"
        },
        // Ducking into a low kick.
        {
            "answers-attack",
            1,
            "left-lead Bruno@12/300",
            "round-kick-low-right > duck {overswings}"
        },
        // The head is back; a knee to the face needs a folded attacker.
        {
            "opening",
            3,
            "left-lead Bruno@12/250",
            "swing-right > outside-block-left {limb-stopped} ; cross-right {head-back} ; knee-to-head-left {back-fall}"
        },
        // Opening of 0.9 s (3 half counts) is over.
        {
            "opening",
            2,
            "left-lead Bruno@12/250",
            "swing-right > parry-down-left {head-drops} ; +4 uppercut-right {head-back}"
        },
        // Bruno holds both lapels; swing the gripper or escape first.
        {
            "grip",
            2,
            "square Bruno@12/250 Wanda@2/350",
            "lapel-grab > seized-in-front {keeps-grip} ; Wanda: +1 swing-left > outside-block-right {limb-stopped}"
        },
        // The hold never ends: no release, takedown or finish.
        {
            "grip",
            0,
            "left-lead Bruno@12/250",
            "cross-right > wrist-catch-left {arm-caught} ; straight-arm-lock-left {bends-over-lock} ; END"
        },
        // 1.5 s after a sit fall; needs 3.3 s and the walk back.
        {
            "reset-window",
            3,
            "left-lead Bruno@12/250",
            "swing-right > outside-block-left {limb-stopped} ; cross-right {sits-down} ; +3 swing-left > duck {overswings}"
        },
        // Two contacts in one count, block made for one.
        {
            "one-contact",
            2,
            "left-lead Bruno@12/150 Wanda@2/150",
            "swing-right > outside-block-left {limb-stopped} ; Wanda: & cross-left >"
        },
        // The throw lands at 6, where Wanda stands.
        {
            "clear-lane",
            2,
            "square Bruno@12/250 Wanda@3/55/4",
            "cross-right > wrist-catch-left {arm-caught} ; hip-throw-right {thrown-over}"
        },
        // The slip's count lasts 0.375 s at 160, and it needs 0.4.
        {
            "tempo-floor",
            2,
            "left-lead Bruno@12/250 tempo=160",
            "cross-right > slip-left {falls-short} ; spinning-back-kick-right {folds}"
        },
        // Novice hero, stunt kick.
        {
            "able",
            2,
            "left-lead Bruno@12/250 hero=novice",
            "jab-right > slip-left {falls-short} ; jumping-front-kick-right {staggers-back}"
        },
        // Back fall without mats.
        {
            "able",
            2,
            "left-lead Bruno@12/250 surface=hard",
            "swing-right > outside-block-left {limb-stopped} ; finishing-cross-right {out-flat}"
        },
        // Only camera at right angles to a straight miss.
        {
            "sightline",
            2,
            "left-lead Bruno@12/250 camera=3",
            "jab-right > slip-left {falls-short} ; cross-right {head-back}"
        },
        // Wanda stands within reach for more than 4 counts.
        {
            "no-waiting",
            0,
            "left-lead Bruno@12/250 Wanda@2/200",
            "swing-right > outside-block-left {limb-stopped} ; cross-right {head-back} ; +1 body-hook-left {folds} ; knee-to-head-right {head-back} ; cross-right {head-turns}"
        },
    };
}
