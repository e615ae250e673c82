namespace Hydrocolloid.Formulation.Declarations;

/// <summary>One entry of a list of ingredients. Immutable, equal by content.</summary>
public sealed record DeclaredIngredient
{
    internal DeclaredIngredient(string text, double percent, ValueList<string> lines, ValueList<string> emphasised)
    {
        Text = text;
        PercentOfFood = percent;
        Lines = lines;
        Emphasised = emphasised;
    }

    /// <summary>The entry in plain text.</summary>
    public string Text { get; }

    /// <summary>Its weight when it was put in, % by weight of the food after evaporation; may exceed 100 %. Of added water, what is left of it.</summary>
    public double PercentOfFood { get; }

    /// <summary>The labels of the lines that it stands for.</summary>
    public ValueList<string> Lines { get; }

    /// <summary>The words of the text that must stand out, because they name an allergen.</summary>
    public ValueList<string> Emphasised { get; }

    /// <summary>The entry with the names of allergens made to stand out.</summary>
    /// <param name="emphasise">Makes a word stand out, such as by <c>w => "&lt;b>" + w + "&lt;/b>"</c>; the rest of the text is left as it is.</param>
    /// <returns>The text.</returns>
    public string ToText(Func<string, string> emphasise)
    {
        Internal.Guard.NotNull(emphasise);
        var text = new System.Text.StringBuilder();
        int position = 0;
        while (position < Text.Length)
        {
            string? word = Emphasised.Where(w => WholeWords.StartsAt(Text, w, position)).OrderByDescending(w => w.Length).FirstOrDefault();
            text.Append(word is null ? Text.Substring(position, 1) : emphasise(Text.Substring(position, word.Length)));
            position += word?.Length ?? 1;
        }

        return text.ToString();
    }

    /// <summary>The entry with the names of allergens in capitals.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => ToText(w => w.ToUpperInvariant());
}
