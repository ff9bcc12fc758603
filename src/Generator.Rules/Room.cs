namespace Generator.Rules;

internal static class Room;
