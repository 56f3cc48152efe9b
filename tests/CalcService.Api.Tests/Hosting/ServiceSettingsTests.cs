using System.Globalization;
using CalcService.Api.Hosting;
using CalcService.Api.Tests.Fixtures;
using Microsoft.Extensions.Configuration;

namespace CalcService.Api.Tests.Hosting;

public sealed class ServiceSettingsTests
{
    public static TheoryData<string> Keys => [.. ServiceSettings.All.Select(setting => setting.Key)];

    [Theory]
    [MemberData(nameof(Keys))]
    public void Setting_that_nobody_sets_has_its_default(string key) =>
        Assert.Equal(Find(key).Default, new ServiceSettings(Configured()).Value(Find(key)));

    [Theory]
    [MemberData(nameof(Keys))]
    public void Setting_is_taken_from_its_least_to_its_most(string key)
    {
        foreach (var value in new[] { Find(key).Least, Find(key).Most })
        {
            Assert.Equal(value, new ServiceSettings(Configured((key, value.ToString(CultureInfo.InvariantCulture)))).Value(Find(key)));
        }
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void Setting_that_is_no_such_number_refuses_the_start_and_says_which(string key)
    {
        foreach (var text in new[] { "", "-5", "1.5", "a minute", " 7", "0x7", $"{(long)Find(key).Most + 1}", Find(key).Least > 0
            ? $"{Find(key).Least - 1}" : "-1" })
        {
            var refused = Assert.Throws<StartRefusedException>(() => new ServiceSettings(Configured((key, text))));
            Assert.Contains(key, refused.Message, StringComparison.Ordinal);
            Assert.Contains(text, refused.Message, StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void Setting_has_its_row_in_the_documentation(string key)
    {
        var page = File.ReadAllText(Repository.PathOf("docs", "operations.md"));

        Assert.Contains(FormattableString.Invariant($"| `{key}` | {Find(key).Default} | {Find(key).Least} to {Find(key).Most} |"), page,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("https://shop.example", 1)]
    [InlineData("https://shop.example:8443, http://localhost:3000", 2)]
    [InlineData("", 0)]
    public void Origins_are_listed_with_commas(string text, int count) =>
        Assert.Equal(count, CrossOrigin.Origins(Configured((CrossOrigin.Key, text))).Count);

    [Theory]
    [InlineData("*")]
    [InlineData("shop.example")]
    [InlineData("https://shop.example/")]
    [InlineData("https://shop.example/page")]
    [InlineData("ftp://shop.example")]
    [InlineData("https://a.example https://b.example")]
    public void Origin_that_is_none_refuses_the_start(string text) =>
        Assert.Contains(CrossOrigin.Key,
        Assert.Throws<StartRefusedException>(() => CrossOrigin.Origins(Configured((CrossOrigin.Key, text)))).Message,
        StringComparison.Ordinal);

    private static Setting Find(string key) => ServiceSettings.All.Single(setting => setting.Key == key);

    private static IConfiguration Configured(params (string Key, string Value)[] values) =>
        new ConfigurationBuilder().AddInMemoryCollection(values.Select(value => KeyValuePair.Create(value.Key, (string?)value.Value)))
        .Build();
}
