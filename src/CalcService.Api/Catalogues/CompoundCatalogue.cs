using CalcService.Api.Contract;
using CalcService.Api.Hosting;
using CalcService.Api.Reading;
using CalcService.Api.Validation;
using CalcService.Api.Writing;

namespace CalcService.Api.Catalogues;

/// <summary>
/// The compounds that requests can name, read once at start. The service holds no product's data: the sheet that ships
/// with it is invented, all others are the operator's.
/// </summary>
public sealed class CompoundCatalogue
{
    private const string Shipped = "CalcService.Api.Compounds.";

    private readonly HashSet<string> _demonstrations;

    private CompoundCatalogue(SortedDictionary<string, CompoundSheet> sheets)
    {
        _demonstrations = [.. sheets.Values.Where(sheet => sheet.ToEngine().Demonstration).Select(Unflagged)];
        All = [.. sheets.Select(sheet => Resolve(sheet.Key, sheet.Value))];
    }

    /// <summary>By id.</summary>
    public IReadOnlyList<ResolvedCompound> All { get; }

    /// <summary>Reads every sheet, shipped or in the operator's folder, by the same reader as a sheet in a request.</summary>
    /// <exception cref="StartRefusedException">A sheet can't be read, is not valid, or has the id of another.</exception>
    public static CompoundCatalogue Load(string? folder)
    {
        using var nothing = new ServiceCollection().BuildServiceProvider();
        var checks = new ObjectChecks(nothing);
        var sheets = new SortedDictionary<string, CompoundSheet>(StringComparer.Ordinal);
        foreach (var found in FindShipped().Concat(folder is null ? [] : CompoundFolder.Find(folder)))
        {
            if (!sheets.TryAdd(found.Id, Read(found, checks)))
            {
                throw new StartRefusedException(
                    $"Compound sheet {found.Origin}: the id {found.Id} exists already; give the file another name.");
            }
        }

        return new(sheets);
    }

    /// <summary>The sheet that a request means, or null where it names none or both.</summary>
    public CompoundSheet? SheetOf(Compound compound) => compound.Profile is { } id ? Find(id)?.Sheet : compound.Sheet;

    /// <summary>What a valid request means.</summary>
    public ResolvedCompound Resolve(Compound compound) => compound.Profile is { } id ? Find(id)! : Resolve(profile: null, compound.Sheet!);

    private ResolvedCompound? Find(string id) => All.FirstOrDefault(compound => compound.Profile == id);

    private ResolvedCompound Resolve(string? profile, CompoundSheet sheet)
    {
        using var written = Write(sheet);
        var canonical = written.Written.Span;
        return new(profile, sheet, Flagged(sheet), Digest.Of(canonical), (byte[])[.. "{\"sheet\":"u8, .. canonical, .. "}"u8]);
    }

    private static ShapeWriter Write(CompoundSheet sheet) => ShapeWriter.Write(JsonForm.Canonical, ShapeTable.Of<CompoundSheet>(), sheet);

    private static string Unflagged(CompoundSheet sheet)
    {
        using var written = Write(sheet with { Demonstration = null });
        return Digest.Of(written.Written.Span);
    }

    /// <summary>A demonstration sheet that lost its flag on the way stays one.</summary>
    private Engine.Compounds.CompoundSheet Flagged(CompoundSheet sheet)
    {
        var read = sheet.ToEngine();
        return read.Demonstration || !_demonstrations.Contains(Unflagged(sheet)) ? read : read with { Demonstration = true };
    }

    private static IEnumerable<FoundSheet> FindShipped()
    {
        var assembly = typeof(CompoundCatalogue).Assembly;
        foreach (var name in assembly.GetManifestResourceNames().Where(name => name.StartsWith(Shipped, StringComparison.Ordinal)))
        {
            using var stream = assembly.GetManifestResourceStream(name)!;
            using var body = new MemoryStream();
            stream.CopyTo(body);
            yield return new(name[Shipped.Length..^".json".Length], name, body.ToArray());
        }
    }

    private static CompoundSheet Read(FoundSheet found, ObjectChecks checks)
    {
        var read = BodyReader.Read(found.Body.Span, ShapeTable.Of<CompoundSheet>(), checks);
        return read.Errors.Count == 0 ? (CompoundSheet)read.Value! : throw new StartRefusedException(
            $"Compound sheet {found.Origin}: "
                + $"{string.Join("; ", read.Errors.Select(error => $"{error.Pointer} {error.Detail}".TrimStart()))}");
    }
}
