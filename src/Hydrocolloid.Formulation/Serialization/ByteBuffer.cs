using System.Buffers;

namespace Hydrocolloid.Formulation.Serialization;

/// <summary>Bytes that grow as they are written, on loan from the shared pool.</summary>
internal sealed class ByteBuffer(int capacity) : IBufferWriter<byte>, IDisposable
{
    private byte[] _bytes = ArrayPool<byte>.Shared.Rent(capacity);

    public byte[] Array => _bytes;

    public int Length { get; private set; }

    public void Advance(int count) => Length += count;

    public Memory<byte> GetMemory(int sizeHint = 0)
    {
        Reserve(sizeHint);
        return _bytes.AsMemory(Length);
    }

    public Span<byte> GetSpan(int sizeHint = 0)
    {
        Reserve(sizeHint);
        return _bytes.AsSpan(Length);
    }

    public byte[] ToArray() => _bytes.AsSpan(0, Length).ToArray();

    public void Dispose()
    {
        ArrayPool<byte>.Shared.Return(_bytes);
        _bytes = [];
        Length = 0;
    }

    private void Reserve(int sizeHint)
    {
        if (_bytes.Length - Length < Math.Max(sizeHint, 1))
        {
            byte[] larger = ArrayPool<byte>.Shared.Rent(Math.Max(_bytes.Length * 2, Length + sizeHint));
            _bytes.AsSpan(0, Length).CopyTo(larger);
            ArrayPool<byte>.Shared.Return(_bytes);
            _bytes = larger;
        }
    }
}
