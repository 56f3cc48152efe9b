using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Problems;

/// <summary>Strings that have done harm elsewhere, as an id and as free text: taken and printed, or refused at their place.</summary>
public sealed class NaughtyStringTests(Service service)
{
    public static TheoryData<string, bool> Places => new()
    {
        { "/reference", true },
        { "/socket/id", true },
        { "/people/0/name", false },
    };

    [Theory]
    [MemberData(nameof(Places))]
    public async Task String_is_printed_as_it_was_sent_or_refused_at_its_place(string pointer, bool isId)
    {
        int taken = 0, refused = 0;
        foreach (var text in OtherData.NaughtyStrings)
        {
            var body = TerminationRecords.Whole.With(pointer, text);
            var reply = await service.PostAsync(TerminationRecords.Path, body);
            var sheet = await service.PostAsync(TerminationRecords.Path + "/sheet", body);

            Assert.Equal(reply.Status, sheet.Status);
            if (reply.Status == 200)
            {
                taken++;
                StrictMarkup.Parse(sheet.Text);
                continue;
            }

            refused++;
            ProblemAssert.IsProblem(reply, 422);
            Assert.True(reply.Json["errors"]!.AsArray().All(error => (string?)error!["pointer"] == pointer), reply.Text);
        }

        Assert.InRange(taken, isId ? 100 : 200, OtherData.NaughtyStrings.Count);
        Assert.InRange(refused, 50, OtherData.NaughtyStrings.Count);
        Assert.Empty(service.Escaped);
    }

    /// <summary>A body with a member of that name: unknown, and said without harm.</summary>
    [Fact]
    public async Task String_as_the_name_of_a_member_is_refused()
    {
        foreach (var text in OtherData.NaughtyStrings)
        {
            var reply = await service.PostAsync(Plans.Path, new JsonObject { [text] = 1 });

            Assert.True(reply.Status == 400, $"{text}: {reply.Text}");
        }
    }
}
