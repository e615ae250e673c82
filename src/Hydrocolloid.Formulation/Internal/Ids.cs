namespace Hydrocolloid.Formulation.Internal;

/// <summary>Kebab-case ids: ASCII letters a to z and digits in groups joined by single hyphens.</summary>
internal static class Ids
{
    public const int MaxLength = 100;

    public static bool IsValid(string? id)
    {
        if (string.IsNullOrEmpty(id) || id!.Length > MaxLength || id[0] == '-' || id[id.Length - 1] == '-')
        {
            return false;
        }

        for (int i = 0; i < id.Length; i++)
        {
            char c = id[i];
            if (c is not ((>= 'a' and <= 'z') or (>= '0' and <= '9') or '-') || (c == '-' && id[i - 1] == '-'))
            {
                return false;
            }
        }

        return true;
    }

    public static string Check(string? id, string name)
        => IsValid(Guard.NotNull(id, name)) ? id! : throw new ArgumentException($"Must be kebab-case, such as 'pear-juice', but is '{id}'.", name);
}
