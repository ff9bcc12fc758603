using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Loading;

/// <summary>Reads one reaction.</summary>
internal static class ReactionReader
{
    private static readonly Quantity Seconds = new("a time", 0m, 60m, "s");

    private static readonly Quantity Distance = new("a distance", -100m, 1000m, "cm", "Maybe it is in metres; write centimetres.");

    private static readonly Quantity Round = new("a way round", 0m, 12m, "half hours");

    public static Reaction Read(ObjectReader source)
    {
        if (!source.Has("posture"))
        {
            source.Missing("posture", "\"posture\": \"off-balance\"");
        }

        var reaction = new Reaction
        {
            Id = source.BaseId(),
            Name = source.SidedName(side: null),
            Aliases = source.Texts("aliases"),
            Posture = source.WordOrSame<Posture>("posture"),
            OpenSeconds = source.Number("openSeconds", Seconds),
            ReadySeconds = source.Number("readySeconds", Seconds),
            NoviceReadySeconds = source.Number("noviceReadySeconds", Seconds),
            Back = new(source.Whole("back", Distance) ?? 0),
            Round = source.Whole("round", Round) ?? 0,
            Fall = source.Word<FallClass>("fall") ?? FallClass.None,
            Lies = source.Word<Lying>("lies"),
            Skill = source.Word<Skill>("skill") ?? Skill.Novice,
            Surface = source.Word<SurfaceNeed>("surface") ?? SurfaceNeed.Any,
            Load = LoadReader.Required(source),
            HitsSecond = source.Flag("hitsSecond"),
            AnswersBlow = source.Flag("answersBlow"),
            Uses = ThingReader.Of(source, ThingPlace.BehindAttacker),
            Prop = PropReader.Of(source, PropHolder.Attacker),
            Risk = source.FreeText("risk"),
            Sell = source.RequiredText("sell", "\"sell\": \"How the performer shows it.\""),
        };
        CheckTimes(source, reaction);
        CheckLies(source, reaction);
        CheckPosture(source, reaction);
        CheckAnswer(source, reaction);
        if (reaction is { Uses: not null } and ({ HitsSecond: true } or { RunsOff: true }))
        {
            source.Refuse("uses", "Who is sent into somebody or runs off is at no thing.", "Maybe leave \"uses\" out.");
        }

        source.Finish();
        return reaction;
    }

    private static void CheckLies(ObjectReader source, Reaction reaction)
    {
        if (reaction.EndsLying && !source.Has("lies"))
        {
            source.Missing("lies", "\"lies\": \"feet-near\" or \"lies\": \"across\"");
        }
        else if (!reaction.EndsLying && source.Has("lies"))
        {
            source.Refuse("lies", "Only who falls and stays on the floor lies anew.", "Maybe leave it out, or write another fall or posture.");
        }
    }

    private static void CheckPosture(ObjectReader source, Reaction reaction)
    {
        if (reaction.Posture == Posture.Knelt)
        {
            source.Refuse("posture", "Only who opens on a knee is ready there.", "Maybe kneeling is meant.");
        }
    }

    private static void CheckAnswer(ObjectReader source, Reaction reaction)
    {
        if (reaction is { AnswersBlow: true } and not { Posture: Posture.Ready, Fall: FallClass.None, HitsSecond: false })
        {
            source.Refuse("answersBlow", "Who answers a blow stands ready after it, and neither falls nor is sent into anybody.", "Maybe \"posture\" should be \"ready\", or this is a hit.");
        }
    }

    private static void CheckTimes(ObjectReader source, Reaction reaction)
    {
        var lasts = reaction.Posture is null or Posture.Gripping or Posture.Out || reaction.Posture.Value.IsControlled();
        foreach (var field in (ReadOnlySpan<string>)["openSeconds", "readySeconds"])
        {
            if (lasts && source.Has(field))
            {
                source.Refuse(field, "Who is held, gripping or out has no such time.", "Maybe leave it out, or write another posture.");
            }
            else if (!lasts && !source.Has(field))
            {
                source.Missing(field);
            }
        }

        if (reaction.OpenSeconds > reaction.ReadySeconds)
        {
            source.Refuse("openSeconds", "The attacker would be ready again before the opening is over.", "Maybe the two times are swapped.");
        }

        if (reaction.NoviceReadySeconds < reaction.ReadySeconds || (reaction.ReadySeconds is null && reaction.NoviceReadySeconds is not null && !lasts))
        {
            source.Refuse("noviceReadySeconds", "A novice is never ready sooner than a trained performer.", "Maybe the two times are swapped.");
        }
        else if (lasts && reaction.NoviceReadySeconds is not null)
        {
            source.Refuse("noviceReadySeconds", "Who is held, gripping or out has no such time.", "Maybe leave it out, or write another posture.");
        }
    }
}
