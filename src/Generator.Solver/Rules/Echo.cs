using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>
/// Charges at the end where no attack of a setback comes again and is beaten (2); of a signature, for each time beyond three (1) and, at the end, for each that it lacks of two (2) and for always ending the same (1).
/// </summary>
public sealed class Echo : RuleModule
{
    private const int Missing = 2;
    private const int Fewest = 2;
    private const int Most = 3;

    public override string Id => "echo";

    public override void Post(MoveModel model)
    {
        if (!model.Scene.Judges(FightRule.Echo))
        {
            return;
        }

        var was = model.Options.Memory?.MemoryOf(Id) as EchoMemory ?? EchoMemory.None;
        if (model.Options.Ends)
        {
            Beaten(model, was);
        }

        if (model.Scene.Brief.Signature is { } signature)
        {
            Signature(model, was, signature);
        }
    }

    private void Beaten(MoveModel model, EchoMemory was)
    {
        var cp = model.Cp;
        var book = model.Scene.Book;
        var suffering = model.Vocabulary.Uses.Where(u => u.Technique is { Family: Family.Setback }).SelectMany(u => u.Attacks).Select(k => book.Attacks[k].BaseId);
        var (hits, beats) = (new List<ILiteral> { was.Hit.Count > 0 ? cp.True : cp.False }, new List<ILiteral> { was.IsBeaten ? cp.True : cp.False });
        foreach (var id in suffering.Concat(was.Hit).Distinct(StringComparer.Ordinal))
        {
            var known = was.Hit.Contains(id, StringComparer.Ordinal) ? cp.True : cp.False;
            foreach (var slot in model.Slots)
            {
                var comes = model.AttackIs(slot, k => string.Equals(k.BaseId, id, StringComparison.Ordinal), $"echo[{slot.Index},{id}]");
                var setback = model.UseIs(slot, u => u.Technique is { Family: Family.Setback }, $"setback[{slot.Index}]");
                var hit = cp.And($"echohit[{slot.Index},{id}]", comes, setback);
                beats.Add(cp.And($"echobeaten[{slot.Index},{id}]", comes, setback.Not(), known));
                hits.Add(hit);
                known = cp.Or($"echoknown[{slot.Index},{id}]", known, hit);
            }
        }

        model.Charge(Id, cp.And("noecho", cp.Or("echohits", [.. hits]), cp.Or("echobeats", [.. beats]).Not()) * Missing);
    }

    private void Signature(MoveModel model, EchoMemory was, string signature)
    {
        var cp = model.Cp;
        var (book, so) = (model.Scene.Book, new List<LinearExpr> { LinearExpr.Constant(was.Returns) });
        var range = Math.Max(book.Techniques.Count, book.Reactions.Count);
        var last = cp.Const(was.Returns > 0 ? was.Outcome : -1);
        var otherwise = new List<ILiteral> { was.IsOtherwise ? cp.True : cp.False };
        foreach (var slot in model.Slots)
        {
            var i = slot.Index;
            var technique = model.UseIs(slot, u => u.Technique?.GoesBy(signature) == true, $"signs[{i}]");
            var attack = model.AttackIs(slot, k => k.GoesBy(signature), $"signsby[{i}]");
            var comes = cp.Or($"signature[{i}]", technique, attack);
            var (reaction, met) = (cp.Pick([.. slot.Reactions, slot.NoReaction], r => r < model.Vocabulary.Reactions.Count ? model.Vocabulary.Reactions[r] : -1, $"signreaction[{i}]"), cp.Pick(slot.Uses, u => model.Vocabulary.Uses[u].Index, $"signtechnique[{i}]"));
            var (outcome, next, change) = (cp.Int(-1, range, $"signoutcome[{i}]"), cp.Int(-1, range, $"signlast[{i}]"), cp.Int(-range - 1, range + 1, $"signchange[{i}]"));
            cp.Model.Add(outcome == reaction).OnlyEnforceIf(technique);
            cp.Model.Add(outcome == met).OnlyEnforceIf(technique.Not());
            cp.Model.Add(next == outcome).OnlyEnforceIf(comes);
            cp.Model.Add(next == last).OnlyEnforceIf(comes.Not());
            cp.Model.Add(change == (LinearExpr)outcome - last);
            otherwise.Add(cp.And($"signotherwise[{i}]", comes, cp.AtMost(LinearExpr.Constant(1), LinearExpr.Sum(so), $"signed[{i}]"), cp.Is(change, 0, $"signsame[{i}]").Not()));
            so.Add(comes);
            model.Charge(Id, cp.And($"signagain[{i}]", comes, cp.AtMost(LinearExpr.Constant(Most + 1), LinearExpr.Sum(so), $"signmany[{i}]")));
            last = next;
        }

        if (model.Options.Ends)
        {
            model.Charge(Id, cp.Positive(Fewest - LinearExpr.Sum(so), Fewest, "signlacks") * Missing);
            model.Charge(Id, cp.And("signalike", cp.AtMost(LinearExpr.Constant(Fewest), LinearExpr.Sum(so), "signreturns"), cp.Or("signother", [.. otherwise]).Not()));
        }
    }
}
