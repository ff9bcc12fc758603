namespace Generator.Rules.Tests.Chains;

/// <summary>Invented sequences that a coordinator would let stand (common practice, no source): start, then moves.</summary>
internal static class FlowingChains
{
    public static TheoryData<string, string> All => new()
    {
        {
            "left-lead Bruno@12/250",
            "swing-right > outside-block-left {limb-stopped} ; cross-right {head-back} ; body-hook-left {folds} ; knee-to-head-right {back-fall}"
        },
        {
            "left-lead Bruno@12/250",
            "swing-right > parry-down-left {head-drops} ; uppercut-right {head-back} ; hook-left {head-turns} ; finishing-push-kick-right {out-flat}"
        },
        {
            "right-lead Bruno@12/250",
            "cross-right > inside-parry-left {limb-swept-in} ; rebound-back-fist-left {head-turns} ; low-round-kick-right {leg-buckles} ; overhand-right {to-one-knee} ; axe-kick-left {front-fall}"
        },
        {
            "square Bruno@12/250",
            "overhand-right > rising-block-left {limb-swept-out} ; palm-heel-right {head-back} ; outside-reap-right {back-fall}"
        },
        {
            "left-lead Bruno@12/300",
            "round-kick-mid-right > leg-catch-left {leg-caught} ; knee-right {jolts-in-hold} ; leg-sweep-out-right {back-fall}"
        },
        {
            "left-lead Bruno@12/300",
            "round-kick-low-right > shin-check-left {limb-stopped} ; raised-push-kick-left {staggers-back} ; leaping-punch-right {back-fall}"
        },
        {
            "left-lead Bruno@12/250",
            "wrist-grab-same-right > wrist-roll-left {arm-caught} ; straight-arm-lock-left {bends-over-lock} ; arm-lock-down-left {down-and-held} ; knee-pin-right {pinned} ; submit-left {out-gives-up}"
        },
        {
            "square Bruno@6/150",
            "!bear-hug-rear > hugged-from-behind {keeps-grip} ; heel-stomp-right {keeps-grip} ; drop-out {grip-breaks} ; elbow-back-right {staggers-back} ; back-kick-left {back-fall}"
        },
        {
            "left-lead Bruno@12/350",
            "tackle > sprawl {front-fall} ; knee-pin-right {pinned} ; let-go {left-lying} ; +2 rise"
        },
        {
            "left-lead Bruno@12/350",
            "rush > pivot-away-left {stumbles-past} ; step-side-kick-left {folds} ; spinning-back-kick-right {back-fall}"
        },
        {
            "left-lead Bruno@12/250",
            "swing-left > duck {overswings} ; low-spin-sweep-right {sits-down} ; +2 stomp-finish-right {out-lying}"
        },
        {
            "left-lead Bruno@12/250",
            "swing-right > swing-through-throw-right {thrown-and-held} ; knee-pin-right {pinned} ; ground-punch-right {jolts-in-hold} ; let-go {left-lying}"
        },
        {
            "square Bruno@12/250",
            "cross-right > wrist-catch-left {arm-caught} ; elbow-across-right {jolts-in-hold} ; hip-throw-right {thrown-over}"
        },
        {
            "left-lead Bruno@12/250",
            "lapel-grab > arm-over-turn-right {head-drops} ; elbow-side-right {staggers-back} ; side-kick-right {back-fall}"
        },
        {
            "square Bruno@12/250",
            "headlock-right > headlocked {keeps-grip} ; body-punch-left {keeps-grip} ; headlock-slip-right {limb-swept-in} ; collar-hold-right {held-fast} ; knee-left {jolts-in-hold} ; release-push {staggers-back}"
        },
        {
            "left-lead Bruno@12/250",
            "cross-right > knocked-down {presses-on} ; +1 stomp-right > foot-shield {staggers-back} ; kip-up ; +2 front-kick-right > raised-leg-stop-right {sits-down}"
        },
        {
            "left-lead Bruno@12/250",
            "jab-right > step-back {falls-short} ; low-side-kick-right {to-one-knee} ; finishing-round-kick-right {out-crumples}"
        },
        {
            "square Bruno@12/250 Wanda@2/350",
            "cross-right > wrist-catch-left {arm-caught} ; Wanda: +1 swing-left > hold-and-block-right {limb-stopped} ; hold-and-kick-right {staggers-back} ; Bruno: pull-past-left {rolls-through}"
        },
        {
            "left-lead Bruno@12/250 Wanda@7/350",
            "swing-right > parry-down-left {limb-swept-in} ; mid-round-kick-right {side-fall} ; Wanda: +2 !charge-rear > let-pass-left {stumbles-past} ; +1 finishing-push-kick-right {out-flat}"
        },
        {
            "left-lead Bruno@12/250 Wanda@2/300 Piet@9/350",
            "cross-right > cross-parry-right {limb-swept-out} ; palm-heel-left {sits-down} ; Wanda: +1 swing-left > outside-block-right {limb-stopped} ; low-side-kick-right {leg-buckles} ; Piet: !swing-right > turning-block-left {limb-stopped} ; finishing-cross-right {out-flat}"
        },
        {
            "left-lead Bruno@12/250 Wanda@2/300",
            "swing-right > outside-block-left {limb-stopped} ; cross-right {sits-down} ; Wanda: +1 swing-left > outside-block-right {limb-stopped} ; +1 side-hammer-right {folds} ; side-kick-right {back-fall}"
        },
        {
            "square Bruno@12/250 Wanda@2/350",
            "cross-right > wrist-catch-left {arm-caught} ; shield-hold-left {held-fast} ; Wanda: +1 cross-right > shield-turn-left {limb-stopped} ; Bruno: swing-into-left {crashes-into}"
        },
        {
            "square Bruno@10:30/250 Wanda@1:30/250",
            "Wanda: swing-right > outside-block-left {limb-stopped} ; body-punch-right {folds} ; Bruno: !swing-right > outside-block-left {limb-stopped} ; heads-together {out-crumples}"
        },
    };
}
