using System.Buffers.Binary;
using System.Runtime.InteropServices;
using System.Text.Json;

namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>
/// Gives the same string for the same text, where a catalogue repeats itself: a few words tens of thousands of times (names of members,
/// ids of sources), and every other sentence in the variants of a family. A slot holds the last text that fell into it, so nothing grows,
/// and two threads can at worst make a string twice.
/// </summary>
internal static class WordMemo
{
    private const int SlotBits = 10;

    private static readonly Word?[] s_words = new Word?[1 << SlotBits];

    private static readonly string?[] s_sentences = new string?[1 << SlotBits];

    public static string Name(JsonProperty member)
    {
        ReadOnlySpan<byte> text = JsonMarshal.GetRawUtf8PropertyName(member);
        int slot = SlotOf(text);
        return Find(text, slot) ?? Keep(slot, text, member.Name);
    }

    public static string Value(JsonElement json)
    {
        ReadOnlySpan<byte> quoted = JsonMarshal.GetRawUtf8Value(json);
        int slot = SlotOf(quoted);
        return Find(quoted, slot) ?? Keep(slot, quoted, json.GetString()!);
    }

    public static string? Sentence(JsonElement json)
    {
        int slot = SlotOf(JsonMarshal.GetRawUtf8Value(json));
        string? last = Volatile.Read(ref s_sentences[slot]);
        if (last is null || !json.ValueEquals(last))
        {
            last = json.GetString();
            Volatile.Write(ref s_sentences[slot], last);
        }

        return last;
    }

    private static string? Find(ReadOnlySpan<byte> text, int slot)
    {
        Word? word = Volatile.Read(ref s_words[slot]);
        return word is not null && text.SequenceEqual(word.Utf8) ? word.Text : null;
    }

    // By its first and its last eight bytes: to read them costs the same for a long word, and ids of sources differ at the ends.
    private static int SlotOf(ReadOnlySpan<byte> text)
    {
        int n = text.Length;
        ulong ends = n >= 8 ? BinaryPrimitives.ReadUInt64LittleEndian(text) ^ (BinaryPrimitives.ReadUInt64LittleEndian(text.Slice(n - 8)) * 31)
            : n >= 4 ? BinaryPrimitives.ReadUInt32LittleEndian(text) ^ ((ulong)BinaryPrimitives.ReadUInt32LittleEndian(text.Slice(n - 4)) << 29)
            : n == 0 ? 0 : text[0] ^ ((ulong)text[n - 1] << 8);
        return (int)(((ends ^ (ulong)n) * 0x9E3779B97F4A7C15) >> (64 - SlotBits));
    }

    private static string Keep(int slot, ReadOnlySpan<byte> utf8, string text)
    {
        Volatile.Write(ref s_words[slot], new Word(utf8.ToArray(), text));
        return text;
    }

    private sealed record Word(byte[] Utf8, string Text);
}
