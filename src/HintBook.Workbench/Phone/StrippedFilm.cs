using HintBook.Photos.Films.Metadata;

namespace HintBook.Workbench.Phone;

/// <summary>A film as it is published, without what it tells beside its pictures, read from the maker's own file, which stays as it is.</summary>
/// <param name="original">The maker's file.</param>
/// <param name="stripping">What is overwritten.</param>
internal sealed class StrippedFilm(FileStream original, FilmStripping stripping) : Stream
{
    public override bool CanRead => true;

    public override bool CanSeek => true;

    public override bool CanWrite => false;

    public override long Length => original.Length;

    public override long Position
    {
        get => original.Position;
        set => original.Position = value;
    }

    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    public override int Read(Span<byte> buffer)
    {
        var start = original.Position;
        var read = original.Read(buffer);
        Overwrite(buffer[..read], start);
        return read;
    }

    public override async ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default)
    {
        var start = original.Position;
        var read = await original.ReadAsync(buffer, cancellationToken).ConfigureAwait(false);
        Overwrite(buffer.Span[..read], start);
        return read;
    }

    public override Task<int> ReadAsync(byte[] buffer, int offset, int count, CancellationToken cancellationToken) =>
        ReadAsync(buffer.AsMemory(offset, count), cancellationToken).AsTask();

    public override long Seek(long offset, SeekOrigin origin) => original.Seek(offset, origin);

    public override void Flush()
    {
        // Nothing is written.
    }

    public override void SetLength(long value) => throw new NotSupportedException("The film is only read.");

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException("The film is only read.");

    protected override void Dispose(bool disposing)
    {
        if (disposing)
            original.Dispose();
        base.Dispose(disposing);
    }

    private void Overwrite(Span<byte> read, long start)
    {
        foreach (var (at, bytes, zeros) in stripping.Overwrites)
        {
            var (from, to) = (Math.Max(at, start), Math.Min(at + bytes.Length + zeros, start + read.Length));
            for (var place = from; place < to; place++)
                read[(int)(place - start)] = place - at < bytes.Length ? bytes[(int)(place - at)] : (byte)0;
        }
    }
}
