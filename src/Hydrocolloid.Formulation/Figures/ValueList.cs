using System.Collections;
using System.Collections.Immutable;

namespace Hydrocolloid.Formulation;

/// <summary>An immutable list that is equal by content. The default value is the empty list.</summary>
/// <typeparam name="T">The type of the items.</typeparam>
public readonly struct ValueList<T> : IReadOnlyList<T>, IEquatable<ValueList<T>>
{
    private readonly T[]? _items;

    private ValueList(T[] items) => _items = items.Length == 0 ? null : items;

    /// <summary>The empty list.</summary>
    public static ValueList<T> Empty => default;

    /// <summary>How many items there are.</summary>
    public int Count => _items?.Length ?? 0;

    /// <summary>True if there are no items.</summary>
    public bool IsEmpty => _items is null;

    /// <summary>An item by position.</summary>
    /// <param name="index">From 0 to <see cref="Count"/> - 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such position.</exception>
    public T this[int index] => index >= 0 && index < Count ? _items![index] : throw new ArgumentOutOfRangeException(nameof(index));

    internal ReadOnlySpan<T> Span => _items;

    /// <summary>True if both lists hold equal items in the same order.</summary>
    /// <param name="left">One list.</param>
    /// <param name="right">The other list.</param>
    /// <returns>Whether they are equal.</returns>
    public static bool operator ==(ValueList<T> left, ValueList<T> right) => left.Equals(right);

    /// <summary>True if the lists differ.</summary>
    /// <param name="left">One list.</param>
    /// <param name="right">The other list.</param>
    /// <returns>Whether they differ.</returns>
    public static bool operator !=(ValueList<T> left, ValueList<T> right) => !left.Equals(right);

    /// <summary>Copies a sequence into a list.</summary>
    /// <param name="items">The items.</param>
    /// <returns>The list.</returns>
    public static ValueList<T> From(IEnumerable<T> items) => new([.. Internal.Guard.NotNull(items)]);

    /// <inheritdoc/>
    public bool Equals(ValueList<T> other)
    {
        if (ReferenceEquals(_items, other._items))
        {
            return true;
        }

        if (Count != other.Count)
        {
            return false;
        }

        for (int i = 0; i < Count; i++)
        {
            if (!EqualityComparer<T>.Default.Equals(_items![i], other._items![i]))
            {
                return false;
            }
        }

        return true;
    }

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is ValueList<T> other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        int hash = Count;
        foreach (T item in Span)
        {
            hash = unchecked(hash * 31 + (item?.GetHashCode() ?? 0));
        }

        return hash;
    }

    /// <summary>Copies the list into an immutable array.</summary>
    /// <returns>The array.</returns>
    public ImmutableArray<T> ToImmutableArray() => _items is null ? ImmutableArray<T>.Empty : ImmutableArray.Create(_items);

    /// <summary>Goes through the items in order.</summary>
    /// <returns>The enumerator.</returns>
    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)(_items ?? [])).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>The items, separated by commas.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Join(", ", this);

    internal static ValueList<T> Own(T[] items) => new(items);
}
