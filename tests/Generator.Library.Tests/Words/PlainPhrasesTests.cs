using Generator.Library;
using Generator.Library.Reading;
using Generator.Library.Tests.Bundled;
using Generator.Library.Words;

namespace Generator.Library.Tests.Words;

/// <summary>Plain phrases of the trade that stand in no record: what they mean comes first, and nothing is kept beside it that they do not say.</summary>
public class PlainPhrasesTests
{
    private static readonly (string Text, string[] Means)[] Techniques =
    [
        ("knee to the belly", ["knee"]),
        ("knees him in the stomach", ["knee"]),
        ("drives a knee up into the ribs", ["knee", "rising-knee"]),
        ("knees him in the face", ["knee-to-head"]),
        ("pulls his head down onto the knee", ["knee-to-head"]),
        ("hooks him to the jaw", ["hook"]),
        ("a big hook", ["hook"]),
        ("hook to the liver", ["body-hook"]),
        ("short jab to the nose", ["jab"]),
        ("quick jab", ["jab"]),
        ("straight right to the jaw", ["cross"]),
        ("uppercut under the chin", ["uppercut"]),
        ("punches him in the gut", ["body-punch"]),
        ("heel of the hand to the chin", ["palm-heel"]),
        ("open hand slap across the face", ["slap"]),
        ("backhands him across the cheek", ["back-fist"]),
        ("spins round with a back fist", ["spinning-back-fist"]),
        ("headbutt to the nose", ["head-butt"]),
        ("shoves him off with both palms", ["double-palm", "face-push", "forearm-shove"]),
        ("elbow across the jaw", ["elbow-across"]),
        ("elbow straight down on the back", ["elbow-down"]),
        ("elbow up under the chin", ["elbow-up"]),
        ("elbows backwards into the ribs", ["elbow-back"]),
        ("hammers down with the fist", ["hammer-fist", "low-hammer"]),
        ("front kick to the chest", ["front-kick"]),
        ("kicks him away with the sole", ["push-kick"]),
        ("kick to the thigh", ["low-round-kick"]),
        ("round kick to the ribs", ["mid-round-kick"]),
        ("roundhouse to the head", ["high-round-kick"]),
        ("side kick to the belly", ["side-kick"]),
        ("turns and kicks backwards", ["back-kick", "spinning-back-kick"]),
        ("spinning hook kick to the head", ["spinning-hook-kick"]),
        ("kicks the shin", ["shin-kick"]),
        ("stamps on the foot", ["foot-stomp"]),
        ("ducks", ["duck"]),
        ("ducks under the swing", ["duck", "duck-under", "bow-under"]),
        ("slips outside the punch", ["slip"]),
        ("steps to the side", ["side-step"]),
        ("takes a step back", ["step-back"]),
        ("leans back out of it", ["sway-back"]),
        ("sways back", ["sway-back"]),
        ("blocks with both forearms", ["double-forearm-block"]),
        ("raises an arm over the head to block", ["rising-block"]),
        ("covers up", ["cover-up"]),
        ("lifts the shin against the kick", ["shin-check"]),
        ("catches the leg", ["leg-catch"]),
        ("catches the wrist", ["wrist-catch"]),
        ("sprawls", ["sprawl"]),
        ("throws over the hip", ["hip-throw"]),
        ("throws him over the shoulder", ["shoulder-throw"]),
        ("sweeps the legs", ["foot-sweep", "leg-sweep-out", "low-spin-sweep"]),
        ("sweeps the front foot", ["foot-sweep"]),
        ("reaps the leg from outside", ["outside-reap"]),
        ("trips him", ["trip", "ankle-trip"]),
        ("picks up the leg and dumps", ["leg-pick", "leg-dump-finish", "leg-turn-down"]),
        ("arm behind the back", ["behind-back-lock"]),
        ("locks the wrist", ["wrist-lock"]),
        ("straight arm bar", ["straight-arm-lock"]),
        ("twists the wrist and throws", ["wrist-throw", "wrist-lock"]),
        ("pulls the wrist out over the thumb", ["thumb-pull", "thumb-peel", "one-thumb-free"]),
        ("lets go", ["let-go"]),
        ("chokes him out from behind", ["sleeper-finish"]),
        ("finishes with a cross", ["finishing-cross"]),
        ("knocks out with an uppercut", ["finishing-uppercut"]),
    ];

    private static readonly (string Text, string[] Means)[] Attacks =
    [
        ("swings wildly", ["swing"]),
        ("big haymaker", ["swing", "overhand"]),
        ("throws a jab", ["jab"]),
        ("hooks at the head", ["swing"]),
        ("punches low", ["body-punch", "lunge-body-punch"]),
        ("kicks at the knee", ["round-kick-low"]),
        ("high roundhouse", ["round-kick-high"]),
        ("charges in low", ["tackle", "rush"]),
        ("grabs the jacket", ["lapel-grab"]),
        ("gets hold of a sleeve", ["sleeve-grab"]),
        ("strangles from the front", ["choke-front"]),
        ("grabs round the waist from behind", ["bear-hug-rear-under", "bear-hug-rear"]),
        ("pulls the hair from behind", ["hair-pull-rear"]),
        ("shoves hard", ["shove"]),
        ("slaps the face", ["slap"]),
        ("takes both wrists", ["two-wrist-grab", "wrist-grab-double"]),
    ];

    [Fact]
    public void What_a_plain_phrase_means_comes_first()
    {
        var finder = new MeaningFinder(BundledLibrary.Book);
        var ranks = Techniques.Select(p => (p.Text, Ids: Bases(finder.Technique(p.Text).Ids), p.Means))
            .Concat(Attacks.Select(p => (p.Text, Ids: Bases(finder.Attack(p.Text).Ids), p.Means)))
            .Select(p => (p.Text, p.Ids, Rank: p.Ids.FindIndex(p.Means.Contains))).ToList();
        var misses = string.Join("\n", ranks.Where(r => r.Rank != 0).Select(r => $"{r.Text}: {string.Join(", ", r.Ids)}"));
        Assert.True(ranks.Count >= 60);
        Assert.True(ranks.Count(r => r.Rank == 0) >= 74, $"{ranks.Count(r => r.Rank == 0)} of {ranks.Count} first, {ranks.Count(r => r.Rank >= 0)} among what is taken\n{misses}");
    }

    /// <summary>One word that much else has beside others means what it is the name of.</summary>
    [Theory]
    [InlineData("sweep", "foot-sweep")]
    [InlineData("sweeps", "foot-sweep")]
    [InlineData("a sweep", "foot-sweep")]
    public void One_word_means_what_it_names(string text, string technique)
    {
        var book = BundledLibrary.Book;
        Assert.Equal(technique, Bases(new MeaningFinder(book).Technique(text).Ids)[0]);
        Assert.Equal(technique, LibrarySearch.Find(book, text)[0].Id);
    }

    /// <summary>What a phrase says wholly is not also taken for something that does otherwise.</summary>
    [Theory]
    [InlineData("knee to the belly", "body-drop")]
    [InlineData("knees him in the stomach", "body-drop")]
    [InlineData("sweeps the legs", "parry-down")]
    [InlineData("sweep", "cross-parry")]
    [InlineData("front kick to the chest", "knee")]
    [InlineData("elbow across the jaw", "chop")]
    public void What_it_does_not_say_is_not_taken(string text, string other) =>
        Assert.DoesNotContain(other, Bases(new MeaningFinder(BundledLibrary.Book).Technique(text).Ids));

    /// <summary>Names by which schools of the trade call what the library has, as one word or several, by either spelling.</summary>
    [Theory]
    [InlineData("mae geri", "front-kick")]
    [InlineData("Mae-keri", "front-kick")]
    [InlineData("yoko geri", "side-kick")]
    [InlineData("jodan mawashi geri", "high-round-kick")]
    [InlineData("chudan mawashi-geri", "mid-round-kick")]
    [InlineData("ushiro geri", "back-kick")]
    [InlineData("gyaku zuki", "cross")]
    [InlineData("uraken", "back-fist")]
    [InlineData("tetsui", "hammer-fist")]
    [InlineData("empi", "elbow-across")]
    [InlineData("age uke", "rising-block")]
    [InlineData("gedan barai", "parry-down")]
    [InlineData("juji uke", "low-cross-block")]
    [InlineData("o goshi", "hip-throw")]
    [InlineData("ogoshi", "hip-throw")]
    [InlineData("ippon seoi nage", "shoulder-throw")]
    [InlineData("O-soto-gari", "outside-reap")]
    [InlineData("ouchi gari", "inside-reap")]
    [InlineData("tai otoshi", "body-drop")]
    [InlineData("de ashi barai", "foot-sweep")]
    [InlineData("tomoe nage", "stomach-throw")]
    [InlineData("kote gaeshi", "wrist-throw")]
    [InlineData("shiho nage", "under-arm-throw")]
    [InlineData("ikkyo", "arm-lock-down")]
    [InlineData("nikyo", "wrist-lock")]
    [InlineData("ude garami", "bent-arm-lock")]
    [InlineData("hadaka jime", "rear-arm-hold")]
    [InlineData("slipping the punch", "slip")]
    [InlineData("armbar", "straight-arm-lock")]
    public void Names_of_other_schools_are_known(string text, string technique) => Assert.Equal(technique, Bases(new MeaningFinder(BundledLibrary.Book).Technique(text).Ids)[0]);

    [Theory]
    [InlineData("ryote dori", "two-wrist-grab")]
    [InlineData("ushiro ryote dori", "wrists-grab-rear")]
    [InlineData("katate dori", "wrist-grab-same")]
    [InlineData("ushiro jime", "choke-rear")]
    [InlineData("rear strangle", "choke-rear")]
    [InlineData("shomen uchi", "overhand")]
    [InlineData("yokomen uchi", "swing")]
    [InlineData("mae geri", "front-kick")]
    [InlineData("chudan tsuki", "body-punch")]
    [InlineData("side head lock", "headlock")]
    public void Names_of_other_schools_for_attacks_are_known(string text, string attack) => Assert.Equal(attack, Bases(new MeaningFinder(BundledLibrary.Book).Attack(text).Ids)[0]);

    [Fact]
    public void None_of_them_is_written_in_the_library()
    {
        var book = BundledLibrary.Book;
        var written = book.Notebook.Techniques.Concat(book.Notebook.Attacks).SelectMany(e => e.Value).Concat(book.Techniques.SelectMany(t => t.Aliases)).Concat(book.Attacks.SelectMany(a => a.Aliases)).Select(PlainWord.Of).ToHashSet(StringComparer.Ordinal);
        Assert.True(Techniques.Concat(Attacks).Count(p => !written.Contains(PlainWord.Of(p.Text))) >= 60);
    }

    private static List<string> Bases(IEnumerable<string> ids) =>
        [.. ids.Select(id => id.EndsWith("-left", StringComparison.Ordinal) ? id[..^5] : id.EndsWith("-right", StringComparison.Ordinal) ? id[..^6] : id).Distinct(StringComparer.Ordinal)];
}
