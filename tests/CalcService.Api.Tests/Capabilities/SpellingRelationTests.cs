using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;
using CalcService.Api.Tests.Fuzzing;
using CsCheck;

namespace CalcService.Api.Tests.Capabilities;

/// <summary>What has to hold between the answers to one question asked in two ways. The number is that of the list of relations.</summary>
public sealed class SpellingRelationTests(Service service)
{
    public static TheoryData<string, string> Examples =>
    [
        .. Inspections.Names.Select(name => new TheoryDataRow<string, string>(Inspections.Path, name.Data)),
        .. Matches.Names.Select(name => new TheoryDataRow<string, string>(Matches.Path, name.Data)),
    ];

    /// <summary>Thirty random spellings of each example: other units, another order of members, other white space.</summary>
    [Theory]
    [MemberData(nameof(Examples))]
    public async Task Relation_28_other_units_and_another_order_of_members_give_the_same_answer(string path, string name)
    {
        JsonObject example = path == Inspections.Path ? Inspections.Example(name) : Matches.Example(name);
        var expected = await service.AnswerAsync(path, example);
        await OtherUnits.Of(example).SampleAsync(async body =>
        {
            var answer = (await service.PostAsync(path, body)).Json;
            Assert.Equal(Plans.Provenance(expected, "recordId"), Plans.Provenance(answer, "recordId"));
            Assert.Equal(Plans.Provenance(expected, "resultDigest"), Plans.Provenance(answer, "resultDigest"));
        }, iter: 30);
    }
}
