namespace CalcService.Api.Writing;

/// <summary>The forms in which an object of the contract is written.</summary>
public enum JsonForm
{
    /// <summary>An answer as it is sent: all members in the order of the contract.</summary>
    Sent,

    /// <summary>What the digest of a request covers: canonical, in SI, without what is left out.</summary>
    Canonical,
}
