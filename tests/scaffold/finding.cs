#!/usr/bin/env dotnet
#:property PublishAot=false
#:property RestorePackagesWithLockFile=false
#:property AnalysisLevel=latest

// Makes what a new finding needs, with places to fill in that neither compile nor pass until somebody has: dotnet run
// tests/scaffold/finding.cs -- Proof Before wall-too-thin stop room, theme (the file ProofFindings.Before.cs), code, severity.
using System.Text.RegularExpressions;

if (args is not [var room, var theme, var code, ("stop" or "unknown" or "caution" or "note") and var weight]
    || !Regex.IsMatch(code, "^[a-z]+(-[a-z]+)*$"))
{
    return Refuse("room theme code-of-the-finding stop|unknown|caution|note");
}

var root = Directory.GetCurrentDirectory();
var engine = Path.Combine(root, "src", "CalcService.Engine", room);
var tests = Path.Combine(root, "tests", "CalcService.Engine.Tests", room);
var examples = Path.Combine(root, "src", "CalcService.Api", "Capabilities", room, "Findings");
if (!File.Exists(Path.Combine(root, "CalcService.sln")) || !Directory.Exists(engine))
{
    return Refuse($"run it where CalcService.sln is; a room is a folder of src/CalcService.Engine, and {room} is none");
}

var themes = Directory.GetFiles(engine, "*Findings.*.cs").ToDictionary(file => Path.GetFileName(file).Split('.')[1]);
if (!themes.TryGetValue(theme, out var definitions))
{
    return Refuse($"themes of {room}: {string.Join(", ", themes.Keys.Order())}");
}

var findings = Path.GetFileName(definitions).Split('.')[0];
var scope = Path.GetFileNameWithoutExtension(Directory.GetFiles(engine, "*Scope.cs").Single());
var severity = Pascal(weight);
var name = Pascal(code);
if (Directory.GetFiles(Path.Combine(root, "src"), "*Findings*.cs", SearchOption.AllDirectories)
    .Any(file => File.ReadAllText(file).Contains($"\"{code}\"")))
{
    return Refuse($"{code} exists already");
}

// The definition: in the list of its theme, and at the end of the theme's part of the class.
Change(definitions, text => Into(text, @"IReadOnlyList<FindingDefinition> \w+ =>\s*\[\s*", $"{name}, ").TrimEnd('\n')[..^1] + $$"""

        public static FindingDefinition {{name}} { get; } = {{severity}}("{{code}}", Actor.Lead,
            "TODO: what it means, in a sentence.",
            "TODO: what is said of this job, with {measured} and {limit} where there are numbers.",
            "TODO: what to do.",
    #error TODO: where the rule comes from; a page of ours is its address, such as /docs/release
            new("TODO", "TODO", Basis.Derived));
    }

    """.ReplaceLineEndings("\n"));

Write(Path.Combine(engine, name + "Check.cs"), $$"""
    namespace CalcService.Engine.{{room}};

    /// <summary>TODO: what is looked at.</summary>
    internal static class {{name}}Check
    {
    #error TODO: call this where the room's other checks are called, with a row among the checks where the room has them
        public static void Check({{scope}} scope)
        {
            if (TODO)
            {
                scope.Find({{findings}}.{{name}}, "/TODO");
            }
        }
    }

    """);

// Both sides of the limit, and the row that all tests of the room go through.
Write(Path.Combine(tests, name + "Tests.cs"), $$"""
    namespace CalcService.Engine.Tests.{{room}};

    /// <summary>TODO: what the limit is by its source, outside of the engine.</summary>
    public sealed class {{name}}Tests
    {
    #error TODO: the room's good question with a value on each side of the limit
        [Theory]
        [InlineData(TODO, true)]
        [InlineData(TODO, false)]
        public void {{Sentence(code)}}_is_raised_beyond_the_limit_only(double value, bool isRaised) =>
            Assert.Equal(isRaised, TODO(value).Findings.Any(finding => finding.Definition.Code == "{{code}}"));
    }

    """);
var cases = Directory.GetFiles(tests, "*Cases.cs").OrderByDescending(file => new FileInfo(file).Length).First();
Change(cases, text => Into(text, @"(?:IReadOnlyList|IEnumerable)<\w+Case> \w+(?: \{ get; \} =| =>)\s*\[\n", $"""
    #error TODO: the good question with this one thing wrong, in the form of the rows below, in the list where it belongs
            new("{code}", Severity.{severity}, "/TODO", TODO),

    """));

// The example of its page.
var list = @"(?:IReadOnlyList|IEnumerable)<FindingExample> \w+(?: \{ get; \} =| =>)\s*\[\n";
var page = Directory.GetFiles(examples, "*.cs").Order().First(file => Regex.IsMatch(File.ReadAllText(file), list));
Change(page, text => Into(text, list, $"""
    #error TODO: the request with which nothing is wrong, changed so that it has the finding, in the list where it belongs
            new("{code}", Severity.{severity}, "/TODO", request => request.With("/TODO", TODO)),

    """));
Console.WriteLine("Fill in every TODO; the build stops at each. Then the docs: the page of the capability, and docs/facts.md for a fact that has to be stated.");
return 0;

int Refuse(string why)
{
    Console.Error.WriteLine(why);
    return 1;
}

string Pascal(string words) => string.Concat(words.Split('-').Select(word => char.ToUpperInvariant(word[0]) + word[1..]));

string Sentence(string words) => char.ToUpperInvariant(words[0]) + words[1..].Replace('-', '_');

string Into(string text, string before, string row)
{
    var place = Regex.Match(text, before);
    return place.Success ? text.Insert(place.Index + place.Length, row.ReplaceLineEndings("\n"))
        : throw new InvalidOperationException($"no list for {row}");
}

void Change(string file, Func<string, string> change) => Write(file, change(File.ReadAllText(file).ReplaceLineEndings("\n")));

void Write(string file, string text)
{
    File.WriteAllText(file, text);
    Console.WriteLine(Path.GetRelativePath(root, file));
}
