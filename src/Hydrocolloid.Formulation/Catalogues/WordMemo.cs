using System.Runtime.InteropServices;
using System.Text.Json;

namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>
/// Gives the same string for the same word, where a catalogue repeats a few words tens of thousands of times: names of members, ids of
/// sources. A slot holds the last word that fell into it, so it never grows, and two threads can at worst make a word twice.
/// </summary>
internal static class WordMemo
{
    private const int Slots = 1024;

    private static readonly Word?[] s_words = new Word?[Slots];

    public static string Name(JsonProperty member)
    {
        ReadOnlySpan<byte> text = JsonMarshal.GetRawUtf8PropertyName(member);
        return Find(text, out int slot) ?? Keep(slot, text, member.Name);
    }

    public static string Text(JsonElement json)
    {
        ReadOnlySpan<byte> quoted = JsonMarshal.GetRawUtf8Value(json);
        return Find(quoted, out int slot) ?? Keep(slot, quoted, json.GetString()!);
    }

    private static string? Find(ReadOnlySpan<byte> text, out int slot)
    {
        int n = text.Length;
        int hash = n == 0 ? 0 : (((n * 31 + text[0]) * 31 + text[n / 2]) * 31) + text[n - 1] + (text[n * 3 / 4] * 7);
        slot = hash & (Slots - 1);
        Word? word = Volatile.Read(ref s_words[slot]);
        return word is not null && text.SequenceEqual(word.Utf8) ? word.Text : null;
    }

    private static string Keep(int slot, ReadOnlySpan<byte> utf8, string text)
    {
        Volatile.Write(ref s_words[slot], new Word(utf8.ToArray(), text));
        return text;
    }

    private sealed record Word(byte[] Utf8, string Text);
}
