using Generator.Domain;
using Generator.Library.Reading;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Loading;

/// <summary>Finds what contradicts itself in one technique, and reactions that do not exist or do not suit it.</summary>
internal static class TechniqueChecks
{
    /// <summary>Turn in half hours with which an arm's hold does not go along. Common practice, no source.</summary>
    private const int BigTurn = 2;

    /// <summary>Step towards the target that is longer than an arm gives. Common practice, no source.</summary>
    private static readonly Centimetres BigStep = new(60);

    public static void Check(Records records)
    {
        var reactions = new Dictionary<string, Reaction>(StringComparer.Ordinal);
        foreach (var reaction in records.Reactions.Select(r => r.Record))
        {
            reactions.TryAdd(reaction.Id, reaction);
        }

        foreach (var (technique, source) in records.Techniques)
        {
            CheckTarget(technique, source);
            CheckReactions(technique, source, reactions);
            CheckMarks(technique, source);
            if (technique.Side is null && !SideChecks.IsOwnMirror(technique))
            {
                source.Refuse("id", "It has no side, and yet its left and right differ.", "Maybe add \"side\", or make both sides alike.");
            }
        }
    }

    private static void CheckTarget(Technique technique, ObjectReader source)
    {
        if (technique.Needs.IsEmpty && technique.Answers.IsEmpty && technique.Family != Family.Pause && !source.Has("needs") && !source.Has("answers"))
        {
            source.Refuse("id", "It neither answers an attack nor names a posture that the target may be in, so it can never be used.", "Maybe add \"answers\" or \"needs\".");
        }

        if (technique.Needs.Contains(Posture.Out))
        {
            source.Refuse("needs", "Nothing is done to an attacker who is out.", "Maybe face-down or on-back is meant.");
        }
    }

    private static void CheckReactions(Technique technique, ObjectReader source, Dictionary<string, Reaction> reactions)
    {
        var entries = source.EntriesAgain("reactions");
        if (entries.Count == 0 && !technique.HasNoTarget && source.Token("reactions") is null or JArray)
        {
            source.Missing("reactions", "\"reactions\": [\"head-turns\"]");
        }

        if (technique.Reactions.Count > 0 && technique.Reactions.All(r => reactions.TryGetValue(r, out var known) && known.AnswersBlow))
        {
            source.Refuse("reactions", "All of these answer the blow, so that it could never hit.", "Maybe add how it is sold when it does.");
        }

        if (technique.Needs.Contains(Posture.Knelt))
        {
            source.Refuse("needs", "Somebody who opens on a knee is met by answering their attack.", "Maybe kneeling is meant, in which a reaction leaves somebody.");
        }

        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (value, path) in entries.Where(e => e.Value.Type == JTokenType.String))
        {
            var id = value.ToString().Trim();
            if (!reactions.TryGetValue(id, out var reaction))
            {
                source.Refuse(value, path, $"There is no reaction {FieldText.Quote(id)}.", NearestWords.Maybe(id, reactions.Keys, "Maybe it stands in a file that was not read."));
            }
            else if (!seen.Add(id))
            {
                source.Refuse(value, path, "This reaction is given twice.", "Maybe another one is meant.");
            }
            else if (Unsuited(technique, reaction) is var (message, maybe) && message.Length > 0)
            {
                source.Refuse(value, path, message, maybe);
            }
        }
    }

    private static (string Message, string Maybe) Unsuited(Technique technique, Reaction reaction)
    {
        if ((reaction.Posture == Posture.Out) != (technique.Family == Family.Finish))
        {
            return technique.Family == Family.Finish
                ? ("A finish leaves the attacker out, and this reaction does not.", "Maybe one of those that begin with out- is meant.")
                : ("Only a finish leaves the attacker out.", "Maybe this technique belongs to the finishes, or another reaction is meant.");
        }

        if (reaction.Posture is { } left && !left.IsDown() && !left.IsControlled() && technique.Answers.Members.Any(l => l.IsFromKnee))
        {
            return ("It answers an attack from the knee, and this reaction leaves the attacker on their feet.", "Maybe one that leaves them kneeling, held or lying is meant.");
        }

        if (reaction.Posture is { } posture && posture.IsControlled() && !Holds(technique.LeftNeed, technique.LeftEnd) && !Holds(technique.RightNeed, technique.RightEnd))
        {
            return ("This reaction leaves the attacker held, and no hand of the hero holds at the end.", "Maybe \"endLeft\" or \"endRight\" should be \"holding\".");
        }

        if (reaction.Posture == Posture.Gripping && technique.Family != Family.Setback && !technique.Needs.Contains(Posture.Gripping))
        {
            return ("This reaction keeps a grip, and the technique suits no gripping attacker.", "Maybe add gripping to \"needs\".");
        }

        if (reaction.AnswersBlow && !technique.IsHit)
        {
            return ("This reaction answers a blow, and the technique is none that could hit.", "Maybe another reaction is meant, or the technique belongs to the strikes or kicks.");
        }

        return technique.HasNoTarget ? ("A pause without a target has no reaction.", "Maybe add the postures of the target to \"needs\".") : (string.Empty, string.Empty);
    }

    /// <summary>What takes the hero out of a hold on somebody; null for nothing.</summary>
    private static string? Leaves(Technique technique) => technique switch
    {
        _ when technique.Travel is not null => "goes to another mark",
        _ when technique.Load.Jump != BodyParts.None => "leaves the floor",
        _ when Math.Abs(technique.Turn.HalfHours) >= BigTurn => "turns",
        _ when technique.Band.StepIn >= BigStep => "steps far in",
        _ when technique.HeroFall != FallClass.None => "falls",
        _ => null,
    };

    private static bool Holds(HandNeed need, HandEnd end) => end == HandEnd.Holding || (end == HandEnd.Unchanged && need == HandNeed.Holding);

    private static void CheckMarks(Technique technique, ObjectReader source)
    {
        if (technique.Recovery && technique.Family != Family.Pause)
        {
            source.Refuse("recovery", "Only a pause can be the hero's way up.", "Maybe it belongs to the pauses.");
        }

        var another = technique.LeftNeed is HandNeed.HoldingOther or HandNeed.HeldByOther || technique.RightNeed is HandNeed.HoldingOther or HandNeed.HeldByOther;
        if (technique.Supported && !another && technique.Bounds.HasFlag(BoundSet.Free))
        {
            source.Refuse("supported", "Nobody else holds the hero or is held, so nobody supports it.", "Maybe a hand should be holding-other or held-by-other, or \"bound\" should not be free.");
        }

        if (technique.CarriesHeld && !another)
        {
            source.Refuse("carriesHeld", "No hand holds another attacker.", "Maybe a hand should be holding-other.");
        }

        if (technique.WhileHolding && !technique.CarriesHeld && Leaves(technique) is { } moves)
        {
            source.Refuse("hands", $"It {moves} while a hand may hold somebody, who is not taken along.", "Maybe a hand that is not used should be \"guard-or-out\", or \"not-holding\" where it may be held, or \"carriesHeld\" is missing.");
        }

        if (technique.Carry == Carry.WithAttack && technique.Answers.IsEmpty && !source.Has("answers"))
        {
            source.Refuse("carry", "It goes on with the attack, and it answers none.", "Maybe none, clockwise or counter-clockwise is meant.");
        }
    }
}
