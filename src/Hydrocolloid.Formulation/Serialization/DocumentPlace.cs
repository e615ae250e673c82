using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation.Serialization;

/// <summary>A part of a document while it is read; its pointer is only written out for a problem.</summary>
internal readonly struct DocumentPlace
{
    private readonly string? _list;
    private readonly int _phase;
    private readonly int _index;

    private DocumentPlace(string? list, int phase, int index)
    {
        _list = list;
        _phase = phase;
        _index = index;
    }

    public static DocumentPlace Whole => default;

    public static DocumentPlace Item(string list, int index) => new(list, -1, index);

    public static DocumentPlace Part(int index) => new("/base", -1, index);

    public static DocumentPlace Addition(int phase, int index) => new("/phases", phase, index);

    public string Pointer(string path) => _list is null ? path
        : _phase < 0 ? $"{_list}/{Numbers.Exact(_index)}{path}"
        : $"{_list}/{Numbers.Exact(_phase)}/add/{Numbers.Exact(_index)}{path}";
}
