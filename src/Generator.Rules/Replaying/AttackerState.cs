using Generator.Domain;
using Generator.Rules.Bodies;

namespace Generator.Rules.Replaying;

/// <summary>What is true of one attacker between two moves; shared by all states in which it is still true. Times are half counts from count 1, bearings half hours, distances centimetres from the mark.</summary>
public sealed record AttackerState
{
    private Leg? leg;
    private Place? stays;

    /// <summary>0 to 23.</summary>
    public int Bearing { get; init; }

    public int Distance { get; init; }

    /// <summary>The mark from which they are seen, as a place on the floor.</summary>
    public Place Origin { get; init; }

    /// <summary>Where they are to the millimetre, of somebody whom no move has concerned since the hero came to another mark: nothing has brought them onto a bearing of that one. Else null.</summary>
    public Place? Stays
    {
        get => stays;
        init => stays = value;
    }

    /// <summary>Where they are, whatever the mark.</summary>
    public Place Place => Stays ?? Origin + Place.At(Bearing, Distance);

    /// <summary>The posture that the last reaction left; see <see cref="PostureAt"/> for what it has become.</summary>
    public Posture Posture { get; init; }

    /// <summary>Line of the grip while gripping.</summary>
    public AttackLine? Grip { get; init; }

    /// <summary>Last moment at which a follow-up may start.</summary>
    public int OpenUntil { get; init; }

    /// <summary>Moment from which they can come again.</summary>
    public int ReadyAt { get; init; }

    /// <summary>Moment before which they are not in play.</summary>
    public int Entrance { get; init; }

    /// <summary>Moment at which the last move on them is over; kept only where there is an ally, so that nobody is in two moves at once.</summary>
    public int BusyUntil { get; init; }

    /// <summary>That move is the ally's.</summary>
    public bool BusyWithAlly { get; init; }

    public int Falls { get; init; }

    /// <summary>Moment at which they went out; −1 while in.</summary>
    public int OutAt { get; init; }

    /// <summary>Ran off by the agreed exit: no longer on the floor.</summary>
    public bool Gone { get; init; }

    /// <summary>The legs of their way so far, the last first, beginning with the entrance; null while somebody who is in from the start has not stirred.</summary>
    public Leg? Leg
    {
        get => leg;
        init => leg = value;
    }

    /// <summary>Gives somebody their legs whose state a step has just made, so that nobody else knows it yet: without another copy, since a search does this with every move that it tries.</summary>
    internal void Lay(Leg last, Place? staying) => (leg, stays) = (last, staying);

    /// <summary>The same with the one leg of who has not stirred.</summary>
    public Leg Way => Leg ?? Bodies.Leg.Always(Place);

    /// <summary>No move has concerned them yet: they stand at their opening place, or are still to come there.</summary>
    public bool HasNotActed => Leg is null or { Move: < 0 };

    /// <summary>The same, coming in at another moment; only of somebody who has not acted.</summary>
    /// <param name="scene">Their speed and the ways in.</param>
    /// <param name="attacker">Their number.</param>
    /// <param name="entrance">In half counts, above 0.</param>
    public AttackerState Entering(Scene scene, int attacker, int entrance) =>
        this with { Entrance = entrance, ReadyAt = entrance, Leg = Entries.Legs(scene, attacker, Opening.Bearing, Opening.Distance, entrance) };

    /// <summary>Bearing and distance from the first mark of the place at which somebody opens who has not acted.</summary>
    public (int Bearing, int Distance) Opening => Opens ?? (Bearing, Distance);

    /// <summary>The same where they are no longer seen from the first mark.</summary>
    public (int Bearing, int Distance)? Opens { get; init; }

    /// <summary>Centimetres to another.</summary>
    public int Apart(AttackerState other) => Stays is { } stays ? FloorGeometry.Whole(stays.To(other.Place)) : other.Apart(Bearing, Distance);

    /// <summary>Centimetres to a place that is seen from the same mark.</summary>
    public int Apart(int bearing, int distance) => Stays is { } stays
        ? FloorGeometry.Whole((Origin + Place.At(bearing, distance)).To(stays))
        : FloorGeometry.Apart(new Bearing(bearing).Apart(new Bearing(Bearing)), distance, Distance);

    /// <summary>The same person in the same place as seen from another mark.</summary>
    public AttackerState SeenFrom(Place mark)
    {
        var (place, opens) = (Place, HasNotActed ? Opening : ((int, int)?)null);
        var (bearing, distance) = (place - mark).Seen();
        return this with { Bearing = bearing, Distance = distance, Origin = mark, Stays = place, Opens = opens };
    }

    /// <summary>Neither out, nor held by the hero, nor holding the hero: could come at the hero once ready.</summary>
    public bool IsActive => !Posture.IsControlled() && Posture is not (Posture.Gripping or Posture.Out);

    /// <summary>
    /// Moment from which they walk in: once ready and in play. Whoever is in play from the start may set off before count 1
    /// (<see cref="Replay.LeadIn"/>).
    /// </summary>
    public int SetsOffAt => Entrance > 0 ? Math.Max(ReadyAt, Entrance) : ReadyAt;

    /// <summary>Moment at which they are where the last move sends them, rounded up; before all time for who has never gone anywhere.</summary>
    public int ArrivesAt => Leg?.Arrives is double moment && double.IsFinite(moment) ? (int)Math.Ceiling(moment) : int.MinValue;

    /// <summary>The posture at a moment; null while recovering, when neither open nor ready.</summary>
    public Posture? PostureAt(int moment)
    {
        if (!IsActive || moment <= OpenUntil)
        {
            return Posture;
        }

        return moment < ReadyAt ? null : Posture == Posture.Knelt ? Posture.Knelt : Posture.Ready;
    }

    /// <summary>Neither on the floor nor still getting up at a moment; may be off balance or recovering.</summary>
    public bool IsOnFeetAt(int moment) => Posture != Posture.Knelt && (moment >= ReadyAt || !Posture.IsDown());

    /// <summary>Lies on the floor, or is falling, at a moment.</summary>
    public bool LiesAt(int moment) => Leg?.LiesAt(moment) == true;

    /// <summary>On their feet, free, recovered and in play at a moment.</summary>
    public bool StandsReadyAt(int moment) => IsActive && moment >= ReadyAt && moment >= Entrance;
}
