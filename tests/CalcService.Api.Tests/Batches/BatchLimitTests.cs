using System.Text;
using CalcService.Api.Calculations;
using CalcService.Api.Problems;
using CalcService.Api.Tests.Fixtures;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;

namespace CalcService.Api.Tests.Batches;

/// <summary>A batch that asks for more than it may have ends with why, and without a summary.</summary>
public sealed class BatchLimitTests(Service service)
{
    [Theory]
    [InlineData("br", false)]
    [InlineData("br", true)]
    public async Task Batch_that_decodes_to_far_more_than_was_sent_ends_aborted(string encoding, bool isOneLine)
    {
        var line = "{}".PadRight(60_000) + (isOneLine ? ' ' : '\n');
        var body = Encoding.UTF8.GetBytes(string.Concat(Enumerable.Repeat(line, 1200)));

        var batch = await BatchOutput.PostAsync(service, BatchOutput.Pack(body, encoding), encoding);

        ProblemAssert.IsProblem(batch.Aborted!, 413);
        Assert.Null(batch.Summary);
        Assert.InRange(batch.Lines.Count, isOneLine ? 0 : 100, 1199);
    }

    [Theory]
    [InlineData("Limits:BatchSeconds", 503)]
    [InlineData("Limits:BatchWorkSeconds", 413)]
    public async Task Batch_that_takes_too_long_ends_aborted(string setting, int status)
    {
        await using var dear = new Service(services => services.Replace(ServiceDescriptor.Singleton<ICapability>(new Dear())), (setting, "1"));

        var batch = await BatchOutput.PostAsync(dear, string.Concat(Enumerable.Repeat("{}\n", 1000)));

        ProblemAssert.IsProblem(batch.Aborted!, status);
        Assert.Null(batch.Summary);
        Assert.NotEmpty(batch.Lines);
        Assert.Equal(422, (await dear.PostAsync(Plans.Path, "{}")).Status);
    }

    /// <summary>Each line takes a while.</summary>
    private sealed class Dear : ICapability
    {
        public string Operation => "pour-plans";

        public Type RequestType => typeof(object);

        public Type AnswerType => typeof(object);

        public Processed Process(ReadOnlySpan<byte> body, bool full, AsOf? asOf, CancellationToken cancellationToken)
        {
            Thread.Sleep(20);
            return new(422, ProblemKinds.NotComputable.With(), null);
        }
    }
}
