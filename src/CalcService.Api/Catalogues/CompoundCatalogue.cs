using CalcService.Api.Contract;
using CalcService.Api.Hosting;
using CalcService.Api.Problems;
using CalcService.Api.Reading;
using CalcService.Api.Writing;

namespace CalcService.Api.Catalogues;

/// <summary>A compound that requests can name by its id.</summary>
public sealed record CompoundProfile(string Id, CompoundSheet Sheet, Engine.Compounds.CompoundSheet EngineSheet, string Digest);

/// <summary>
/// The compounds that requests can name, read once at start. The service holds no product's data: the sheet that ships
/// with it is invented, all others are the operator's.
/// </summary>
public sealed class CompoundCatalogue : IKnownParts
{
    private const string Shipped = "CalcService.Api.Compounds.";

    private readonly HashSet<string> _demonstrations;
    private readonly Dictionary<object, ReadOnlyMemory<byte>> _canonical;

    private CompoundCatalogue(IReadOnlyCollection<CompoundProfile> all)
    {
        _canonical = all.ToDictionary(object (profile) => profile.Sheet, profile => CanonicalOf(profile.Sheet), ReferenceEqualityComparer.Instance);
        _demonstrations = [.. all.Where(profile => profile.EngineSheet.Demonstration).Select(profile => Unflagged(profile.Sheet))];
        All = [.. all.Select(profile => profile with { EngineSheet = Flagged(profile.Sheet) })];
    }

    /// <summary>By id.</summary>
    public IReadOnlyList<CompoundProfile> All { get; }

    /// <summary>Reads every sheet, shipped or in the operator's folder, through the same reader and validator as a sheet in a request.</summary>
    /// <exception cref="StartRefusedException">A sheet can't be read, is not valid, or has the id of another.</exception>
    public static CompoundCatalogue Load(string? folder)
    {
        var profiles = new SortedDictionary<string, CompoundProfile>(StringComparer.Ordinal);
        foreach (var found in FindShipped().Concat(string.IsNullOrEmpty(folder) ? [] : CompoundFolder.Find(folder)))
        {
            if (!profiles.TryAdd(found.Id, Read(found)))
            {
                throw new StartRefusedException($"Compound sheet {found.Origin}: the id {found.Id} exists already; give the file another name.");
            }
        }

        return new(profiles.Values);
    }

    public CompoundProfile? Find(string id) => All.FirstOrDefault(profile => profile.Id == id);

    /// <summary>The sheet that a request means, or null where it names none or both.</summary>
    public CompoundSheet? SheetOf(Compound compound) =>
        compound.Profile is { } id ? Find(id)?.Sheet : compound.Sheet;

    /// <summary>The sheet of a valid request, for the engine.</summary>
    public Engine.Compounds.CompoundSheet EngineSheetOf(Compound compound) =>
        compound.Profile is { } id ? Find(id)!.EngineSheet : Flagged(compound.Sheet!);

    /// <summary>The canonical form of a profile's sheet: a request that names a profile needn't write it again.</summary>
    bool IKnownParts.TryFind(object part, out ReadOnlyMemory<byte> written)
    {
        written = default;
        return part is CompoundSheet && _canonical.TryGetValue(part, out written);
    }

    /// <summary>Which compound a valid request means.</summary>
    public CompoundProvenance ProvenanceOf(Compound compound) => new()
    {
        Profile = compound.Profile,
        Digest = compound.Profile is { } id ? Find(id)!.Digest : DigestOf(compound.Sheet!),
    };

    /// <summary>The digest of a sheet.</summary>
    public static string DigestOf(CompoundSheet sheet)
    {
        using var written = Write(sheet);
        return Digest.Of(written.Written.Span);
    }

    private static ReadOnlyMemory<byte> CanonicalOf(CompoundSheet sheet)
    {
        using var written = Write(sheet);
        return written.Written.ToArray();
    }

    private static ShapeWriter Write(CompoundSheet sheet) => ShapeWriter.Write(JsonForm.Canonical, ShapeTable.Of<CompoundSheet>(), sheet);

    private static string Unflagged(CompoundSheet sheet) => DigestOf(sheet with { Demonstration = null });

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

    private static CompoundProfile Read(FoundSheet found)
    {
        var read = BodyReader.Read(found.Body.Span, ShapeTable.Of<CompoundSheet>());
        var errors = read.Errors.Count > 0 ? [.. read.Errors.Select(ProblemError.From)] : RequestCheck.Errors(new CompoundSheetValidator(), (CompoundSheet)read.Value!);
        if (errors.Count > 0)
        {
            throw new StartRefusedException($"Compound sheet {found.Origin}: {string.Join("; ", errors.Select(error => $"{error.Pointer} {error.Detail}".TrimStart()))}");
        }

        var sheet = (CompoundSheet)read.Value!;
        return new(found.Id, sheet, sheet.ToEngine(), DigestOf(sheet));
    }
}
