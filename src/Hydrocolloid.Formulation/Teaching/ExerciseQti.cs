using System.Text;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Teaching;

/// <summary>
/// Exercises as items of 1EdTech Question and Test Interoperability (QTI) 3.0, for a school's own system. Numbers become text entries (the unit stands beside them, and the number is compared
/// with the tolerance), choices and lists choice interactions, orders order interactions; options go by letter. docs/teaching.md names the rules that are kept and where they were read; the published
/// schema itself was not to be had. Known mistakes do not fit the item kinds and are left out.
/// </summary>
public static class ExerciseQti
{
    private const string Namespace = "http://www.imsglobal.org/xsd/imsqtiasi_v3p0";
    private const string SchemaLocation = Namespace + " https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqti_asiv3p0_v1p0.xsd";
    private const string MatchCorrect = "https://purl.imsglobal.org/spec/qti/v3p0/rptemplates/match_correct.xml";

    /// <summary>One exercise as an assessment item. It contains the answer: it is for the system that marks, not for students.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="identifier">The identifier of the item; a letter or underscore, then letters, digits, underscores, hyphens or points.</param>
    /// <returns>The XML text; lines end with a line feed.</returns>
    /// <exception cref="ArgumentException">The identifier is not one.</exception>
    public static string ToItem(Exercise exercise, string identifier)
    {
        Guard.NotNull(exercise);
        if (!IsIdentifier(Guard.NotNull(identifier)))
        {
            throw new ArgumentException($"'{identifier}' is not an identifier: a letter or underscore, then letters, digits, underscores, hyphens or points.", nameof(identifier));
        }

        AnswerForm form = exercise.Form;
        bool isNumber = form.Shape == AnswerShape.Number;
        string cardinality = form.Shape switch { AnswerShape.Order => "ordered", AnswerShape.List => "multiple", _ => "single" };
        // A key may say too much: like the student's document, an item has letters.
        IEnumerable<string> correct = isNumber ? [Numbers.Exact(exercise.Solution.Value)] : exercise.Solution.Keys.Select(k => IdentifierOf(form, k));
        var xml = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n")
            .Append((string)$"<qti-assessment-item xmlns=\"{Namespace}\" xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\" xsi:schemaLocation=\"{SchemaLocation}\" identifier=\"{identifier}\" title=\"{ExerciseSheet.Escaped(exercise.Kind)}\" adaptive=\"false\" time-dependent=\"false\" xml:lang=\"en\">\n")
            .Append((string)$"  <qti-response-declaration identifier=\"RESPONSE\" cardinality=\"{cardinality}\" base-type=\"{(isNumber ? "float" : "identifier")}\">\n    <qti-correct-response>\n")
            .Append(string.Concat(correct.Select(v => $"      <qti-value>{v}</qti-value>\n")))
            .Append("    </qti-correct-response>\n  </qti-response-declaration>\n")
            .Append("  <qti-outcome-declaration identifier=\"SCORE\" cardinality=\"single\" base-type=\"float\">\n    <qti-default-value>\n      <qti-value>0</qti-value>\n    </qti-default-value>\n  </qti-outcome-declaration>\n")
            .Append("  <qti-item-body>\n");
        string question = ExerciseSheet.Escaped(exercise.Question);
        xml.Append(form.Shape switch
        {
            AnswerShape.Number => $"    <p>{question}</p>\n    <p>Answer ({ExerciseSheet.Escaped(ExerciseSheet.Asked(form))}): <qti-text-entry-interaction response-identifier=\"RESPONSE\" expected-length=\"10\"/> {ExerciseSheet.Escaped(form.Unit)}</p>\n",
            AnswerShape.Order => $"    <qti-order-interaction response-identifier=\"RESPONSE\" shuffle=\"false\">\n{Options(question, form)}    </qti-order-interaction>\n",
            _ => $"    <qti-choice-interaction response-identifier=\"RESPONSE\" shuffle=\"false\" max-choices=\"{(form.Shape == AnswerShape.Choice ? "1" : "0")}\">\n{Options(question, form)}    </qti-choice-interaction>\n",
        });
        xml.Append("  </qti-item-body>\n").Append(isNumber ? Tolerant(exercise.Tolerance) : $"  <qti-response-processing template=\"{MatchCorrect}\"/>\n");
        return xml.Append("</qti-assessment-item>\n").ToString();
    }

    private static string Options(string question, AnswerForm form) => $"      <qti-prompt>{question}</qti-prompt>\n"
        + string.Concat(form.Options.Select(o => $"      <qti-simple-choice identifier=\"{IdentifierOf(form, o.Key)}\">{ExerciseSheet.Escaped(o.Text)}</qti-simple-choice>\n"));

    private static string Tolerant(double tolerance) =>
        "  <qti-response-processing>\n    <qti-response-condition>\n      <qti-response-if>\n"
        + $"        <qti-equal tolerance-mode=\"absolute\" tolerance=\"{Numbers.Exact(tolerance)} {Numbers.Exact(tolerance)}\">\n"
        + "          <qti-variable identifier=\"RESPONSE\"/>\n          <qti-correct identifier=\"RESPONSE\"/>\n        </qti-equal>\n"
        + "        <qti-set-outcome-value identifier=\"SCORE\">\n          <qti-base-value base-type=\"float\">1</qti-base-value>\n        </qti-set-outcome-value>\n"
        + "      </qti-response-if>\n    </qti-response-condition>\n  </qti-response-processing>\n";

    private static string IdentifierOf(AnswerForm form, string key) => "choice-" + AnswerForm.Letter(form.IndexOf(key));

    private static bool IsIdentifier(string text) => text.Length > 0 && (text[0] == '_' || IsAsciiLetter(text[0]))
        && text.All(c => IsAsciiLetter(c) || c is (>= '0' and <= '9') or '_' or '-' or '.');

    private static bool IsAsciiLetter(char c) => c is (>= 'a' and <= 'z') or (>= 'A' and <= 'Z');
}
