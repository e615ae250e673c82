using System.Buffers;
using System.Diagnostics.CodeAnalysis;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Serialization;

/// <summary>
/// Formulas as JSON documents, version 1 (docs/formula-json.md). Writing is canonical: equal formulas give the same bytes, and reading
/// them back gives an equal formula. Reading is strict: what is not a formula is refused with every reason and its place.
/// </summary>
public static class FormulaJson
{
    internal static readonly JsonWriterOptions Layout = new()
    {
        Indented = true,
        IndentCharacter = ' ',
        IndentSize = 2,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, // a document is a file, not a part of a web page: é stays é
    };

    /// <summary>Writes a formula; ingredients that the built-in catalogue does not have are described in the document.</summary>
    /// <param name="formula">The formula.</param>
    /// <returns>The document.</returns>
    /// <exception cref="FormulaJsonException">No document can hold the formula; the exception says what and where.</exception>
    public static string Write(Formula formula) => Write(formula, Catalogue.BuiltIn);

    /// <summary>Writes a formula; ingredients that a catalogue does not have are described in the document.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="catalogue">The catalogue that whoever reads the document has too.</param>
    /// <returns>The document.</returns>
    /// <exception cref="FormulaJsonException">No document can hold the formula; the exception says what and where.</exception>
    public static string Write(Formula formula, Catalogue catalogue)
    {
        using ByteBuffer bytes = Buffer(formula, catalogue);
        return Encoding.UTF8.GetString(bytes.Array, 0, bytes.Length);
    }

    /// <summary>Writes a formula as UTF-8 without a byte order mark; ingredients that the built-in catalogue does not have are described in the document.</summary>
    /// <param name="formula">The formula.</param>
    /// <returns>The document.</returns>
    /// <exception cref="FormulaJsonException">No document can hold the formula; the exception says what and where.</exception>
    public static byte[] WriteUtf8(Formula formula) => WriteUtf8(formula, Catalogue.BuiltIn);

    /// <summary>Writes a formula as UTF-8 without a byte order mark; ingredients that a catalogue does not have are described in the document.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="catalogue">The catalogue that whoever reads the document has too.</param>
    /// <returns>The document.</returns>
    /// <exception cref="FormulaJsonException">No document can hold the formula; the exception says what and where.</exception>
    public static byte[] WriteUtf8(Formula formula, Catalogue catalogue)
    {
        using ByteBuffer bytes = Buffer(formula, catalogue);
        return bytes.ToArray();
    }

    /// <summary>Writes a formula to a stream as UTF-8 without a byte order mark; nothing is written if it throws <see cref="FormulaJsonException"/>.</summary>
    /// <param name="stream">The stream; stays open.</param>
    /// <param name="formula">The formula.</param>
    /// <exception cref="FormulaJsonException">No document can hold the formula; the exception says what and where.</exception>
    public static void Write(Stream stream, Formula formula) => Write(stream, formula, Catalogue.BuiltIn);

    /// <summary>Writes a formula to a stream as UTF-8 without a byte order mark; nothing is written if it throws <see cref="FormulaJsonException"/>.</summary>
    /// <param name="stream">The stream; stays open.</param>
    /// <param name="formula">The formula.</param>
    /// <param name="catalogue">The catalogue that whoever reads the document has too.</param>
    /// <exception cref="FormulaJsonException">No document can hold the formula; the exception says what and where.</exception>
    public static void Write(Stream stream, Formula formula, Catalogue catalogue)
    {
        Guard.NotNull(stream);
        using ByteBuffer bytes = Buffer(formula, catalogue);
        stream.Write(bytes.Array, 0, bytes.Length);
    }

    /// <summary>Writes a formula as a value of a larger document, with the layout of its writer; nothing is written if it throws <see cref="FormulaJsonException"/>.</summary>
    /// <param name="writer">The writer, where a value is due.</param>
    /// <param name="formula">The formula.</param>
    /// <exception cref="FormulaJsonException">No document can hold the formula; the exception says what and where.</exception>
    public static void Write(Utf8JsonWriter writer, Formula formula) => Write(writer, formula, Catalogue.BuiltIn);

    /// <summary>Writes a formula as a value of a larger document, with the layout of its writer; nothing is written if it throws <see cref="FormulaJsonException"/>.</summary>
    /// <param name="writer">The writer, where a value is due.</param>
    /// <param name="formula">The formula.</param>
    /// <param name="catalogue">The catalogue that whoever reads the document has too.</param>
    /// <exception cref="FormulaJsonException">No document can hold the formula; the exception says what and where.</exception>
    public static void Write(Utf8JsonWriter writer, Formula formula, Catalogue catalogue)
    {
        Guard.NotNull(writer);
        new DocumentWriter(Guard.NotNull(formula), Guard.NotNull(catalogue)).Write(writer);
    }

    /// <summary>Reads a formula whose ingredients are in the document or in the built-in catalogue.</summary>
    /// <param name="json">The document.</param>
    /// <returns>The formula. An ingredient that neither knows is kept by its id: its <see cref="Ingredient.IsKnown"/> is false.</returns>
    /// <exception cref="FormulaJsonException">The document is not a formula; the exception lists every problem.</exception>
    public static Formula Read(string json) => Read(json, Catalogue.BuiltIn);

    /// <summary>Reads a formula whose ingredients are in the document or in a catalogue.</summary>
    /// <param name="json">The document.</param>
    /// <param name="catalogue">The catalogue.</param>
    /// <returns>The formula. An ingredient that neither knows is kept by its id: its <see cref="Ingredient.IsKnown"/> is false.</returns>
    /// <exception cref="FormulaJsonException">The document is not a formula; the exception lists every problem.</exception>
    public static Formula Read(string json, Catalogue catalogue)
        => TryRead(json, catalogue, out Formula? formula, out ValueList<FormulaJsonProblem> problems) ? formula : throw FormulaJsonException.Unreadable(problems);

    /// <summary>Reads a formula whose ingredients are in the document or in the built-in catalogue.</summary>
    /// <param name="utf8">The document in UTF-8; a byte order mark is skipped.</param>
    /// <returns>The formula. An ingredient that neither knows is kept by its id: its <see cref="Ingredient.IsKnown"/> is false.</returns>
    /// <exception cref="FormulaJsonException">The document is not a formula; the exception lists every problem.</exception>
    public static Formula Read(ReadOnlySpan<byte> utf8) => Read(utf8, Catalogue.BuiltIn);

    /// <summary>Reads a formula whose ingredients are in the document or in a catalogue.</summary>
    /// <param name="utf8">The document in UTF-8; a byte order mark is skipped.</param>
    /// <param name="catalogue">The catalogue.</param>
    /// <returns>The formula. An ingredient that neither knows is kept by its id: its <see cref="Ingredient.IsKnown"/> is false.</returns>
    /// <exception cref="FormulaJsonException">The document is not a formula; the exception lists every problem.</exception>
    public static Formula Read(ReadOnlySpan<byte> utf8, Catalogue catalogue)
        => TryRead(utf8, catalogue, out Formula? formula, out ValueList<FormulaJsonProblem> problems) ? formula : throw FormulaJsonException.Unreadable(problems);

    /// <summary>Reads a formula from a stream to its end; ingredients are in the document or in the built-in catalogue.</summary>
    /// <param name="stream">The document in UTF-8; stays open. What the stream itself throws goes through.</param>
    /// <returns>The formula. An ingredient that neither knows is kept by its id: its <see cref="Ingredient.IsKnown"/> is false.</returns>
    /// <exception cref="FormulaJsonException">The document is not a formula; the exception lists every problem.</exception>
    public static Formula Read(Stream stream) => Read(stream, Catalogue.BuiltIn);

    /// <summary>Reads a formula from a stream to its end; ingredients are in the document or in a catalogue.</summary>
    /// <param name="stream">The document in UTF-8; stays open. What the stream itself throws goes through.</param>
    /// <param name="catalogue">The catalogue.</param>
    /// <returns>The formula. An ingredient that neither knows is kept by its id: its <see cref="Ingredient.IsKnown"/> is false.</returns>
    /// <exception cref="FormulaJsonException">The document is not a formula; the exception lists every problem.</exception>
    public static Formula Read(Stream stream, Catalogue catalogue)
    {
        using var bytes = new MemoryStream();
        Guard.NotNull(stream).CopyTo(bytes);
        return Read(bytes.GetBuffer().AsSpan(0, (int)bytes.Length), catalogue);
    }

    /// <summary>Reads a formula without throwing; ingredients are in the document or in the built-in catalogue.</summary>
    /// <param name="json">The document.</param>
    /// <param name="formula">The formula; null if the document is not one.</param>
    /// <param name="problems">Every problem; empty if there is none.</param>
    /// <returns>Whether the document is a formula.</returns>
    public static bool TryRead(string json, [NotNullWhen(true)] out Formula? formula, out ValueList<FormulaJsonProblem> problems)
        => TryRead(json, Catalogue.BuiltIn, out formula, out problems);

    /// <summary>Reads a formula without throwing; ingredients are in the document or in a catalogue.</summary>
    /// <param name="json">The document.</param>
    /// <param name="catalogue">The catalogue.</param>
    /// <param name="formula">The formula; null if the document is not one.</param>
    /// <param name="problems">Every problem; empty if there is none.</param>
    /// <returns>Whether the document is a formula.</returns>
    public static bool TryRead(string json, Catalogue catalogue, [NotNullWhen(true)] out Formula? formula, out ValueList<FormulaJsonProblem> problems)
    {
        Guard.NotNull(json);
        Guard.NotNull(catalogue);
        byte[] bytes = ArrayPool<byte>.Shared.Rent(Encoding.UTF8.GetMaxByteCount(json.Length));
        try
        {
            int length = UnicodeText.StrictUtf8.GetBytes(json, 0, json.Length, bytes, 0);
            formula = DocumentParser.Parse(bytes.AsSpan(0, length), catalogue, out problems);
        }
        catch (EncoderFallbackException e)
        {
            byte[] before = Encoding.UTF8.GetBytes(json.Substring(0, e.Index));
            problems = ValueList<FormulaJsonProblem>.Own(
                [DocumentPlaces.At(before.Length, before, new FormulaJsonProblem("text-invalid", "", "The text holds half of a surrogate pair, which is not text."))]);
            formula = null;
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(bytes);
        }

        return formula is not null;
    }

    /// <summary>Reads a formula without throwing; ingredients are in the document or in the built-in catalogue.</summary>
    /// <param name="utf8">The document in UTF-8; a byte order mark is skipped.</param>
    /// <param name="formula">The formula; null if the document is not one.</param>
    /// <param name="problems">Every problem; empty if there is none.</param>
    /// <returns>Whether the document is a formula.</returns>
    public static bool TryRead(ReadOnlySpan<byte> utf8, [NotNullWhen(true)] out Formula? formula, out ValueList<FormulaJsonProblem> problems)
        => TryRead(utf8, Catalogue.BuiltIn, out formula, out problems);

    /// <summary>Reads a formula without throwing; ingredients are in the document or in a catalogue.</summary>
    /// <param name="utf8">The document in UTF-8; a byte order mark is skipped.</param>
    /// <param name="catalogue">The catalogue.</param>
    /// <param name="formula">The formula; null if the document is not one.</param>
    /// <param name="problems">Every problem; empty if there is none.</param>
    /// <returns>Whether the document is a formula.</returns>
    public static bool TryRead(ReadOnlySpan<byte> utf8, Catalogue catalogue, [NotNullWhen(true)] out Formula? formula, out ValueList<FormulaJsonProblem> problems)
    {
        formula = DocumentParser.Parse(utf8, Guard.NotNull(catalogue), out problems);
        return formula is not null;
    }

    private static ByteBuffer Buffer(Formula formula, Catalogue catalogue)
    {
        var document = new DocumentWriter(Guard.NotNull(formula), Guard.NotNull(catalogue));
        var bytes = new ByteBuffer(256 + formula.Lines.Count * 128);
        using var writer = new Utf8JsonWriter(bytes, Layout);
        document.Write(writer);
        writer.Flush();
        return bytes;
    }
}
