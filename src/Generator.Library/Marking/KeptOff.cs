namespace Generator.Library.Marking;

/// <summary>Something round on the floor, a camera with its operator or a prop that lies: no mark is nearer than <paramref name="Stand"/>, no way than <paramref name="Pass"/>, all in centimetres.</summary>
internal readonly record struct KeptOff(double X, double Y, int Stand, int Pass);
