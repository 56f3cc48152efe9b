using System.Collections.Concurrent;
using System.Text;
using System.Text.Json.Nodes;
using CalcService.Api.Calculations;
using CalcService.Api.Catalogues;
using CalcService.Api.Hosting;
using CalcService.Api.Writing;
using CalcService.Engine.Findings;
using CalcService.Engine.Rules;

namespace CalcService.Api.Pages;

/// <summary>
/// The pages of findings, each written when it is first asked for and kept. What its examples are answered is computed
/// then, by the calculations themselves. One page is written at a time, so that pages never take more than one lane.
/// </summary>
public sealed class FindingPages(
    IReadOnlyList<FindingDefinition> findings, Editions editions, IEnumerable<ICapability> capabilities, WorkConditions conditions)
    : IDisposable
{
    /// <summary>What the list of all has where a page has its code.</summary>
    public const string Index = "";

    private readonly Dictionary<string, FindingDefinition> _findings =
        findings.ToDictionary(finding => finding.Code, StringComparer.Ordinal);

    private readonly Dictionary<string, ICapability> _capabilities =
        capabilities.ToDictionary(capability => "/v1/" + capability.Operation, StringComparer.Ordinal);

    private readonly ConcurrentDictionary<(string Code, string Edition), Representation> _written = [];
    private readonly SemaphoreSlim _turn = new(1);

    public Editions Editions => editions;

    /// <summary>The edition of this name, the current one where none is named; null where there is none.</summary>
    public RuleBook? EditionOf(string? name) => name is null ? editions.Current : editions.Find(name);

    public bool Has(string code, RuleBook book) => code.Length == 0 || (_findings.TryGetValue(code, out var finding) && finding.IsIn(book));

    /// <summary>A page that there is, by an edition.</summary>
    public async ValueTask<Representation> GetAsync(string code, RuleBook book, CancellationToken aborted)
    {
        var key = (code, book.Edition);
        if (_written.TryGetValue(key, out var page))
        {
            return page;
        }

        using var time = CancellationTokenSource.CreateLinkedTokenSource(aborted, conditions.Drain.Over);
        await _turn.WaitAsync(time.Token);
        try
        {
            if (!_written.TryGetValue(key, out page))
            {
                time.CancelAfter(conditions.Settings.Time(ServiceSettings.CalculationSeconds));
                using var lane = await conditions.Lanes.EnterLineAsync(time.Token);
                page = _written[key] = code.Length == 0
                    ? MarkdownPage.Of("Findings", FindingIndex.Write([.. findings.Where(finding => finding.IsIn(book))]), root: "../")
                    : MarkdownPage.Of(code, FindingPage.Write(_findings[code], book, book == editions.Current,
                        (path, request) => Answer(path, request, time.Token)), root: "../../");
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
