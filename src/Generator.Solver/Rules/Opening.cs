using Generator.Domain;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>
/// A follow-up finds the posture it needs while it is open, and the reaction is one that the technique lists and the posture allows. A row of a
/// model always has a reaction where its technique has a target and none where it has not (<c>ChoicePart</c>), so that one left out, which the
/// audit finds in routines written by hand, cannot be said here.
/// </summary>
public sealed class Opening : RuleModule
{
    public override string Id => "opening";

    public override void Post(MoveModel model)
    {
        var at = model.Vocabulary.Reactions.Select((r, n) => (model.Scene.Book.Reactions[r].Id, n)).ToDictionary(p => p.Id, p => p.n, StringComparer.Ordinal);
        foreach (var slot in model.Slots)
        {
            var grip = model.OfTarget(slot, a => a.Grip, 0, $"openinggrip[{slot.Index}]");
            for (var u = 0; u < slot.Uses.Length; u++)
            {
                var use = model.Vocabulary.Uses[u];
                if (!use.HasTarget || ReferenceEquals(slot.Uses[u], model.Cp.False))
                {
                    continue;
                }

                var suits = use.Technique!.Reactions.Where(at.ContainsKey).Select(id => (ILiteral)slot.Reactions[at[id]]);
                model.Cp.Model.AddBoolOr([slot.Uses[u].Not(), .. suits]);
                if (use.Kind == UseKind.FollowUp)
                {
                    Finds(model, slot, slot.Uses[u], use.Technique, grip);
                }
            }

            Follows(model, slot);
            model.Cp.Model.AddBoolOr([slot.TakesTwo.Not(), .. slot.Seconds]);
            model.Cp.Model.AddBoolOr([slot.Bumps.Not(), .. slot.Seconds]);
        }
    }

    private static void Finds(MoveModel model, SlotVars slot, BoolVar chosen, Technique technique, IntVar grip)
    {
        var cp = model.Cp;
        var postures = technique.Needs.Members.Select(p => (ILiteral)slot.EffectiveIs[(int)p]).ToList();
        if (!technique.OpensGrips || technique.Needs.Contains(Posture.Gripping))
        {
            cp.Model.AddBoolOr([chosen.Not(), .. postures]);
            return;
        }

        // An escape opens the grips whose line it answers.
        cp.Model.AddBoolOr([chosen.Not(), slot.EffectiveIs[(int)Posture.Gripping], .. postures]);
        var lines = Google.OrTools.Util.Domain.FromValues([.. technique.Answers.Members.Select(l => (long)l.Index)]);
        cp.Model.AddLinearExpressionInDomain(grip, lines).OnlyEnforceIf([chosen, slot.EffectiveIs[(int)Posture.Gripping]]);
    }

    private static void Follows(MoveModel model, SlotVars slot)
    {
        var cp = model.Cp;
        var followsUp = model.UseIs(slot, u => u.Kind == UseKind.FollowUp, $"followsup[{slot.Index}]");
        var seizes = model.UseIs(slot, u => u.Kind == UseKind.Answer && u.Technique is { Seizes: true }, $"seizes[{slot.Index}]");
        for (var r = 0; r < slot.Reactions.Length; r++)
        {
            var reaction = model.Scene.Book.Reactions[model.Vocabulary.Reactions[r]];
            var chosen = slot.Reactions[r];
            ILiteral[] Is(Func<Posture, bool> fits) => [.. Enum.GetValues<Posture>().Where(fits).Select(p => (ILiteral)slot.EffectiveIs[(int)p])];
            if (reaction.NeedsFeet)
            {
                ILiteral[] knees = Is(p => p.IsKneeling());
                Array.ForEach(knees, knee => cp.Model.AddBoolOr([chosen.Not(), followsUp.Not(), knee.Not()]));
            }

            switch (reaction.Posture)
            {
                case Posture.Kneeling when reaction.NeedsKnee:
                    cp.Model.AddBoolOr([chosen.Not(), slot.HasAttack, .. Is(p => p.IsKneeling())]);
                    break;
                case Posture.Ready when reaction.AnswersBlow:
                    cp.Model.AddBoolOr([chosen.Not(), slot.HasAttack, slot.EffectiveIs[(int)Posture.Ready], slot.EffectiveIs[(int)Posture.OffBalance]]);
                    break;
                case null:
                    cp.Model.AddImplication(chosen, followsUp);
                    cp.Model.AddBoolOr([chosen.Not(), .. Is(p => p.IsControlled())]);
                    break;
                case Posture.Gripping:
                    var still = cp.And($"still[{slot.Index},{r}]", followsUp, slot.EffectiveIs[(int)Posture.Gripping]);
                    cp.Model.AddBoolOr([chosen.Not(), still, seizes]);
                    break;
                case Posture.OnBack when reaction.Back.Value == 0 && reaction.Fall == FallClass.None:
                    cp.Model.AddImplication(chosen, slot.EffectiveIs[(int)Posture.OnBack]);
                    break;
                case Posture.FaceDown or Posture.Pinned when reaction.Fall == FallClass.None:
                    cp.Model.AddBoolOr([chosen.Not(), .. Is(p => p.IsDown())]);
                    break;
            }
        }
    }
}
