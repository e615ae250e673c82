namespace Hydrocolloid.Formulation.Declarations;

/// <summary>Looks for words in a text, whatever their case, and never inside another word.</summary>
internal static class WholeWords
{
    public static bool StartsAt(string text, string word, int position)
        => word.Length > 0 && string.Compare(text, position, word, 0, word.Length, StringComparison.OrdinalIgnoreCase) == 0
            && (position == 0 || !char.IsLetterOrDigit(text[position - 1]))
            && (position + word.Length == text.Length || !char.IsLetterOrDigit(text[position + word.Length]));

    public static bool In(string text, string word)
    {
        for (int i = 0; i + word.Length <= text.Length; i++)
        {
            if (StartsAt(text, word, i))
            {
                return true;
            }
        }

        return false;
    }
}
