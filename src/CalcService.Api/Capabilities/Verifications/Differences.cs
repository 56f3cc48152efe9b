namespace CalcService.Api.Capabilities.Verifications;

/// <summary>What a walk through an archived answer found: of what counts the first difference, of all else every place.</summary>
/// <param name="knowsWords">Whether its words can be compared.</param>
internal sealed class Differences(bool knowsWords)
{
    private readonly List<string> _beside = [];
    private readonly List<string> _unknown = [];
    private readonly List<string> _unread = [];

    /// <summary>The first difference that counts.</summary>
    public (string Pointer, string Reason)? First { get; private set; }

    /// <summary>What doesn't count and isn't as computed.</summary>
    public IReadOnlyList<string> Beside => _beside;

    /// <summary>Members that the contract doesn't know.</summary>
    public IReadOnlyList<string> Unknown => _unknown;

    /// <summary>What is other than computed and can't be judged.</summary>
    public IReadOnlyList<string> Unread => _unread;

    public void Add(Place at, string reason)
    {
        switch (at.Standing)
        {
            case Standing.Counts:
                First ??= (at.Pointer, reason);
                break;
            case Standing.Words when !knowsWords:
                AddUnread(at);
                break;
            default:
                _beside.Add(at.Pointer);
                break;
        }
    }

    public void AddUnread(Place at) => _unread.Add(at.Pointer);

    public void AddUnknown(IEnumerable<string> pointers) => _unknown.AddRange(pointers);
}
