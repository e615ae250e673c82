using System.Buffers;

namespace Hydrocolloid.Formulation.Serialization;

/// <summary>Bytes that grow as they are written.</summary>
internal sealed class ByteBuffer(int capacity) : IBufferWriter<byte>
{
    private byte[] _bytes = new byte[capacity];

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

    private void Reserve(int sizeHint)
    {
        if (_bytes.Length - Length < Math.Max(sizeHint, 1))
        {
            System.Array.Resize(ref _bytes, Math.Max(_bytes.Length * 2, Length + sizeHint));
        }
    }
}
