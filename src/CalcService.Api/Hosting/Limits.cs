namespace CalcService.Api.Hosting;

/// <summary>What the service takes at the most; /v1/build tells it. What can be set is in <see cref="ServiceSettings"/>.</summary>
public static class Limits
{
    /// <summary>Bytes of a body, after decompression.</summary>
    public const int BodyBytes = 1 << 20;

    /// <summary>Bytes of the body of a verification, which brings an archived answer along.</summary>
    public const int VerificationBytes = 4 << 20;

    /// <summary>Bytes of a line of a batch.</summary>
    public const int LineBytes = 64 << 10;

    /// <summary>Lines of a batch, blank ones too.</summary>
    public const int BatchLines = 1_000_000;

    /// <summary>
    /// Bytes of a batch, as they are sent, that are read before anything is written; above, the client must read while it sends.
    /// </summary>
    public const int BufferedBatchBytes = 8 << 20;

    /// <summary>Bytes of a batch after decompression.</summary>
    public const long BatchBytes = 4L << 30;

    /// <summary>Bytes after decompression for each that was sent, beyond the first <see cref="BufferedBatchBytes"/>.</summary>
    public const int BatchExpansion = 250;

    /// <summary>Bytes of all headers of a request.</summary>
    public const int HeaderBytes = 32 << 10;
}
