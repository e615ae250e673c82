using System.Text;
using System.Text.Json;

namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>
/// Gives the same string for the same word, where a catalogue repeats a few words tens of thousands of times: names of members, ids of
/// sources. A slot holds the last word that fell into it, so it never grows, and two threads can at worst make a word twice.
/// </summary>
internal static class WordMemo
{
    private const int Slots = 2048;

    private static readonly string?[] s_words = new string?[Slots];

    /// <summary>The name or the text that a reader stands on.</summary>
    public static string Of(ref Utf8JsonReader json)
    {
        if (json.ValueIsEscaped)
        {
            return json.GetString()!;
        }

        ReadOnlySpan<byte> text = json.ValueSpan;
        int slot = SlotOf(text);
        string? word = Volatile.Read(ref s_words[slot]);
        if (word is null || !IsSame(text, word))
        {
            word = json.GetString()!;
            Volatile.Write(ref s_words[slot], word);
        }

        return word;
    }

    // A word with other letters than ASCII is never the same, and is made each time.
    private static bool IsSame(ReadOnlySpan<byte> text, string word)
    {
#if NET
        return Ascii.Equals(text, word);
#else
        if (text.Length != word.Length)
        {
            return false;
        }

        for (int i = 0; i < text.Length; i++)
        {
            if (text[i] > 0x7F || text[i] != word[i])
            {
                return false;
            }
        }

        return true;
#endif
    }

    // From its length and a few of its bytes: it runs before anything is optimized, and ids of sources differ in these.
    private static int SlotOf(ReadOnlySpan<byte> text)
    {
        int n = text.Length;
        int hash = n == 0 ? 0 : (((n * 31 + text[0]) * 31 + text[n / 2]) * 31) + text[n - 1] + (text[n * 3 / 4] * 7);
        return hash & (Slots - 1);
    }
}
