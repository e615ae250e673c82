namespace Hydrocolloid.Formulation.Teaching;

/// <summary>What became of an answer.</summary>
public enum MarkOutcome
{
    /// <summary>Right, within the tolerance.</summary>
    Right,

    /// <summary>Read, and not right.</summary>
    Wrong,

    /// <summary>Not readable yet: something is missing, and the feedback asks for it.</summary>
    AskedAgain,
}
