using System.Text.Json;

namespace Hydrocolloid.Formulation.Catalogues;

/// <summary>
/// Reads a catalogue document in one pass, from front to back. It stands on a value: what reads an object or a list starts on its
/// opening and ends on its close, and what takes a word or a number stays where it is.
/// </summary>
internal ref struct JsonCursor
{
    private Utf8JsonReader _json;

    public JsonCursor(ReadOnlySpan<byte> utf8)
    {
        _json = new Utf8JsonReader(utf8);
        _json.Read();
    }

    /// <summary>Where the value starts, in bytes.</summary>
    public readonly int Start => (int)_json.TokenStartIndex;

    /// <summary>Where the token that the cursor stands on ends, in bytes.</summary>
    public readonly int End => (int)_json.BytesConsumed;

    /// <summary>Goes into an object.</summary>
    public readonly void OpenObject(string pointer)
    {
        if (_json.TokenType != JsonTokenType.StartObject)
        {
            throw FigureReader.Broken(pointer, "must be an object");
        }
    }

    /// <summary>Goes into a list.</summary>
    public readonly void OpenList(string pointer)
    {
        if (_json.TokenType != JsonTokenType.StartArray)
        {
            throw FigureReader.Broken(pointer, "must be a list");
        }
    }

    /// <summary>Goes on to the value of the next member of an object, or to the object's close.</summary>
    /// <param name="word">The member's name.</param>
    public bool NextMember(out string word)
    {
        _json.Read();
        if (_json.TokenType == JsonTokenType.EndObject)
        {
            word = "";
            return false;
        }

        word = WordMemo.Of(ref _json);
        _json.Read();
        return true;
    }

    /// <summary>Goes on to the next item of a list, or to the list's close.</summary>
    public bool NextItem()
    {
        _json.Read();
        return _json.TokenType != JsonTokenType.EndArray;
    }

    public void Skip() => _json.Skip();

    public readonly bool Is(string text) => _json.TokenType == JsonTokenType.String && _json.ValueTextEquals(text);

    public readonly string Text(string pointer)
        => _json.TokenType == JsonTokenType.String ? _json.GetString()! : throw FigureReader.Broken(pointer, "must be a text");

    /// <summary>A text of a few that are said again and again, such as the id of a source.</summary>
    public string Word(string pointer)
        => _json.TokenType == JsonTokenType.String ? WordMemo.Of(ref _json) : throw FigureReader.Broken(pointer, "must be a text");

    public readonly double Number(string pointer)
    {
        double number = _json.TokenType == JsonTokenType.Number ? _json.GetDouble() : throw FigureReader.Broken(pointer, "must be a number");
        return double.IsInfinity(number) ? throw FigureReader.Broken(pointer, "is too large a number") : number;
    }

    public readonly bool Flag(string pointer)
        => _json.TokenType is JsonTokenType.True or JsonTokenType.False ? _json.GetBoolean() : throw FigureReader.Broken(pointer, "must be true or false");
}
