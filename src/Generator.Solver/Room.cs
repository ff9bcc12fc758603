namespace Generator.Solver;

internal static class Room;
