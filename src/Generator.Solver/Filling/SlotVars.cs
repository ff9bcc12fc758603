using Google.OrTools.Sat;

namespace Generator.Solver.Filling;

/// <summary>The choices of one row and what follows from them; the solver's counterpart of a replay step.</summary>
public sealed class SlotVars
{
    public required int Index { get; init; }

    public required BoundaryVars Before { get; init; }

    public BoundaryVars After { get; set; } = null!;

    // Choices
    public required BoolVar[] Uses { get; init; }

    public required BoolVar[] Attacks { get; init; }

    public required BoolVar NoAttack { get; init; }

    public required BoolVar[] Reactions { get; init; }

    public required BoolVar NoReaction { get; init; }

    /// <summary>One for each attacker.</summary>
    public required BoolVar[] Targets { get; init; }

    /// <summary>Has no target: idle, or a pause without one.</summary>
    public required BoolVar NoTarget { get; init; }

    /// <summary>The attacker, or cast for none.</summary>
    public required IntVar Target { get; init; }

    /// <summary>The only possible target when it is known beforehand; −1 otherwise.</summary>
    public int FixedTarget { get; init; } = -1;

    public required IntVar Start { get; init; }

    public required IntVar Gap { get; init; }

    public required IntVar End { get; init; }

    public required IntVar Linger { get; init; }

    /// <summary>Half hours walked round before the attack, −11 to 12.</summary>
    public required IntVar WalkRound { get; init; }

    public BoolVar Used { get; set; } = null!;

    /// <summary>The attacker blocks, slips or catches the blow.</summary>
    public BoolVar Answered { get; set; } = null!;

    // What follows
    public BoolVar HasAttack { get; set; } = null!;

    /// <summary>First move of an exchange.</summary>
    public BoolVar Opens { get; set; } = null!;

    /// <summary>Which of <see cref="UseClasses.StanceExamples"/> the use is like.</summary>
    public IntVar StanceClass { get; set; } = null!;

    public IntVar StanceTime { get; set; } = null!;

    public IntVar StanceForAttack { get; set; } = null!;

    public IntVar StanceEnd { get; set; } = null!;

    public IntVar FacingEnd { get; set; } = null!;

    public IntVar LeftEnd { get; set; } = null!;

    public IntVar RightEnd { get; set; } = null!;

    public IntVar BoundEnd { get; set; } = null!;

    /// <summary>What becomes of the target for the hero's hands: 0 let go, 1 held by the hero, 2 gripping the hero.</summary>
    public IntVar Fate { get; set; } = null!;

    /// <summary>Posture in which the move leaves the target: position in the enum.</summary>
    public IntVar PostureEnd { get; set; } = null!;

    public IntVar TurnSize { get; set; } = null!;

    public IntVar TurnCap { get; set; } = null!;

    /// <summary>Bearing of the target relative to the facing, 0 to 23, before and after the turn.</summary>
    public IntVar SeenFrom { get; set; } = null!;

    public IntVar Relative { get; set; } = null!;

    public IntVar TargetBearing { get; set; } = null!;

    /// <summary>0 fits, 1 the hand is in the wrong state, 2 the hand is held or a hold on another would be forgotten.</summary>
    public IntVar LeftFault { get; set; } = null!;

    public IntVar RightFault { get; set; } = null!;

    /// <summary>0 fits, 1 the hero is bound.</summary>
    public IntVar BoundFault { get; set; } = null!;

    /// <summary>Raw state of the target before the move.</summary>
    public AttackerVars TargetState { get; set; } = null!;

    /// <summary>Posture of the target when the move starts: position in the enum, or one past the last while recovering or without a target.</summary>
    public IntVar Effective { get; set; } = null!;

    public BoolVar[] EffectiveIs { get; set; } = null!;

    /// <summary>Distance at contact, before the hero steps.</summary>
    public IntVar Distance { get; set; } = null!;

    /// <summary>How far the hero may have followed the target off the mark in this exchange, in centimetres.</summary>
    public IntVar Follows { get; set; } = null!;

    /// <summary>The state in which the move leaves the target.</summary>
    public AttackerVars TargetAfter { get; set; } = null!;

    /// <summary>The attacker of the last row that had one is the target again.</summary>
    public BoolVar Same { get; set; } = null!;

    /// <summary>The target runs off by the agreed exit.</summary>
    public BoolVar RunsOff { get; set; } = null!;

    /// <summary>The technique takes a second attacker along.</summary>
    public BoolVar TakesTwo { get; set; } = null!;

    /// <summary>The reaction sends the target into a second attacker.</summary>
    public BoolVar Bumps { get; set; } = null!;

    /// <summary>One for each attacker: is the second one of this row.</summary>
    public BoolVar[] Seconds { get; set; } = [];

    /// <summary>One for each attacker: goes out as the second one of this row.</summary>
    public BoolVar[] SecondsOut { get; set; } = [];

    /// <summary>Posture in which the move leaves the second one.</summary>
    public IntVar SecondPosture { get; set; } = null!;

    /// <summary>Linger of the second one, in half counts.</summary>
    public IntVar SecondLinger { get; set; } = null!;

    /// <summary>The row may concern a second attacker.</summary>
    public bool HasSeconds(Engine.Cp cp) => !ReferenceEquals(TakesTwo, cp.False) || !ReferenceEquals(Bumps, cp.False);
}
