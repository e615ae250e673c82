namespace Hydrocolloid.Formulation;

/// <summary>The numbers an additive is declared under.</summary>
/// <param name="ENumbers">EU numbers as printed, such as <c>E 406</c>.</param>
/// <param name="InsNumbers">Numbers of the International Numbering System (Codex CXG 36), such as <c>406</c>.</param>
/// <param name="Citation">Where they come from; of the E numbers alone if the INS numbers come from elsewhere.</param>
/// <param name="InsCitation">Where the INS numbers come from; null if from the same place.</param>
public sealed record AdditiveNumbers(ValueList<string> ENumbers, ValueList<string> InsNumbers, Citation Citation, Citation? InsCitation = null);
