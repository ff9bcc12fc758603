using Generator.Domain;
using Generator.Paperwork.HandOffs;

namespace Generator.Outside.Tests;

/// <summary>The click's bytes against the Standard MIDI Files specification 1.0.</summary>
public class MidiTests
{
    [Theory(DisplayName = "Standard MIDI Files: tempo is FF 51 03 and microseconds in a quarter note")]
    [InlineData(120, 500_000, 0x07, 0xA1, 0x20)]
    [InlineData(60, 1_000_000, 0x0F, 0x42, 0x40)]
    [InlineData(100, 600_000, 0x09, 0x27, 0xC0)]
    [InlineData(90, 666_667, 0x0A, 0x2C, 0x2B)]
    public void Tempo_event(int tempo, int microseconds, byte first, byte second, byte third)
    {
        Assert.Equal(microseconds, MidiClick.MicrosecondsOf(new Tempo(tempo)));
        Assert.Equal([0xFF, 0x51, 3, first, second, third], MidiClick.TempoEvent(new Tempo(tempo)));
    }

    [Theory(DisplayName = "Standard MIDI Files: variable-length quantities of the specification's table")]
    [InlineData(0x00, "00")]
    [InlineData(0x7F, "7F")]
    [InlineData(0x80, "8100")]
    [InlineData(0xC8, "8148")]
    [InlineData(0x2000, "C000")]
    [InlineData(0x3FFF, "FF7F")]
    [InlineData(0x4000, "818000")]
    [InlineData(0x100000, "C08000")]
    [InlineData(1_000_000, "BD8440")]
    [InlineData(0x0FFFFFFF, "FFFFFF7F")]
    public void Variable_length(int value, string bytes) => Assert.Equal(bytes, Convert.ToHexString(MidiClick.VariableLength(value)));

    [Theory(DisplayName = "Standard MIDI Files: numbers outside 0 to 0FFFFFFF have no variable-length form")]
    [InlineData(-1)]
    [InlineData(0x10000000)]
    public void Out_of_range(int value) => Assert.Throws<ArgumentOutOfRangeException>(() => MidiClick.VariableLength(value));

    [Fact(DisplayName = "Standard MIDI Files: MThd with length 6, one track of the length it says, which ends with FF 2F 00")]
    public void Framing()
    {
        var bytes = MidiClick.Of("Night ferry", new Tempo(120), 32, [new Marker(0, "Phrase 1, count 1")]);
        Assert.Equal("4D546864000000060000000101E04D54726B", Convert.ToHexString(bytes[..18]));
        Assert.Equal(bytes.Length - 22, (bytes[18] << 24) | (bytes[19] << 16) | (bytes[20] << 8) | bytes[21]);
        Assert.Equal("FF2F00", Convert.ToHexString(bytes[^3..]));
    }
}
