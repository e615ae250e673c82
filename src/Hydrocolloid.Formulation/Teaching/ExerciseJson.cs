using System.Text;
using System.Text.Json;
using Hydrocolloid.Formulation.Internal;
using Hydrocolloid.Formulation.Text;

namespace Hydrocolloid.Formulation.Teaching;

/// <summary>
/// Exercises, answers and marked results as versioned JSON (docs/teaching.md). The student's document has neither seed nor answer, nor anything from which the answer is read off; the
/// teacher's key has all that marking needs.
/// </summary>
public static class ExerciseJson
{
    /// <summary>The version of the documents.</summary>
    public const int Version = 1;

    private const string StudentFormat = "hydrocolloid-exercises", KeyFormat = "hydrocolloid-exercise-key", AnswersFormat = "hydrocolloid-answers", MarkedFormat = "hydrocolloid-marked";

    private static readonly JsonDocumentOptions s_strict = new() { MaxDepth = JsonLimits.MaxDepth };

    /// <summary>The student's document: questions, numbers given, what is asked for.</summary>
    /// <param name="set">The set.</param>
    /// <returns>The JSON text, indented.</returns>
    public static string WriteForStudents(ExerciseSet set) => Write(StudentFormat, json => Exercises(json, set, withAnswers: false));

    /// <summary>The teacher's key: the same, with answers, solutions and what known mistakes would give.</summary>
    /// <param name="set">The set.</param>
    /// <returns>The JSON text, indented.</returns>
    public static string WriteKey(ExerciseSet set) => Write(KeyFormat, json => Exercises(json, set, withAnswers: true));

    /// <summary>Reads a teacher's key.</summary>
    /// <param name="json">The JSON text.</param>
    /// <returns>The set, equal to the one that was written; own misconceptions come back with their texts.</returns>
    /// <exception cref="FormatException">The text is not such a document; the message says why.</exception>
    public static ExerciseSet ReadKey(string json)
        => Read(json, KeyFormat, root => new ExerciseSet(List(root.GetProperty("exercises"), ReadExercise)));

    /// <summary>An answer sheet.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <returns>The JSON text, indented.</returns>
    public static string WriteAnswers(AnswerSheet sheet)
    {
        Guard.NotNull(sheet);
        return Write(AnswersFormat, json =>
        {
            json.WriteString("student", sheet.Student);
            json.WriteString("decimalSign", sheet.DecimalSign);
            Array(json, "answers", sheet.Answers, answer =>
            {
                json.WriteStartObject();
                json.WriteNumber("exercise", answer.Number);
                json.WriteString("answer", answer.Text);
                Texts(json, "working", answer.Working);
                json.WriteEndObject();
            });
        });
    }

    /// <summary>Reads an answer sheet.</summary>
    /// <param name="json">The JSON text.</param>
    /// <returns>The sheet.</returns>
    /// <exception cref="FormatException">The text is not such a document; the message says why.</exception>
    public static AnswerSheet ReadAnswers(string json) => Read(json, AnswersFormat, root => new AnswerSheet(
        Text(root, "student"),
        List(root.GetProperty("answers"), a => new StudentAnswer(a.GetProperty("exercise").GetInt32(), Text(a, "answer"), TextList(a, "working"))),
        root.TryGetProperty("decimalSign", out _) ? Text(root, "decimalSign") : "."));

    /// <summary>A marked sheet.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <returns>The JSON text, indented.</returns>
    public static string WriteMarked(MarkedSheet sheet)
    {
        Guard.NotNull(sheet);
        return Write(MarkedFormat, json =>
        {
            json.WriteString("student", sheet.Student);
            json.WriteNumber("creditPercent", Math.Round(sheet.CreditPercent, 1));
            Array(json, "answers", sheet.Answers, answer =>
            {
                json.WriteStartObject();
                json.WriteString("outcome", answer.Outcome switch { MarkOutcome.Right => "right", MarkOutcome.Wrong => "wrong", _ => "asked-again" });
                json.WriteNumber("creditPercent", Math.Round(answer.CreditPercent, 1));
                Texts(json, "misconceptions", answer.Misconceptions.Select(m => m.Id));
                Texts(json, "feedback", answer.Feedback);
                json.WriteEndObject();
            });
        });
    }

    private static void Exercises(Utf8JsonWriter json, ExerciseSet set, bool withAnswers)
        => Array(json, "exercises", Guard.NotNull(set).Exercises, exercise =>
        {
            json.WriteStartObject();
            json.WriteString("kind", exercise.Kind);
            json.WriteNumber("level", exercise.Level);
            json.WriteString("question", exercise.Question);
            Array(json, "givens", exercise.Givens, given =>
            {
                json.WriteStartObject();
                json.WriteString("key", given.Key);
                json.WriteNumber("value", given.Value);
                json.WriteString("unit", given.Unit);
                json.WriteEndObject();
            });
            Array(json, "things", exercise.Things, thing =>
            {
                json.WriteStartObject();
                json.WriteString("key", thing.Key);
                json.WriteString("id", thing.Id);
                json.WriteEndObject();
            });
            WriteForm(json, exercise.Form, withAnswers);
            if (withAnswers)
            {
                WriteAnswer(json, exercise);
            }

            json.WriteEndObject();
        });

    private static void WriteForm(Utf8JsonWriter json, AnswerForm form, bool withKeys)
    {
        json.WriteStartObject("asked");
        json.WriteString("shape", ShapeWord(form.Shape));
        if (form.Shape == AnswerShape.Number)
        {
            if (form.Quantity is { } quantity)
            {
                json.WriteString("quantity", KindFacts.Of(quantity).Noun);
            }

            json.WriteString("unit", form.Unit);
            json.WriteNumber(form.Digits is null ? "decimals" : "digits", form.Digits ?? form.Decimals!.Value);
        }
        else
        {
            Array(json, "options", form.Options, option =>
            {
                json.WriteStartObject();
                // A key may say too much: students have the letter.
                json.WriteString("key", withKeys ? option.Key : AnswerForm.Letter(form.IndexOf(option.Key)).ToString());
                json.WriteString("text", option.Text);
                json.WriteEndObject();
            });
        }

        json.WriteEndObject();
    }

    private static void WriteAnswer(Utf8JsonWriter json, Exercise exercise)
    {
        json.WriteString("answer", exercise.AnswerText);
        json.WriteNumber("tolerance", exercise.Tolerance);
        Array(json, "solution", exercise.Solution.Steps, step =>
        {
            json.WriteStartObject();
            json.WriteString("law", step.Law);
            json.WriteString("quantity", step.Quantity);
            json.WriteString("expression", step.Expression);
            if (step.Value is { } result)
            {
                json.WriteNumber("value", result);
            }

            json.WriteString("unit", step.Unit);
            json.WriteEndObject();
        });
        Texts(json, "keys", exercise.Solution.Keys);
        Array(json, "slips", exercise.Slips, slip =>
        {
            json.WriteStartObject();
            Array(json, "misconceptions", slip.Misconceptions, made =>
            {
                json.WriteStartObject();
                json.WriteString("id", made.Id);
                json.WriteString("name", made.Name);
                json.WriteString("feedback", made.Feedback);
                json.WriteEndObject();
            });
            if (slip.Value is { } value)
            {
                json.WriteNumber("value", value);
            }

            Texts(json, "keys", slip.Keys);
            json.WriteNumber("partsAtStep", slip.PartsAtStep);
            json.WriteNumber("keptSteps", slip.KeptSteps);
            json.WriteEndObject();
        });
    }

    private static Exercise ReadExercise(JsonElement item)
    {
        WorkedSolution solution = WorkedSolution.Restored(
            List(item.GetProperty("solution"), s => new SolutionStep(Text(s, "law"), Text(s, "quantity"), Text(s, "expression"), s.TryGetProperty("value", out JsonElement result) ? result.GetDouble() : null, Text(s, "unit"))),
            TextList(item, "keys"));
        AnswerForm form = ReadForm(item.GetProperty("asked"));
        if (form.Shape == AnswerShape.Number ? solution.Steps.IsEmpty : solution.Keys.IsEmpty || solution.Keys.Any(k => form.IndexOf(k) < 0))
        {
            throw new FormatException("An exercise of the key has no answer.");
        }

        return new Exercise(
            Text(item, "kind"), item.GetProperty("level").GetInt32(), Text(item, "question"),
            List(item.GetProperty("givens"), g => new Given(Text(g, "key"), g.GetProperty("value").GetDouble(), Text(g, "unit"))),
            item.TryGetProperty("things", out JsonElement things) ? List(things, t => new GivenThing(Text(t, "key"), Text(t, "id"))) : default,
            form, solution, List(item.GetProperty("slips"), s => ReadSlip(s, solution.Steps.Count)));
    }

    private static ExpectedSlip ReadSlip(JsonElement slip, int steps)
    {
        int partsAt = slip.GetProperty("partsAtStep").GetInt32(), kept = slip.GetProperty("keptSteps").GetInt32();
        return partsAt >= 0 && partsAt <= steps && kept >= 0 && kept <= steps
            ? new ExpectedSlip(
                List(slip.GetProperty("misconceptions"), m => new Misconception(Text(m, "id"), Text(m, "name"), Text(m, "feedback"))),
                slip.TryGetProperty("value", out JsonElement value) ? value.GetDouble() : null, TextList(slip, "keys"), partsAt, kept)
            : throw new FormatException("A slip names a step that the solution does not have.");
    }

    private static AnswerForm ReadForm(JsonElement asked)
    {
        string shape = Text(asked, "shape");
        if (shape != ShapeWord(AnswerShape.Number))
        {
            AnswerOption[] options = [.. List(asked.GetProperty("options"), o => new AnswerOption(Text(o, "key"), Text(o, "text")))];
            foreach (AnswerShape known in new[] { AnswerShape.Choice, AnswerShape.Order, AnswerShape.List })
            {
                if (shape == ShapeWord(known))
                {
                    return AnswerForm.Of(known, options);
                }
            }

            throw new FormatException($"'{shape}' is not a shape of an answer: number, choice, order or list.");
        }

        QuantityKind? quantity = asked.TryGetProperty("quantity", out _) ? KindOf(Text(asked, "quantity")) : null;
        return asked.TryGetProperty("digits", out JsonElement digits) ? AnswerForm.Number(quantity, Text(asked, "unit"), digits.GetInt32())
            : AnswerForm.Reading(quantity, Text(asked, "unit"), asked.GetProperty("decimals").GetInt32());
    }

    private static QuantityKind KindOf(string noun)
    {
        for (QuantityKind kind = QuantityKind.Mass; kind <= QuantityKind.Percent; kind++)
        {
            if (KindFacts.Of(kind).Noun == noun)
            {
                return kind;
            }
        }

        throw new FormatException($"'{noun}' is not a kind of quantity.");
    }

    private static string ShapeWord(AnswerShape shape) => shape switch
    {
        AnswerShape.Number => "number",
        AnswerShape.Choice => "choice",
        AnswerShape.Order => "order",
        _ => "list",
    };

    private static string Write(string format, Action<Utf8JsonWriter> body)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true, Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            json.WriteString("format", format);
            json.WriteNumber("version", Version);
            body(json);
            json.WriteEndObject();
        }

        // The writer takes the line ends of the machine.
        return Encoding.UTF8.GetString(stream.ToArray()).Replace("\r\n", "\n") + "\n";
    }

    private static void Array<T>(Utf8JsonWriter json, string name, ValueList<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (T item in items)
        {
            write(item);
        }

        json.WriteEndArray();
    }

    private static void Texts(Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (string text in texts)
        {
            json.WriteStringValue(text);
        }

        json.WriteEndArray();
    }

    private static T Read<T>(string text, string format, Func<JsonElement, T> read)
    {
        try
        {
            using var document = JsonDocument.Parse(Guard.NotNull(text), s_strict);
            JsonElement root = document.RootElement;
            if (Text(root, "format") is var found && found != format)
            {
                throw new FormatException($"The document is '{found}', not '{format}'.");
            }

            int version = root.GetProperty("version").GetInt32();
            return version == Version ? read(root) : throw new FormatException($"The document is of version {Numbers.Exact(version)}; this library reads version {Numbers.Exact(Version)}.");
        }
        catch (Exception problem) when (problem is JsonException or KeyNotFoundException or InvalidOperationException or ArgumentException)
        {
            throw new FormatException($"The document is not a '{format}': {problem.Message}", problem);
        }
    }

    private static string Text(JsonElement item, string name) => item.GetProperty(name).GetString() ?? throw new FormatException($"'{name}' must not be null.");

    private static ValueList<string> TextList(JsonElement item, string name)
        => item.TryGetProperty(name, out JsonElement list) ? List(list, t => t.GetString() ?? throw new FormatException($"'{name}' must not hold null.")) : default;

    private static ValueList<T> List<T>(JsonElement list, Func<JsonElement, T> read) => ValueList<T>.From(list.EnumerateArray().Select(read));
}
