namespace CalcService.Api.Writing;

/// <summary>The forms in which an object of the contract is written.</summary>
public enum JsonForm
{
    /// <summary>As it is sent: all members in the order of the contract.</summary>
    Sent,

    /// <summary>What the digest of a request covers: members sorted, in SI, without what is absent or undigested.</summary>
    Canonical,

    /// <summary>
    /// What the digest of an answer covers: members sorted, in the answer's units, nulls kept, without what is undigested.
    /// </summary>
    Digested,
}
