using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Catalogues;

/// <summary>An operator's sheet in the folder does what the same sheet in a request does.</summary>
public sealed class CompoundFolderTests
{
    private static readonly string[] Digests = ["recordId", "inputDigest", "resultDigest"];

    [Fact]
    public async Task Sheet_of_the_folder_is_the_same_record_as_the_same_sheet_inline()
    {
        using var folder = new SheetFolder().With("shop 7.json", SheetFolder.Sheet);
        await using var service = new Service(folder.Path);

        var byProfile = await service.AnswerAsync(Plans.Path, ByProfile("shop 7"));
        var inline = await service.AnswerAsync(Plans.Path, Plans.Plan.With("/compound", new JsonObject { ["sheet"] = SheetFolder.Sheet }));

        Assert.All(Digests, member => Assert.Equal(Plans.Provenance(inline, member), Plans.Provenance(byProfile, member)));
        Assert.Equal("shop 7", (string?)byProfile.At("/provenance/compound/profile"));
        Assert.Equal((string?)inline.At("/provenance/compound/digest"), (string?)byProfile.At("/provenance/compound/digest"));
        Assert.DoesNotContain("compound-demonstration", Plans.Codes(byProfile));
        // 70 % (sheet) of the gel time at the compound's 18 °C. The sheet's gel times bound it: 20 to 50 min.
        Assert.InRange((double)byProfile.At("/result/potLife/value")!, .7 * 20, .7 * 50);
    }

    [Fact]
    public async Task Compounds_lists_shipped_sheet_and_folder_by_id_with_the_digest_of_the_answers()
    {
        // A folder lists in no order; "a" goes before and "z" after the demonstration. What is no sheet stays out.
        using var folder = new SheetFolder().With("z.json", SheetFolder.Sheet).With("a.JSON", SheetFolder.Sheet.With("/name", "A"))
            .With("readme.txt", "no sheet");
        Directory.CreateDirectory(folder.PathOf("below"));
        await using var service = new Service(folder.Path);

        var listed = (await service.GetAsync("/v1/compounds")).Json["compounds"]!.AsArray();

        Assert.Equal(["a", "demonstration", "z"], listed.Select(entry => (string)entry!["id"]!));
        Assert.Equal("A", (string?)listed[0]!.At("/sheet/name"));
        Assert.Equal(250, (double)listed[2]!.At("/sheet/kits/0/volume/value")!);
        foreach (var entry in listed)
        {
            var answer = await service.AnswerAsync(Plans.Path, ByProfile((string)entry!["id"]!));
            Assert.Equal((string?)entry["digest"], (string?)answer.At("/provenance/compound/digest"));
        }
    }

    [Fact]
    public async Task Copy_of_the_demonstration_without_its_flag_still_says_that_it_is_invented()
    {
        var shipped = await File.ReadAllTextAsync(
            Repository.PathOf("src", "CalcService.Api", "Compounds", "demonstration.json"), TestContext.Current.CancellationToken);
        using var folder = new SheetFolder().With("copy.json", JsonNode.Parse(shipped)!.AsObject().Without("/demonstration"));
        await using var service = new Service(folder.Path);

        Assert.Contains("compound-demonstration", Plans.Codes(await service.AnswerAsync(Plans.Path, ByProfile("copy"))));
    }

    private static JsonObject ByProfile(string id) => Plans.Plan.With("/compound/profile", id);
}
