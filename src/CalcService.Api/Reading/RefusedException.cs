namespace CalcService.Api.Reading;

/// <summary>A request that could be read, and turned out on the way not to be computable.</summary>
public sealed class RefusedException : Exception
{
    public RefusedException(IReadOnlyList<ReadError> errors)
        : base("The request can't be computed.") => Errors = errors;

    public RefusedException()
        : this([])
    {
    }

    public RefusedException(string message)
        : this([new("", "refused", message, IsUnreadable: false)])
    {
    }

    public RefusedException(string message, Exception innerException)
        : base(message, innerException) => Errors = [];

    public IReadOnlyList<ReadError> Errors { get; }

    /// <summary>A number of the result overflowed.</summary>
    public static RefusedException NotFinite() =>
        new([new("", "not-finite", "A number of the result overflows: the sizes do not belong together.", IsUnreadable: false)]);
}
