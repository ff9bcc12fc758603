using Generator.Domain;
using Generator.Library.Loading;
using Generator.Library.Reading;

namespace Generator.Library.Tests.Props;

/// <summary>Stage practice with props holds of every record that comes with the program, told here from the records alone, and records of one's own that break it are refused.</summary>
public sealed class PropRecordTests
{
    private static readonly Book Book = LibraryLoader.LoadBundled().Value!;

    [Fact]
    public void There_are_ten_kinds_and_thirty_records_at_least()
    {
        Assert.True(Book.Props.Kinds.Count >= 10);
        var techniques = Book.Techniques.Where(t => t.Prop is not null || t.IsAgainstPropsAlone).Select(t => t.BaseId).Distinct().Count();
        var attacks = Book.Attacks.Where(a => a.Prop is not null).Select(a => a.BaseId).Distinct().Count();
        Assert.True(techniques >= 20 && attacks >= 8, $"{techniques} techniques, {attacks} attacks");
    }

    /// <summary>For the tallest arm of the table, 0.39 of 2.10 m, and for the shortest, what must pass short leaves at least 15 cm before a chest 12 cm deep from its middle.</summary>
    [Theory]
    [InlineData(140)]
    [InlineData(210)]
    public void Cuts_and_high_swings_pass_short_of_the_body(int stature)
    {
        var arm = 0.39m * stature;
        var attacks = Book.Attacks.Where(a => a.Line.Kind is LineKind.PropSlash or LineKind.PropRoundHigh or LineKind.PropOver).ToList();
        Assert.NotEmpty(attacks);
        Assert.All(attacks, a => Assert.True(a.NonContact && a.Contact.Limb == Limb.Arm && (a.Contact.From * arm) - arm >= 12, a.Id));
        var high = Book.Techniques.Where(t => t is { Prop.Holder: PropHolder.Hero, Height: Height.High } && t.Family is Family.Strike or Family.Finish && t.Prop is not null).ToList();
        Assert.All(high, t => Assert.True(t is { Kind: ContactKind.NonContact, Band.StepIn.Value: 0 } && (t.Band.From * arm) - arm >= 12, t.Id));
    }

    [Fact]
    public void Nothing_is_thrust_or_thrown_at_a_face_and_no_break_away_breaks_on_one()
    {
        PropUse[] never = [PropUse.Thrust, PropUse.Throw, PropUse.Press, PropUse.Break];
        Assert.All(Book.Attacks.Where(a => a.Prop is { } p && never.Contains(p.Use)), a => Assert.True(a.Line.Kind is LineKind.PropStraight or LineKind.PropRound, a.Id));
        Assert.All(Book.Techniques.Where(t => t.Prop is { Holder: PropHolder.Hero } p && never.Contains(p.Use)), t => Assert.NotEqual(Height.High, t.Height));
    }

    /// <summary>No bare limb is put in the way of a prop but at the wrist or the shoulder of whoever holds it, and nobody takes one on the head.</summary>
    [Fact]
    public void Only_what_is_made_for_it_answers_a_prop()
    {
        var answering = Book.Techniques.Where(t => t.Answers.Members.Any(l => l.IsArmed)).ToList();
        Assert.All(answering, t => Assert.StartsWith("prop-", t.BaseId, StringComparison.Ordinal));
        Assert.All(answering.Where(t => t.Family == Family.Setback), t => Assert.DoesNotContain(t.Answers.Members, l => l.Kind is LineKind.PropOver or LineKind.PropRoundHigh or LineKind.PropSlash));
        Assert.All(Book.Attacks.Where(a => a.Prop is not null), a => Assert.Contains(answering, t => t.Answers.Contains(a.Line)));
    }

    [Fact]
    public void Every_kind_says_who_checks_it_and_serves_some_record()
    {
        var needs = Book.Techniques.Select(t => t.Prop).Concat(Book.Attacks.Select(a => a.Prop)).OfType<PropNeed>().ToList();
        Assert.All(Book.Props.Kinds, k =>
        {
            Assert.NotEmpty(k.CheckedBy);
            Assert.NotEmpty(k.Check);
            Assert.Contains(needs, n => n.Use != PropUse.Carry && k.Uses.Contains(n.Use) && (n.Hand == PropHand.Both) == (k.Hands == 2));
        });
    }

    [Theory]
    [InlineData("\"use\": \"thrust\"", "\"line\": \"prop-over-left\"", "at a face")]
    [InlineData("\"use\": \"slash\"", "\"line\": \"prop-slash-left\"", "short of the body")]
    [InlineData("\"use\": \"swing\"", "\"line\": \"prop-round-high-left\"", "planned miss")]
    [InlineData("\"use\": \"slash\"", "\"line\": \"prop-round-left\"", "A cut comes on prop-slash")]
    [InlineData("\"use\": \"swing\"", "\"line\": \"high-round-left\"", "line of its own")]
    [InlineData("\"use\": \"break\"", "\"line\": \"prop-over-left\"", "never on a head")]
    public void An_attack_that_breaks_stage_practice_is_refused(string use, string line, string message)
    {
        var text = "{ \"attacks\": [ { \"id\": \"mine\", \"name\": \"Mine\", \"side\": \"right\", \"limb\": \"stick\", " + line + ", \"stances\": [\"square\"], \"startDistance\": 150, \"band\": { \"limb\": \"arm\", \"from\": 1.1, \"to\": 1.5 }, \"counts\": 1, \"fewestSeconds\": 0.5, \"arrives\": \"step\", \"load\": {}, \"miss\": { \"posture\": \"turned\", \"openSeconds\": 0.6 }, \"prop\": { " + use + ", \"with\": \"attacker\", \"hand\": \"right\" }, \"safety\": \"None.\" } ] }";
        Assert.Contains(message, With(text), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"use\": \"swing\", \"with\": \"hero\", \"then\": \"takes\"", "prop.into", "\"into\": \"right\"")]
    [InlineData("\"use\": \"swing\", \"with\": \"hero\", \"into\": \"right\"", "comes into a hand", "\"then\": \"takes\"")]
    [InlineData("\"use\": \"carry\", \"with\": \"floor\"", "is in no hand", "\"then\": \"takes\" is missing")]
    [InlineData("\"use\": \"juggle\", \"with\": \"hero\"", "prop.use", "Maybe")]
    [InlineData("\"use\": \"hook\", \"with\": \"hero\", \"hand\": \"middle\"", "prop.hand", "Maybe")]
    [InlineData("\"use\": \"wrap\", \"with\": \"hero\", \"hand\": \"both\"", "No kind of prop that is held so", "missing from props.json")]
    [InlineData("\"with\": \"hero\"", "prop.use", "Maybe")]
    public void What_is_wrong_of_a_need_is_told(string prop, string where, string maybe)
    {
        var text = "{ \"techniques\": [ { \"id\": \"mine\", \"name\": \"Mine\", \"family\": \"defence\", \"side\": \"right\", \"stances\": [\"square\"], \"band\": { \"limb\": \"arm\", \"from\": 1.1, \"to\": 1.5 }, \"counts\": 1, \"fewestSeconds\": 0.5, \"answers\": [\"prop-round-left\"], \"reactions\": [\"falls-short\"], \"weight\": 1, \"kind\": \"contact\", \"load\": {}, \"prop\": { " + prop + " }, \"safety\": \"None.\" } ] }";
        Assert.Contains(where, With(text), StringComparison.Ordinal);
        Assert.Contains(maybe, With(text), StringComparison.Ordinal);
    }

    [Fact]
    public void Only_a_break_away_may_break()
    {
        var files = LibraryLoader.Files.Select(f => new SourceFile(f, File.ReadAllText(Path.Combine(LibraryLoader.BundledFolder, f)))).ToList();
        var props = files.FindIndex(f => f.Name == "props.json");
        files[props] = new SourceFile("props.json", files[props].Text.Replace("\"breakaway\": true,", string.Empty, StringComparison.Ordinal));
        Assert.Contains("Only a break-away is broken on somebody", LibraryLoader.Load(files).ToText(), StringComparison.Ordinal);
    }

    private static string With(string text)
    {
        var files = LibraryLoader.Files.Select(f => new SourceFile(f, File.ReadAllText(Path.Combine(LibraryLoader.BundledFolder, f)))).Append(new SourceFile("mine.json", text)).ToList();
        return LibraryLoader.Load(files).ToText();
    }
}
