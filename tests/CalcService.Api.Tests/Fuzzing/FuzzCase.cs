namespace CalcService.Api.Tests.Fuzzing;

/// <summary>What is known about a request that was made from the document.</summary>
public enum Expected
{
    /// <summary>It fits its schema, so it can be read: 200, or 422 where its values contradict each other.</summary>
    Readable,

    /// <summary>It is an example written in another way: 200, and the same record.</summary>
    SameRecord,

    /// <summary>One thing is wrong with it, and the refusal points there.</summary>
    Refused,
}

/// <summary>A request made from the document.</summary>
/// <param name="Path">Where it goes.</param>
/// <param name="Body">Its text.</param>
/// <param name="Expected">What is known about it.</param>
/// <param name="What">In words: which example, and what was done to it.</param>
public sealed record FuzzCase(string Path, string Body, Expected Expected, string What)
{
    /// <summary>The status of a refusal.</summary>
    public int Status { get; init; }

    /// <summary>Where the refusal points.</summary>
    public string Pointer { get; init; } = "";

    /// <summary>The record of the example that it is.</summary>
    public string? Example { get; init; }

    public override string ToString() => $"{What}\nPOST {Path}\n{Body}";
}
