using System.Collections.Concurrent;
using System.Text;
using System.Text.Json.Nodes;
using CalcService.Api.Calculations;
using CalcService.Api.Catalogues;
using CalcService.Api.Hosting;
using CalcService.Api.Writing;
using CalcService.Engine.Findings;

namespace CalcService.Api.Pages;

/// <summary>
/// The pages of findings, each written when it is first asked for and kept. What its examples are answered is computed
/// then, by the calculations themselves. One page is written at a time, so that pages never take more than one lane.
/// </summary>
public sealed class FindingPages(IReadOnlyList<FindingDefinition> findings, IEnumerable<ICapability> capabilities, WorkConditions conditions)
    : IDisposable
{
    /// <summary>What the list of all has where a page has its code.</summary>
    public const string Index = "";

    private readonly Dictionary<string, FindingDefinition> _findings =
        findings.ToDictionary(finding => finding.Code, StringComparer.Ordinal);

    private readonly Dictionary<string, ICapability> _capabilities =
        capabilities.ToDictionary(capability => "/v1/" + capability.Operation, StringComparer.Ordinal);

    private readonly ConcurrentDictionary<string, Representation> _written = new(StringComparer.Ordinal);
    private readonly SemaphoreSlim _turn = new(1);

    public bool Has(string code) => code.Length == 0 || _findings.ContainsKey(code);

    /// <summary>A page that there is.</summary>
    public async ValueTask<Representation> GetAsync(string code, CancellationToken aborted)
    {
        if (_written.TryGetValue(code, out var page))
        {
            return page;
        }

        using var time = CancellationTokenSource.CreateLinkedTokenSource(aborted, conditions.Drain.Over);
        await _turn.WaitAsync(time.Token);
        try
        {
            if (!_written.TryGetValue(code, out page))
            {
                time.CancelAfter(conditions.Settings.Time(ServiceSettings.CalculationSeconds));
                using var lane = await conditions.Lanes.EnterAsync(time.Token);
                page = _written[code] = code.Length == 0
                    ? MarkdownPage.Of("Findings", FindingIndex.Write(findings), root: "../")
                    : MarkdownPage.Of(
                        code, FindingPage.Write(_findings[code], (path, request) => Answer(path, request, time.Token)), root: "../../");
            }

            return page;
        }
        finally
        {
            _turn.Release();
        }
    }

    public void Dispose() => _turn.Dispose();

    private JsonObject Answer(string path, JsonObject request, CancellationToken cancellationToken)
    {
        var processed = _capabilities[path].Process(Encoding.UTF8.GetBytes(request.ToJsonString()), full: false, cancellationToken);
        if (processed.Decision is null)
        {
            throw new InvalidOperationException($"An example for {path} is refused.");
        }

        using var answer = ShapeWriter.WriteAnswer(processed.Body);
        return JsonNode.Parse(answer.Written.Span)!.AsObject();
    }
}
