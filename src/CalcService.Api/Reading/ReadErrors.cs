using System.Globalization;
using System.Text;

namespace CalcService.Api.Reading;

/// <summary>The place that the reader is at, and everything wrong so far.</summary>
public sealed class ReadErrors
{
    /// <summary>Errors listed at the most; one more says that there were more.</summary>
    public const int Most = 100;

    private const int ShownCharacters = 40;

    private readonly List<ReadError> _errors = [];
    private readonly object[] _path = new object[BodyReader.MaxDepth + 1];

    /// <summary>Levels below the root.</summary>
    public int Depth { get; private set; }

    public IReadOnlyList<ReadError> All => _errors;

    /// <summary>
    /// Errors that left something out of what was read. Where one lies within an object, nobody knows what the object would say, and so it
    /// can't be held against itself.
    /// </summary>
    public int Holes { get; private set; }

    public bool IsFull => _errors.Count >= Most;

    /// <summary>Goes down to a member or an item.</summary>
    public void Enter(object segment) => _path[Depth++] = segment;

    /// <summary>Goes back up.</summary>
    public void Leave() => Depth--;

    /// <summary>400 at this place.</summary>
    public void Unreadable(string code, string detail) => Add(code, detail, isUnreadable: true);

    /// <summary>422 at this place.</summary>
    public void NotComputable(string code, string detail) => Add(code, detail, isUnreadable: false);

    /// <summary>422 at this place, where what was read is kept.</summary>
    public void OutOfRange(string detail, string code = "range") => Add(code, detail, isUnreadable: false, isHole: false);

    /// <summary>422 at a place below this one, where what was read is kept.</summary>
    public void Contradiction(string pointer, string code, string detail) => Add(code, detail, isUnreadable: false, isHole: false, pointer);

    /// <summary>400 at a member of this place.</summary>
    public void UnreadableAt(string member, string code, string detail)
    {
        Enter(member);
        Unreadable(code, detail);
        Leave();
    }

    /// <summary>422 at a member of this place.</summary>
    public void NotComputableAt(string member, string code, string detail)
    {
        Enter(member);
        NotComputable(code, detail);
        Leave();
    }

    /// <summary>The body is no JSON: said however many errors there were before.</summary>
    public void NotJson(string detail) => _errors.Add(new("", "syntax", detail, IsUnreadable: true));

    /// <summary>Says that more is wrong than is listed.</summary>
    public static ReadError TooMany(bool isUnreadable) =>
        new("", "too-many-errors", $"More than {Most} errors; only the first are listed.", isUnreadable);

    /// <summary>What a client sent, short and safe enough to show it back.</summary>
    public static string Show(string text)
    {
        var shown = new StringBuilder();
        var count = 0;
        foreach (var c in text.EnumerateRunes())
        {
            if (count++ == ShownCharacters)
            {
                shown.Append('…');
                break;
            }

            shown.Append(PlainText.IsShown(c) ? c : Rune.ReplacementChar);
        }

        return shown.ToString();
    }

    private void Add(string code, string detail, bool isUnreadable, bool isHole = true, string below = "")
    {
        Holes += isHole ? 1 : 0;
        if (!IsFull)
        {
            _errors.Add(new(Pointer() + below, code, detail, isUnreadable));
            return;
        }

        // Nothing is lost without being said, and one unreadable error makes the whole body unreadable.
        var more = TooMany(isUnreadable);
        if (_errors.Count == Most)
        {
            _errors.Add(more);
        }
        else if (isUnreadable)
        {
            _errors[Most] = more;
        }
    }

    private string Pointer()
    {
        var pointer = new StringBuilder();
        foreach (var segment in _path.AsSpan(0, Depth))
        {
            pointer.Append('/');
            if (segment is string name)
            {
                pointer.Append(name.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal));
            }
            else
            {
                pointer.Append(CultureInfo.InvariantCulture, $"{segment}");
            }
        }

        return pointer.ToString();
    }
}
