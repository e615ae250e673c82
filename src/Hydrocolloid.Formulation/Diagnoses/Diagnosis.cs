namespace Hydrocolloid.Formulation;

/// <summary>Why a batch failed, what can be done with it, and what to do next time. Immutable, equal by content.</summary>
/// <param name="Symptom">What is wrong.</param>
/// <param name="Causes">The causes, the likeliest first.</param>
/// <param name="Rescue">What can be done with this batch, a hydrocolloid each, with the source.</param>
/// <param name="AskFirst">What is not known and would decide most, the most telling first.</param>
public sealed record Diagnosis(Symptom Symptom, ValueList<LikelyCause> Causes, ValueList<Cited<string>> Rescue, ValueList<string> AskFirst)
{
    /// <summary>The causes, one a line.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Join("\n", Causes);
}
