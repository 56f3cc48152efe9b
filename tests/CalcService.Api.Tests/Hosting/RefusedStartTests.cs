using CalcService.Api.Hosting;
using CalcService.Api.Tests.Fixtures;
using Microsoft.Extensions.Configuration;

namespace CalcService.Api.Tests.Hosting;

/// <summary>What can't be meant refuses the start, in one line that names it.</summary>
public sealed class RefusedStartTests(Service service)
{
    [Theory]
    [InlineData("Limits:Request", "Limits:Requests")]
    [InlineData("limits:requsts", "Limits:Requests")]
    [InlineData("Limit:Requests", "Limits:Requests")]
    [InlineData("Limits:Requests:0", "Limits:Requests")]
    [InlineData("Cors:Origins:0", "Cors:Origins")]
    [InlineData("Cors:Origin", "Cors:Origins")]
    [InlineData("Log:Levels", "Log:Level")]
    [InlineData("Log:MinimumLevel", "Log:Level")]
    [InlineData("Compound:Folder", "Compounds:Folder")]
    [InlineData("Quota:PerMinute", "Quota:RequestsPerMinute")]
    [InlineData("Shutdown:Seconds", "Shutdown:DrainSeconds")]
    public void Name_that_is_none_names_the_nearest(string key, string nearest)
    {
        var refused = Assert.Throws<StartRefusedException>(() => SettingNames.Check(Configured((key, "1"))));

        Assert.Equal($"{key} is no setting; the nearest is {nearest}.", refused.Message);
    }

    [Fact]
    public void Names_that_are_known_or_of_others_are_taken() => SettingNames.Check(Configured(
        [.. SettingNames.All.Select(key => (key, "1")), .. SettingNames.All.Select(key => (key.ToUpperInvariant(), "1")),
            ("Logging:LogLevel:Default", "Warning"), ("Kestrel:Endpoints:Http:Url", "http://127.0.0.1:0"), ("urls", "x"), ("Request", "1"),
            ("Limits", "1")]));

    [Fact]
    public void Every_setting_stands_in_the_documentation()
    {
        var page = File.ReadAllText(Repository.PathOf("docs", "operations.md"));

        Assert.All(SettingNames.All, key => Assert.Contains($"| `{key}` |", page, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("Log:Level", "Loud", "one of Verbose, Debug, Information, Warning, Error, Fatal is expected")]
    [InlineData("Log:Level", "", "one of")]
    [InlineData("Log:Level", "3", "one of")]
    [InlineData("Log:Level", "Debug,Error", "one of")]
    [InlineData("Quota:ClientHeader", "", "the name of a header")]
    [InlineData("Quota:ClientHeader", "X Client", "the name of a header")]
    [InlineData("Quota:ClientHeader", "X-Client:", "the name of a header")]
    [InlineData("Quota:ClientHeader", "X-Clïent", "the name of a header")]
    [InlineData("Quota:ClientHeader", "content-length", "the name of a header")]
    [InlineData("OTEL_EXPORTER_OTLP_PROTOCOL", "grcp", "grpc or http/protobuf is expected")]
    [InlineData("Compounds:Folder", "", "a folder is expected")]
    public void Value_that_can_not_be_meant_is_shown_with_what_is_expected(string key, string value, string says)
    {
        var refused = Assert.Throws<StartRefusedException>(() => ServiceHost.Create(
            [$"--{key}={value}", "--OTEL_EXPORTER_OTLP_ENDPOINT=http://127.0.0.1:9"]));

        Assert.StartsWith($"{key} is \"{value}\"; ", refused.Message, StringComparison.Ordinal);
        Assert.Contains(says, refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("warning")]
    [InlineData("Fatal")]
    public async Task Level_is_taken_in_any_case(string level)
    {
        await using var app = ServiceHost.Create(["--Log:Level=" + level]);
    }

    [Fact]
    public async Task Misspelt_variable_of_the_environment_ends_the_process()
    {
        var end = await RefusedStart.RunAsync([], ("Limits__Request", "5"));

        Assert.Equal((1, "", "Limits:Request is no setting; the nearest is Limits:Requests." + Environment.NewLine),
            (end.ExitCode, end.Output, end.Error));
    }

    [Fact]
    public async Task Port_that_is_taken_is_one_line_and_exit_code_1()
    {
        var address = service.Address.GetLeftPart(UriPartial.Authority);
        var end = await RefusedStart.RunAsync(["--urls", address]);

        AssertOneLine(end, address);
        Assert.Contains("address already in use", end.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("nonsense")]
    [InlineData("http://127.0.0.1:99999")]
    [InlineData("http://192.0.2.1:5000")]
    [InlineData("https://127.0.0.1:0")]
    public async Task Address_that_can_not_be_had_is_one_line_and_exit_code_1(string address) =>
        AssertOneLine(await RefusedStart.RunAsync(["--urls", address]), address);

    private static void AssertOneLine(RefusedStart end, string address)
    {
        Assert.Equal((1, ""), (end.ExitCode, end.Output));
        Assert.StartsWith($"The service can't listen at {address}: ", end.Error, StringComparison.Ordinal);
        Assert.Single(end.Error.TrimEnd().Split('\n'));
    }

    private static IConfiguration Configured(params (string Key, string Value)[] values)
    {
        var configuration = new ConfigurationBuilder();
        foreach (var (key, value) in values)
        {
            configuration.AddInMemoryCollection([KeyValuePair.Create(key, (string?)value)]);
        }

        return configuration.Build();
    }
}
