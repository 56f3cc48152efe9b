using CalcService.Api.Tests.Fixtures;

namespace CalcService.Api.Tests.Examples;

/// <summary>A request of an .http file.</summary>
/// <param name="File">The file.</param>
/// <param name="Title">What stands after ###.</param>
/// <param name="Name">What stands after # @name.</param>
/// <param name="Status">The status that it says to expect.</param>
/// <param name="Word">The decision or problem that it says to expect, or summary for a batch.</param>
/// <param name="Method">HTTP method.</param>
/// <param name="Path">Path and query.</param>
/// <param name="ContentType">Media type of the body.</param>
/// <param name="Body">The body.</param>
public sealed record HttpExample(string File, string Title, string? Name, int Status, string? Word, string Method, string Path,
    string? ContentType, string? Body)
{
    private const string Host = "{{host}}";

    public static IReadOnlyList<HttpExample> All { get; } =
    [
        .. Directory.GetFiles(Repository.PathOf("http-examples"), "*.http").Order(StringComparer.Ordinal).SelectMany(Read),
    ];

    private static IEnumerable<HttpExample> Read(string path)
    {
        var file = System.IO.Path.GetFileName(path);
        var parts = System.IO.File.ReadAllText(path).ReplaceLineEndings("\n").Split("\n### ");
        Assert.True(parts[0].Contains("\n@host = http://localhost:5080\n", StringComparison.Ordinal), $"{file} sets no host.");
        return parts.Skip(1).Select(part => Parse(file, part));
    }

    private static HttpExample Parse(string file, string part)
    {
        var lines = part.Split('\n');
        var comments = lines.Skip(1).TakeWhile(line => line.StartsWith('#')).Select(line => line[1..].Trim()).ToArray();
        var expect = Comment(comments, "expect ")?.Split(' ')
            ?? throw new InvalidOperationException($"{file}: \"{lines[0]}\" says not what to expect.");
        var request = lines.Skip(1 + comments.Length).ToArray();
        var first = request[0].Split(' ');
        Assert.True(first.Length == 2 && first[1].StartsWith(Host, StringComparison.Ordinal), $"{file}: {request[0]}");
        var headers = request.Skip(1).TakeWhile(line => line.Length > 0).ToArray();
        var body = string.Join('\n', request.Skip(1 + headers.Length)).Trim('\n');
        return new(file, lines[0], Comment(comments, "@name "), int.Parse(expect[0], System.Globalization.CultureInfo.InvariantCulture),
            expect.ElementAtOrDefault(1),
            first[0], first[1][Host.Length..], Comment(headers, "Content-Type: "), body.Length > 0 ? body : null);
    }

    private static string? Comment(IEnumerable<string> lines, string start) =>
        lines.Where(line => line.StartsWith(start, StringComparison.Ordinal)).Select(line => line[start.Length..]).SingleOrDefault();
}
