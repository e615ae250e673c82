using System.Text;
using Hydrocolloid.Formulation;

namespace KitchenCard;

/// <summary>A diagnosis as plain text.</summary>
internal static class DiagnosisText
{
    private const int Width = 78;

    public static string Render(Formula formula, Diagnosis diagnosis)
    {
        var text = new StringBuilder();
        void Wrapped(string line, string indent, string hanging)
        {
            foreach (string part in Text.Wrap(line, Width, indent, hanging))
            {
                text.Append(part).Append('\n');
            }
        }

        Wrapped($"{formula.Name}: {Text.Kebab(diagnosis.Symptom.ToString()).Replace('-', ' ')}", "", "");
        int number = 0;
        foreach (LikelyCause cause in diagnosis.Causes)
        {
            number++;
            Wrapped($"{number}. {Text.Kebab(cause.Standing.ToString()).ToUpperInvariant()} {cause.Id}: {cause.Explanation}", "", "   ");
            foreach (Evidence evidence in cause.Evidence)
            {
                Wrapped(evidence.ToString(), "   - ", "     ");
            }

            if (cause.Standing == CauseStanding.Open && cause.ToBeSure is { } sure)
            {
                Wrapped("To be sure: " + sure, "   - ", "     ");
            }

            if (cause.Standing != CauseStanding.Unlikely && cause.NextTime is { } next)
            {
                Wrapped("Next time: " + next, "   - ", "     ");
            }

            foreach (Citation citation in cause.Citations)
            {
                Wrapped("Source: " + citation, "   - ", "     ");
            }
        }

        foreach (Cited<string> rescue in diagnosis.Rescue)
        {
            Wrapped("This batch: " + rescue.Value, "", "  ");
        }

        if (diagnosis.AskFirst.Count > 0)
        {
            Wrapped("Ask first: " + diagnosis.AskFirst[0], "", "  ");
        }

        return text.ToString();
    }
}
