using Hydrocolloid.Formulation.Internal;

namespace Hydrocolloid.Formulation;

/// <summary>
/// The losses between the pan and the plate, in the order in which they happen: evaporation, straining, transfer, trimming.
/// Immutable, equal by content.
/// </summary>
public sealed record Losses
{
    private readonly Loss _evaporation = Loss.None;
    private readonly Loss _straining = Loss.None;
    private readonly Loss _transfer = Loss.None;
    private readonly Loss _trimming = Loss.None;

    /// <summary>No losses.</summary>
    public static Losses None { get; } = new();

    /// <summary>Water that boils off: a percentage of the assembled mass, or a fixed mass.</summary>
    public Loss Evaporation
    {
        get => _evaporation;
        init => _evaporation = Guard.NotNull(value, nameof(Evaporation));
    }

    /// <summary>Whether the water that boiled off is put back by weight.</summary>
    public bool ToppedUp { get; init; }

    /// <summary>Mix that stays in the strainer: a percentage of what is strained, or a fixed mass.</summary>
    public Loss Straining
    {
        get => _straining;
        init => _straining = Guard.NotNull(value, nameof(Straining));
    }

    /// <summary>Mix that stays on pan, jug and moulds: a percentage of what is transferred, or a fixed mass.</summary>
    public Loss Transfer
    {
        get => _transfer;
        init => _transfer = Guard.NotNull(value, nameof(Transfer));
    }

    /// <summary>Set gel cut away: a percentage of the set gel, or a fixed mass.</summary>
    public Loss Trimming
    {
        get => _trimming;
        init => _trimming = Guard.NotNull(value, nameof(Trimming));
    }

    internal bool IsNone => _evaporation.IsNone && _straining.IsNone && _transfer.IsNone && _trimming.IsNone;

    /// <summary>The losses as text.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => IsNone ? "none" : string.Join(", ", new[]
    {
        _evaporation.IsNone ? null : $"evaporation {_evaporation}{(ToppedUp ? " (topped up)" : "")}",
        _straining.IsNone ? null : $"straining {_straining}",
        _transfer.IsNone ? null : $"transfer {_transfer}",
        _trimming.IsNone ? null : $"trimming {_trimming}",
    }.Where(t => t is not null));

    internal double EvaporatedGrams(double assembledGrams) => _evaporation.LostFrom(assembledGrams);

    internal double FinishedGrams(double assembledGrams)
    {
        double grams = ToppedUp ? assembledGrams : assembledGrams - EvaporatedGrams(assembledGrams);
        grams -= _straining.LostFrom(grams);
        grams -= _transfer.LostFrom(grams);
        grams -= _trimming.LostFrom(grams);
        return grams;
    }

    /// <summary>What is cast: everything but the trimming of the set gel is lost by then.</summary>
    internal double CastGrams(double assembledGrams) => (this with { Trimming = Loss.None }).FinishedGrams(assembledGrams);

    internal double AssembledForCast(double castGrams) => (this with { Trimming = Loss.None }).AssembledGrams(castGrams);

    internal double AssembledGrams(double finishedGrams)
    {
        double grams = _straining.Before(_transfer.Before(_trimming.Before(finishedGrams)));
        return ToppedUp ? grams : _evaporation.Before(grams);
    }
}
