using System.Text;
using System.Text.Json;

namespace Hydrocolloid.Formulation.Internal;

/// <summary>Whether text is whole Unicode, which JSON syntax alone does not ensure.</summary>
internal static class UnicodeText
{
    public static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The offset of the first byte that is not UTF-8; -1 if there is none.</summary>
    public static int InvalidByte(ReadOnlySpan<byte> utf8)
    {
#if NET
        if (System.Text.Unicode.Utf8.IsValid(utf8))
        {
            return -1;
        }
#endif
        int offset = 0;
        while (offset < utf8.Length)
        {
            int length = SequenceLength(utf8.Slice(offset));
            if (length == 0)
            {
                return offset;
            }

            offset += length;
        }

        return -1;
    }

    /// <summary>The offset of the first string with an escape that is half of a surrogate pair; -1 if there is none or the syntax breaks before it.</summary>
    public static int LoneSurrogateEscape(ReadOnlySpan<byte> utf8)
    {
        if (utf8.IndexOf("\\u"u8) < 0)
        {
            return -1;
        }

        var reader = new Utf8JsonReader(utf8, new JsonReaderOptions { MaxDepth = JsonLimits.MaxDepth });
        try
        {
            while (reader.Read())
            {
                if (reader.ValueIsEscaped)
                {
                    _ = reader.GetString();
                }
            }
        }
        catch (InvalidOperationException)
        {
            return (int)reader.TokenStartIndex;
        }
        catch (JsonException)
        {
            return -1; // reported as a syntax error by whoever parses it
        }

        return -1;
    }

    /// <summary>Whether a text can be written as UTF-8 without a loss: no half of a surrogate pair.</summary>
    public static bool IsWhole(string text)
    {
        for (int i = 0; i < text.Length; i++)
        {
            if (!char.IsSurrogate(text[i]))
            {
                continue;
            }

            if (i + 1 >= text.Length || !char.IsSurrogatePair(text[i], text[i + 1]))
            {
                return false;
            }

            i++;
        }

        return true;
    }

    /// <summary>Bytes of the UTF-8 sequence at the start (The Unicode Standard, table 3-7); 0 if it is not one.</summary>
    private static int SequenceLength(ReadOnlySpan<byte> utf8)
    {
        byte lead = utf8[0];
        if (lead < 0x80)
        {
            return 1;
        }

        int length = lead switch { >= 0xC2 and < 0xE0 => 2, >= 0xE0 and < 0xF0 => 3, >= 0xF0 and < 0xF5 => 4, _ => 0 };
        if (length == 0 || utf8.Length < length)
        {
            return 0;
        }

        byte low = lead switch { 0xE0 => 0xA0, 0xF0 => 0x90, _ => 0x80 };
        byte high = lead switch { 0xED => 0x9F, 0xF4 => 0x8F, _ => 0xBF };
        if (utf8[1] < low || utf8[1] > high)
        {
            return 0;
        }

        for (int i = 2; i < length; i++)
        {
            if ((utf8[i] & 0xC0) != 0x80)
            {
                return 0;
            }
        }

        return length;
    }
}
