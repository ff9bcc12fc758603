using System.Globalization;
using System.Text.RegularExpressions;
using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Files.Notes;

/// <summary>What a line about a performer says: "the hero, left lead, 1.70 m", "2:30, 3 m, 1.86 m tall, fast, late".</summary>
internal sealed partial record CastWords
{
    /// <summary>Speeds that "slow" and "fast" stand for, in centimetres a second: a walk and a rush.</summary>
    private const int Slow = 140, Fast = 300;

    /// <summary>Somebody who comes late is not in play before this count; the engine may put it off further.</summary>
    private const int LateCount = 9;

    private const string Advice = "Maybe write a clock position (2:30), a distance (3 m), a height (1.86 m tall), fast or slow, late, novice, trained or stunt, or what they carry (with a stick in the left hand)";

    private readonly List<NotesFault> faults = [];

    public bool IsHero { get; private set; }

    /// <summary>A second hero, on a mark of their own.</summary>
    public bool IsAlly { get; private set; }

    public Side? Lead { get; private set; }

    /// <summary>The knee on which they open.</summary>
    public Side? Kneels { get; private set; }

    public Centimetres? Height { get; private set; }

    public Bearing? Bearing { get; private set; }

    public Centimetres? Distance { get; private set; }

    public int? Speed { get; private set; }

    public bool IsLate { get; private set; }

    public Skill? Skill { get; private set; }

    /// <summary>What they hold in their hands when the fight begins.</summary>
    public List<PropNotes> Carries { get; } = [];

    /// <summary>Moment of entrance of who comes late.</summary>
    public HalfCounts? Entrance => IsLate ? new HalfCounts((LateCount - 1) * HalfCounts.PerCount) : null;

    public IReadOnlyList<NotesFault> Faults => faults;

    /// <summary>Something in the line says who somebody is or where they stand.</summary>
    public static bool IsAbout(NotesPart line, PropTable props) => line.Listed().Any(p => new CastWords().Take(p, afterBearing: false) || PropNotes.SaysCarried(p, props));

    /// <summary>Reads a whole line and notes everything in it that says something else, or something twice.</summary>
    public static CastWords Of(NotesPart line, PropTable props)
    {
        var said = new CastWords();
        if (FigureComma().Match(line.Text) is { Success: true } comma)
        {
            said.faults.Add(new NotesFault(line.Column + comma.Index, $"{FieldText.Quote(comma.Value)} may be one figure or two.", "Maybe write a point in a figure, such as 1.70 m, and a space behind a comma."));
            return said;
        }

        var afterBearing = false;
        foreach (var part in line.Listed())
        {
            var had = said.Bearing;
            if (PropNotes.IsCarried(part.Text))
            {
                said.Carries.AddRange(PropNotes.OfCarried(part, props, said.faults) is { } prop ? [prop] : []);
            }
            else if (!said.Take(part, afterBearing))
            {
                said.faults.Add(new NotesFault(part.Column, part.IsEmpty ? "Nothing stands between two commas." : $"{FieldText.Quote(part.Text)} does not say who somebody is or where they stand.", AdviceFor(part.Text)));
            }

            afterBearing = had is null && said.Bearing is not null;
        }

        said.CheckPart(line);
        return said;
    }

    /// <summary>What was understood, in words.</summary>
    public IEnumerable<string> Reading()
    {
        IEnumerable<string?> all =
        [
            IsHero ? "the hero" : IsAlly ? "the ally" : "an attacker",
            Lead is { } lead ? EnumWords.Of(lead) + " lead" : null,
            Kneels is { } knee ? $"opens on the {EnumWords.Of(knee)} knee" : null,
            Bearing is { } bearing ? (IsAlly ? "on a mark at " : "opens at ") + bearing.ToClockText() : null,
            Distance is { } distance ? distance + (IsAlly ? " from the hero's" : " from the mark") : null,
            Height is { } height ? height + " tall" : null,
            Speed is { } speed ? $"moves at {new Centimetres(speed)} a second" : null,
            Entrance is { } entrance ? "not in play before count " + entrance.ToCountText() : null,
            Skill is { } skill ? EnumWords.Of(skill) : null,
            .. Carries.Select(c => "carries " + c.Reading()),
        ];
        return all.OfType<string>();
    }

    private static string AdviceFor(string text) => text.ToLowerInvariant() switch
    {
        "tall" or "big" or "short" or "small" => "Maybe write the height, such as 1.90 m tall.",
        "quick" or "quickly" => "Maybe fast is meant.",
        "beginner" or "new" => "Maybe novice is meant.",
        "left" or "right" or "left-handed" or "right-handed" or "lefty" or "southpaw" => "Maybe left lead or right lead is meant, of the hero.",
        "" => "Maybe one of them can go.",
        [>= '0' and <= '9', ..] and not [.., '"' or '\''] when !text.Contains('\'', StringComparison.Ordinal) => "Maybe write a clock position from 1 to 12 (2:30), a distance (3 m) or a height (1.86 m tall).",
        [>= '0' and <= '9', ..] => "Maybe write the height in metres, such as 1.86 m tall.",
        _ => Advice + "; what somebody does stands on a line of its own.",
    };

    /// <summary>Takes one part in; false when it says none of this. A length like 1.86 m, which is hardly a distance, is a height unless a clock position stands before it.</summary>
    private bool Take(NotesPart part, bool afterBearing)
    {
        var word = Spaces().Replace(part.Text.ToLowerInvariant(), " ");
        var place = word.StartsWith("from ", StringComparison.Ordinal) ? word[5..] : word.StartsWith("at ", StringComparison.Ordinal) ? word[3..].Replace(" o'clock", string.Empty, StringComparison.Ordinal) : word.Replace(" o'clock", string.Empty, StringComparison.Ordinal);
        switch (word)
        {
            case "the hero" or "hero":
                IsHero = Once(part, !IsHero);
                return true;
            case "the ally" or "ally" or "an ally":
                IsAlly = Once(part, !IsAlly);
                return true;
            case "back to back" when IsAlly:
                Distance ??= Ally.UsualDistance;
                return true;
            case "left lead" or "right lead":
                Once(part, Lead is null);
                Lead = word[0] == 'l' ? Side.Left : Side.Right;
                return true;
            case "kneeling" or "on the left knee" or "on the right knee":
                Once(part, Kneels is null);
                Kneels = word.Contains("right", StringComparison.Ordinal) ? Side.Right : Side.Left;
                return true;
            case "fast" or "slow":
                Once(part, Speed is null);
                Speed = word[0] == 'f' ? Fast : Slow;
                return true;
            case "late":
                IsLate = Once(part, !IsLate);
                return true;
        }

        if (EnumWords.TryParse<Skill>(word, out var skill))
        {
            Once(part, Skill is null);
            Skill = skill;
            return true;
        }

        if (Length().Match(word) is { Success: true } length && Metres(length) is { } metres)
        {
            var isHeight = length.Groups["what"].Value switch { "tall" or "high" => true, "away" or "off" => false, _ => IsHero || length.Groups["unit"].Value == "cm" || (!afterBearing && length.Groups["part"].Length == 2 && Measures.Stature.Allows(metres.Metres)) };
            Once(part, isHeight ? Height is null : Distance is null);
            Height = isHeight ? metres : Height;
            Distance = isHeight ? Distance : metres;
            CheckRange(part, isHeight ? Measures.Stature : IsAlly ? Measures.AllyDistance : Measures.Opening, metres);
            return true;
        }

        if (FeetOf(word) is { } feet)
        {
            Once(part, Height is null);
            Height = feet;
            CheckRange(part, Measures.Stature, feet);
            return true;
        }

        if (FromWords.TryParse(place, out var bearing))
        {
            Once(part, Bearing is null);
            Bearing = bearing;
            return true;
        }

        return false;
    }

    private bool Once(NotesPart part, bool isFirst)
    {
        if (!isFirst)
        {
            faults.Add(new NotesFault(part.Column, $"{FieldText.Quote(part.Text)} says a second time what was said before it.", "Maybe one of the two can go."));
        }

        return true;
    }

    private void CheckRange(NotesPart part, Quantity quantity, Centimetres metres)
    {
        if (!quantity.Allows(metres.Metres))
        {
            faults.Add(new NotesFault(part.Column, $"{FieldText.Quote(part.Text)} is not {quantity.Range}.", quantity.Advice));
        }
    }

    /// <summary>Heroes stand on the mark; only heroes have a lead that can be said.</summary>
    private void CheckPart(NotesPart line)
    {
        if (IsAlly)
        {
            if (IsHero || Speed is not null || IsLate || Carries.Count > 0)
            {
                faults.Add(new NotesFault(line.Column, "The ally is on a mark of their own from the start; no speed, entrance or prop can be said.", "Maybe say only where the mark lies, the lead, the height and the skill, such as: the ally, at 6, 1.5 m, left lead, 1.70 m tall"));
            }
        }
        else if (IsHero && (Bearing is not null || Distance is not null || Speed is not null || IsLate))
        {
            faults.Add(new NotesFault(line.Column, "The hero is on the mark from the start; no place, speed or entrance can be said.", "Maybe say only the lead, the height and the skill, such as: the hero, left lead, 1.70 m tall"));
        }
        else if (!IsHero && Kneels is not null && (IsLate || Distance > AttackerPart.FarthestKneeling))
        {
            faults.Add(new NotesFault(line.Column, $"Whoever opens on a knee is there from the start, {AttackerPart.FarthestKneeling} from the mark at the most.", "Maybe leave out the place and late, such as: kneeling, trained"));
        }
        else if (!IsHero && Lead is not null)
        {
            faults.Add(new NotesFault(line.Column, "Only the hero has a lead that can be said.", "Maybe add \"the hero\" to this line, or leave the lead out."));
        }
    }

    /// <summary>A length in words: "1.5 m", "80 cm away"; null for anything else.</summary>
    public static Centimetres? LengthOf(string text) => Length().Match(Spaces().Replace(text.ToLowerInvariant(), " ")) is { Success: true } length ? Metres(length) : null;

    private static Centimetres? Metres(Match length) =>
        decimal.TryParse(length.Groups["metres"].Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var metres) && metres < 1000
            ? Centimetres.FromMetres(length.Groups["unit"].Value == "cm" ? metres / 100 : metres) : null;

    [GeneratedRegex(@"^(?<metres>[0-9]+(\.(?<part>[0-9]+))?) ?(?<unit>c?m|metres?|meters?)( (?<what>tall|high|away|off))?$")]
    private static partial Regex Length();

    /// <summary>A stature in feet and inches: 5'11.</summary>
    private static Centimetres? FeetOf(string text) => Feet().Match(text) is { Success: true } said
        ? new((int)Math.Round((int.Parse(said.Groups["feet"].Value, CultureInfo.InvariantCulture) * 30.48) + (said.Groups["inches"] is { Length: > 0 } inches ? int.Parse(inches.Value, CultureInfo.InvariantCulture) * 2.54 : 0))) : null;

    [GeneratedRegex("""^(?<feet>[4-7])(['’′] ?| ?(ft|foot|feet) ?)((?<inches>[0-9]|1[01])(["”″]|''| ?in)?)?( tall)?$""", RegexOptions.ExplicitCapture)]
    private static partial Regex Feet();

    [GeneratedRegex("[0-9],[0-9][0-9. ]*m?")]
    private static partial Regex FigureComma();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
