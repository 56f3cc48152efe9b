using System.Text;
using System.Text.Json.Nodes;
using CalcService.Api.Tests.Fixtures;
using CsCheck;

namespace CalcService.Api.Tests.Batches;

public sealed class BatchTests(Service service)
{
    private const string Bad = """{"reference":"bad","pourAt":"tomorrow"}""";

    private static string Plan => Plans.Plan.ToJsonString();

    [Fact]
    public async Task Lines_give_the_answers_that_they_give_alone_in_order()
    {
        var requests = Capabilities.Pouring.PourPlanExamplesData.Names.Select(row => Plans.Example(row.Data))
            .Append(Plans.Plan.With("/ends/0/quantity", -1)).Append(Plans.Plan.With("/colour", "red"))
            .Append(Plans.Plan.Without("/reference")).ToArray();
        var body = string.Concat(requests.Select(request => request.ToJsonString() + "\n"));

        var batch = await BatchOutput.PostAsync(service, body);

        Assert.Equal(requests.Length, batch.Lines.Count);
        for (var i = 0; i < requests.Length; i++)
        {
            var (line, alone) = (batch.Lines[i], await service.PostAsync(Plans.Path, requests[i]));
            Assert.Equal(["line", "id", "status", alone.Status == 200 ? "answer" : "problem"], line.Select(member => member.Key));
            Assert.Equal(i + 1, (int)line["line"]!);
            Assert.Equal((string?)requests[i]["reference"], (string?)line["id"]);
            Assert.Equal(alone.Status, (int)line["status"]!);
            if (alone.Status == 200)
            {
                Assert.Equal(Timeless(alone.Json), Timeless(line["answer"]!.AsObject()));
            }
            else
            {
                ProblemAssert.IsProblem(line["problem"]!.AsObject(), alone.Status);
                Assert.Equal(alone.Json["errors"]!.ToJsonString(), line["problem"]!["errors"]!.ToJsonString());
            }
        }

        batch.AssertSummary(requests.Length, requests.Length - 2, Encoding.UTF8.GetBytes(body));
        Assert.Equal("buffered", batch.Mode);
    }

    [Fact]
    public async Task Lines_with_detail_have_their_trace() =>
        Assert.NotEmpty((await BatchOutput.PostAsync(service, Encoding.UTF8.GetBytes(Plan), query: "?detail=full"))
        .Lines[0].At("/answer/trace")!.AsArray());

    [Theory]
    [InlineData("P\nP\n", new[] { 1, 2 })]
    [InlineData("P\nP", new[] { 1, 2 })]
    [InlineData("P\r\nP\r\n", new[] { 1, 2 })]
    [InlineData("P\r\nP", new[] { 1, 2 })]
    [InlineData("\nP\n\n \t\nP\n\n", new[] { 2, 5 })]
    [InlineData("\r\nP\r\n\r\nP", new[] { 2, 4 })]
    [InlineData("P\n", new[] { 1 })]
    [InlineData("  P  \n", new[] { 1 })]
    [InlineData("", new int[0])]
    [InlineData("\n\n\r\n", new int[0])]
    public async Task Lines_of_every_batch_are_numbered_as_an_editor_numbers_them_and_blank_ones_left_out(string pattern, int[] numbers)
    {
        foreach (var route in (await ServedContract.ReadAsync(service)).BatchRoutes)
        {
            var body = Encoding.UTF8.GetBytes(pattern.Replace("P", route.Examples[0].Body.ToJsonString(), StringComparison.Ordinal));

            var batch = await BatchOutput.PostAsync(service, body, path: route.Path);

            Assert.Equal(numbers, batch.Lines.Select(line => (int)line["line"]!));
            batch.AssertSummary(numbers.Length, numbers.Length, body);
        }
    }

    [Fact]
    public async Task Line_that_is_bad_leaves_its_neighbours_alone()
    {
        var body = string.Join('\n', Plan, Bad, "{", "null", "\u00FF", Plan);

        var batch = await BatchOutput.PostAsync(service, body);

        Assert.Equal([200, 422, 400, 400, 400, 200], batch.Lines.Select(line => (int)line["status"]!));
        Assert.Equal("bad", (string?)batch.Lines[1]["id"]);
        Assert.Null(batch.Lines[2]["id"]);
        batch.AssertSummary(6, 2, Encoding.UTF8.GetBytes(body));
    }

    [Theory]
    [InlineData(65_536, "\n", 200)]
    [InlineData(65_536, "\r\n", 200)]
    [InlineData(65_537, "\n", 413)]
    [InlineData(66_560, "\r\n", 413)]
    [InlineData(300_000, "\n", 413)]
    public async Task Line_longer_than_64_KiB_is_refused_alone(int length, string end, int status)
    {
        var body = Plan + end + Plan.PadRight(length) + end + Plan + end;

        var batch = await BatchOutput.PostAsync(service, body);

        Assert.Equal([200, status, 200], batch.Lines.Select(line => (int)line["status"]!));
        Assert.Equal([1, 2, 3], batch.Lines.Select(line => (int)line["line"]!));
        batch.AssertSummary(3, status == 200 ? 3 : 2, Encoding.UTF8.GetBytes(body));
    }

    /// <summary>The limit counts blank lines too; what was answered before it is not summed up.</summary>
    [Theory]
    [InlineData(1_000_000, true)]
    [InlineData(1_000_001, false)]
    public async Task Batch_of_more_than_a_million_lines_ends_aborted_without_a_summary(int lines, bool fits)
    {
        foreach (var route in (await ServedContract.ReadAsync(service)).BatchRoutes)
        {
            var body = Encoding.UTF8.GetBytes("{}" + new string('\n', lines));

            var batch = await BatchOutput.PostAsync(service, body, path: route.Path);

            Assert.Equal([422], batch.Lines.Select(line => (int)line["status"]!));
            if (fits)
            {
                batch.AssertSummary(1, 0, body);
            }
            else
            {
                Assert.Null(batch.Summary);
                ProblemAssert.IsProblem(batch.Aborted!, 413);
            }
        }
    }

    [Fact]
    public async Task Line_that_just_fits_is_taken_however_the_body_comes_in_pieces()
    {
        // The line end may come in another piece than the line.
        foreach (var cut in new[] { 65_535, 65_536, 65_537, 65_538 })
        {
            var body = Encoding.UTF8.GetBytes(Plan.PadRight(65_536) + "\r\n" + Plan);
            using var lines = new Api.Batches.LineReader(new InPieces(body, cut), 65_536, 1_000);

            var first = await lines.NextAsync(TestContext.Current.CancellationToken);
            var second = await lines.NextAsync(TestContext.Current.CancellationToken);

            Assert.False(first!.Value.IsTooLong);
            Assert.Equal(65_536, first.Value.Bytes.Length);
            Assert.Equal(Plan, Encoding.UTF8.GetString(second!.Value.Bytes.Span));
            Assert.Null(await lines.NextAsync(TestContext.Current.CancellationToken));
        }
    }

    /// <summary>String.Split is the reference.</summary>
    [Fact]
    public void Lines_of_any_text_are_those_that_splitting_gives() =>
        Gen.Select(Gen.OneOf("a", "bc", "\n", "\r\n", "\r", " ", "\t", "0123456789").Array[0, 40], Gen.Int[1, 20]).Sample((parts, piece) =>
        {
            const int Most = 16;
            var text = string.Concat(parts);
            var split = text.Split('\n').Select((line, i) => (Number: i + 1L, Text: line.EndsWith('\r') ? line[..^1] : line));
            // The text after the last line feed is a line only where there is any.
            var expected = split.Where(line => line.Text.Length > Most || line.Text.Trim(' ', '\t').Length > 0)
                .Select(line => line.Text.Length > Most ? (line.Number, "too long") : (line.Number, line.Text)).ToArray();
            var found = new List<(long, string)>();
            using var lines = new Api.Batches.LineReader(new InPieces(Encoding.UTF8.GetBytes(text), piece), Most, 1_000);
            while (lines.NextAsync(CancellationToken.None).AsTask().GetAwaiter().GetResult() is { } line)
            {
                found.Add((line.Number, line.IsTooLong ? "too long" : Encoding.UTF8.GetString(line.Bytes.Span)));
            }

            return expected.SequenceEqual(found);
        }, iter: 20_000);

    [Theory]
    [InlineData("gzip")]
    [InlineData("br")]
    public async Task Batch_that_is_compressed_is_the_same_batch_with_the_digest_of_its_text(string encoding)
    {
        var body = Encoding.UTF8.GetBytes($"{Plan}\n\n{Bad}\n");

        var batch = await BatchOutput.PostAsync(service, BatchOutput.Pack(body, encoding), encoding);

        Assert.Equal([200, 422], batch.Lines.Select(line => (int)line["status"]!));
        batch.AssertSummary(2, 1, body);
    }

    [Theory]
    [InlineData("gzip")]
    [InlineData("br")]
    public async Task Batch_that_is_not_what_its_encoding_says_is_400(string encoding)
    {
        var packed = BatchOutput.Pack(Encoding.UTF8.GetBytes(string.Concat(Enumerable.Repeat(Plan + "\n", 50))), encoding);
        foreach (var body in new[] { Encoding.UTF8.GetBytes(Plan), packed[..^9], packed[..(packed.Length / 2)] })
        {
            ProblemAssert.IsProblem(await service.PostAsync(Plans.Path + "/batch", BatchOutput.Content(body, encoding)), 400);
        }
    }

    /// <summary>RFC 1952, section 2.2: a gzip file is one member after another.</summary>
    [Fact]
    public async Task Batch_of_several_gzip_members_is_one_batch()
    {
        var (first, second) = (Encoding.UTF8.GetBytes(Plan + "\n"), Encoding.UTF8.GetBytes(Bad + "\n"));

        var batch = await BatchOutput.PostAsync(service, [.. BatchOutput.Pack(first, "gzip"), .. BatchOutput.Pack(second, "gzip")], "gzip");

        batch.AssertSummary(2, 1, [.. first, .. second]);
    }

    /// <summary>Wherever a packed batch is cut, it has no summary.</summary>
    [Theory]
    [InlineData("gzip")]
    [InlineData("br")]
    public async Task Batch_that_is_cut_anywhere_is_never_summed_up(string encoding)
    {
        var packed = BatchOutput.Pack(Encoding.UTF8.GetBytes(Plan + "\n"), encoding);
        for (var length = 1; length < packed.Length; length += length < packed.Length - 30 ? 17 : 1)
        {
            ProblemAssert.IsProblem(await service.PostAsync(Plans.Path + "/batch", BatchOutput.Content(packed[..length], encoding)), 400);
        }
    }

    [Theory]
    [InlineData("application/json", 415)]
    [InlineData("text/plain", 415)]
    public async Task Batch_of_another_media_type_is_refused(string type, int status) =>
        ProblemAssert.IsProblem(await service.PostAsync(Plans.Path + "/batch", new StringContent(Plan, Encoding.UTF8, type)), status);

    private static string Timeless(JsonObject answer) => answer.Without("/provenance/computedAt").ToJsonString();

    /// <summary>A stream that gives so many bytes at a time.</summary>
    private sealed class InPieces(byte[] bytes, int piece) : MemoryStream(bytes)
    {
        public override ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default) =>
            base.ReadAsync(buffer[..Math.Min(piece, buffer.Length)], cancellationToken);
    }
}
