namespace Hydrocolloid.Formulation.Teaching;

/// <summary>What an answer consists of.</summary>
public enum AnswerShape
{
    /// <summary>A number, with its unit.</summary>
    Number,

    /// <summary>One of the options.</summary>
    Choice,

    /// <summary>All options, in order.</summary>
    Order,

    /// <summary>Some of the options, in any order.</summary>
    List,
}
