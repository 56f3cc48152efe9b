using System.Buffers;

namespace CalcService.Api.Writing;

/// <summary>Where a member of an object or an item of a list lies in what was written.</summary>
/// <param name="Start">Its first byte.</param>
/// <param name="End">The byte behind its last.</param>
/// <param name="Parts">The first of its own members or items in the outline; where it has none there, <see cref="Outline.NoParts"/>.</param>
internal readonly record struct Piece(int Start, int End, int Parts);

/// <summary>Where everything lies in what was written, so that it can be put in another order without being written again.</summary>
internal sealed class Outline : IDisposable
{
    public const int NoParts = -1;

    private Piece[] _pieces = ArrayPool<Piece>.Shared.Rent(1024);
    private int _count;

    /// <summary>The parts of what was written last, where it is an object or a list of objects.</summary>
    public int Last { get; private set; } = NoParts;

    public Piece this[int index] => _pieces[index];

    /// <summary>Room for the members of an object or the items of a list, one after another; the place of the first.</summary>
    public int Reserve(int count)
    {
        var first = _count;
        _count += count;
        if (_count > _pieces.Length)
        {
            var more = ArrayPool<Piece>.Shared.Rent(Math.Max(2 * _pieces.Length, _count));
            _pieces.AsSpan(0, first).CopyTo(more);
            ArrayPool<Piece>.Shared.Return(_pieces);
            _pieces = more;
        }

        return first;
    }

    /// <summary>Notes where a part lies, behind what was noted of its own parts.</summary>
    public void Note(int index, int start, int end)
    {
        _pieces[index] = new(start, end, Last);
        Last = NoParts;
    }

    /// <summary>Ends an object or a list of which all parts are noted.</summary>
    public void End(int first) => Last = first;

    public void Dispose()
    {
        ArrayPool<Piece>.Shared.Return(_pieces);
        _pieces = [];
    }
}
