using System.Text.Json.Nodes;
using CalcService.Api.OpenApi;

namespace CalcService.Api.Capabilities.Verifications;

/// <summary>Requests that run as they stand: a proof load with its answer as it was archived, and what may have become of it.</summary>
public static class RecordVerificationExamples
{
    public static IReadOnlyList<RequestExample> All { get; } = From(Shipped());

    /// <param name="archive">Operation, request and answer.</param>
    public static IReadOnlyList<RequestExample> From(string archive) =>
    [
        new("match", "An archived answer that is what its request gives",
            Changed(archive, "ARCHIVE-7", _ => { })),
        new("care", "The same answer with an approval written beside it: nobody vouches for that",
            Changed(archive, "ARCHIVE-8", answer => answer["approvedBy"] = "the foreman")),
        new("differs", "The same answer with another decision written into it: it differs",
            Changed(archive, "ARCHIVE-9", answer => answer["decision"] = "proceed")),
        new("cannotVerify", "An answer of another engine: it can not be verified here",
            Changed(archive, "ARCHIVE-10", answer => answer["provenance"]!["engine"] = "0")),
    ];

    private static string Changed(string archive, string reference, Action<JsonNode> change)
    {
        var body = JsonNode.Parse(archive)!;
        body["reference"] = reference;
        change(body["answer"]!);
        return body.ToJsonString();
    }

    private static string Shipped()
    {
        var here = typeof(RecordVerificationExamples);
        using var stream = here.Assembly.GetManifestResourceStream(here, "archive.json")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
