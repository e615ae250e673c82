namespace Hydrocolloid.Formulation.Teaching;

/// <summary>
/// The random numbers of exercises: SplitMix64 (Steele, Lea and Flood 2014; constants and test values recalled from Vigna's public-domain C code).
/// Integer arithmetic only, so a seed gives the same numbers on every machine, target and version.
/// </summary>
internal sealed class SplitMix64(ulong seed)
{
    private ulong _state = seed;

    public ulong Next()
    {
        unchecked
        {
            ulong z = _state += 0x9E3779B97F4A7C15;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return z ^ (z >> 31);
        }
    }

    /// <summary>A whole number from 0 to <paramref name="count"/> - 1, each as likely: what would favour the low ones is drawn again.</summary>
    public int Below(int count)
    {
        ulong fair = ulong.MaxValue - (ulong.MaxValue % (ulong)count);
        ulong drawn;
        do
        {
            drawn = Next();
        }
        while (drawn >= fair);

        return (int)(drawn % (ulong)count);
    }

    /// <summary>Puts a list into a random order (Fisher and Yates).</summary>
    public void Shuffle<T>(IList<T> items)
    {
        for (int i = items.Count - 1; i > 0; i--)
        {
            int j = Below(i + 1);
            (items[i], items[j]) = (items[j], items[i]);
        }
    }
}
