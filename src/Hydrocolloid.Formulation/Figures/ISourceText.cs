namespace Hydrocolloid.Formulation;

/// <summary>Reads what a source is called.</summary>
internal interface ISourceText
{
    /// <summary>Reads it; the same each time.</summary>
    SourceText Read();
}
