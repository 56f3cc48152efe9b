using System.Text.Json.Serialization;
using CalcService.Api.Problems;
using CalcService.Api.Writing;

namespace CalcService.Api.Batches;

/// <summary>The output for one line of a batch.</summary>
public sealed record BatchLine
{
    /// <summary>Number of the input line, blank lines counted, from 1.</summary>
    public required long Line { get; init; }

    /// <summary>The request's reference, or null.</summary>
    public required string? Id { get; init; }

    /// <summary>The status that the line alone would have got.</summary>
    public required int Status { get; init; }

    /// <summary>The answer, where the status is 200.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull), JsonConverter(typeof(ShapedConverter))]
    public object? Answer { get; init; }

    /// <summary>The problem, where it isn't.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Problem? Problem { get; init; }
}

/// <summary>The last line of a batch that came to its end.</summary>
public sealed record BatchEnd
{
    /// <summary>What became of the batch.</summary>
    public required BatchSummary Summary { get; init; }
}

/// <summary>What became of a batch.</summary>
public sealed record BatchSummary
{
    /// <summary>Lines that were not blank.</summary>
    public required long Lines { get; init; }

    /// <summary>Lines with an answer.</summary>
    public required long Answered { get; init; }

    /// <summary>Lines with a problem.</summary>
    public required long Rejected { get; init; }

    /// <summary>SHA-256 over the decompressed bytes of the request.</summary>
    public required string InputDigest { get; init; }

    /// <summary>What the lines say together, where the calculation gathers it.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull), JsonConverter(typeof(ShapedConverter))]
    public object? Statistics { get; init; }
}

/// <summary>The last line of a batch that was given up: nothing in it may be trusted.</summary>
public sealed record BatchAborted
{
    /// <summary>Why.</summary>
    public required Problem Aborted { get; init; }
}
