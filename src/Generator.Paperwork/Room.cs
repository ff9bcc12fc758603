namespace Generator.Paperwork;

internal static class Room;
