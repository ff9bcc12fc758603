using System.Globalization;

namespace Generator.Domain;

/// <summary>A length on the floor or of a body, in whole centimetres.</summary>
public readonly record struct Centimetres(int Value) : IComparable<Centimetres>
{
    public static Centimetres FromMetres(decimal metres) => new((int)Math.Round(metres * 100m, MidpointRounding.AwayFromZero));

    public decimal Metres => Value / 100m;

    public static Centimetres operator +(Centimetres left, Centimetres right) => new(left.Value + right.Value);

    public static Centimetres operator -(Centimetres left, Centimetres right) => new(left.Value - right.Value);

    public static bool operator <(Centimetres left, Centimetres right) => left.Value < right.Value;

    public static bool operator >(Centimetres left, Centimetres right) => left.Value > right.Value;

    public static bool operator <=(Centimetres left, Centimetres right) => left.Value <= right.Value;

    public static bool operator >=(Centimetres left, Centimetres right) => left.Value >= right.Value;

    public int CompareTo(Centimetres other) => Value.CompareTo(other.Value);

    /// <summary>In metres with two decimals: "1.20 m".</summary>
    public override string ToString() => Metres.ToString("0.00", CultureInfo.InvariantCulture) + " m";
}
