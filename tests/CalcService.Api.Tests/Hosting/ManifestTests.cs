using System.Globalization;
using CalcService.Api.Hosting;
using CalcService.Api.Tests.Fixtures;
using Microsoft.Extensions.Configuration;
using YamlDotNet.RepresentationModel;

namespace CalcService.Api.Tests.Hosting;

/// <summary>The Kubernetes manifest of the documentation against what the service really has.</summary>
public sealed class ManifestTests(Service service)
{
    private static readonly Dictionary<string, YamlNode> Documents = Read();

    private static YamlNode Pod => Documents["Deployment"]["spec"]["template"]["spec"];

    private static YamlNode Container => Pod["containers"][0];

    [Fact]
    public void Manifest_selects_the_pods_that_it_makes()
    {
        var labels = Documents["Deployment"]["spec"]["template"]["metadata"]["labels"];

        Assert.Equal(labels, Documents["Deployment"]["spec"]["selector"]["matchLabels"]);
        Assert.Equal(labels, Documents["Service"]["spec"]["selector"]);
        Assert.Equal(labels, Documents["PodDisruptionBudget"]["spec"]["selector"]["matchLabels"]);
        Assert.Equal(Documents["Deployment"]["metadata"]["name"], Documents["HorizontalPodAutoscaler"]["spec"]["scaleTargetRef"]["name"]);
    }

    [Fact]
    public void Grace_is_longer_than_the_drain_and_the_cluster_hears_of_it_before_connections_are_refused()
    {
        var settings = new ServiceSettings(new ConfigurationBuilder().AddInMemoryCollection(Environment()).Build());
        var hears = Number(Container["readinessProbe"]["periodSeconds"]) * Number(Container["readinessProbe"]["failureThreshold"]);

        Assert.InRange(Number(Pod["terminationGracePeriodSeconds"]), Drain.Longest(settings).TotalSeconds + 1, 600);
        Assert.InRange(settings.Value(ServiceSettings.UnreadySeconds), hears + 1, 600);
    }

    [Fact]
    public void Variables_are_settings_of_the_service() =>
        Assert.All(Environment(), variable => Assert.Contains(variable.Key, ServiceSettings.All.Select(setting => setting.Key)));

    [Theory]
    [InlineData("startupProbe")]
    [InlineData("livenessProbe")]
    [InlineData("readinessProbe")]
    public async Task Probe_asks_what_the_service_answers_at_the_listener_of_probes(string probe)
    {
        Assert.Equal(200, (await service.GetAsync(Text(Container[probe]["httpGet"]["path"]))).Status);
        Assert.Equal("health", Text(Container[probe]["httpGet"]["port"]));
    }

    [Fact]
    public void Ports_are_those_of_the_image()
    {
        var image = File.ReadAllText(Repository.PathOf("Dockerfile"));
        var (work, health) = (Text(Container["ports"][0]["containerPort"]), Text(Container["ports"][1]["containerPort"]));

        Assert.Contains($"EXPOSE {work} {health}\n", image, StringComparison.Ordinal);
        Assert.Contains($"Kestrel__Endpoints__Work__Url=http://*:{work} Kestrel__Endpoints__Health__Url=http://*:{health} ", image,
            StringComparison.Ordinal);
        Assert.Contains($"/dev/tcp/127.0.0.1/{health}", image, StringComparison.Ordinal);
    }

    [Fact]
    public void Container_may_write_nothing_and_is_nobody_of_note()
    {
        Assert.Equal("true", Text(Container["securityContext"]["readOnlyRootFilesystem"]));
        Assert.Equal("false", Text(Container["securityContext"]["allowPrivilegeEscalation"]));
        Assert.Equal("true", Text(Pod["securityContext"]["runAsNonRoot"]));
    }

    private static Dictionary<string, YamlNode> Read()
    {
        using var text = File.OpenText(Repository.PathOf("docs", "operations", "kubernetes.yaml"));
        var stream = new YamlStream();
        stream.Load(text);
        return stream.Documents.ToDictionary(document => Text(document.RootNode["kind"]), document => document.RootNode);
    }

    private static Dictionary<string, string?> Environment() => ((YamlSequenceNode)Container["env"])
        .ToDictionary(variable => Text(variable["name"]).Replace("__", ":", StringComparison.Ordinal),
        variable => (string?)Text(variable["value"]));

    private static string Text(YamlNode node) => ((YamlScalarNode)node).Value!;

    private static int Number(YamlNode node) => int.Parse(Text(node), CultureInfo.InvariantCulture);
}
