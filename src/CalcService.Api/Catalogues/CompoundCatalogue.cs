using CalcService.Api.Canonical;
using CalcService.Api.Contract;
using CalcService.Api.Problems;
using CalcService.Api.Reading;

namespace CalcService.Api.Catalogues;

/// <summary>A compound that requests can name by its id.</summary>
public sealed record CompoundProfile(string Id, CompoundSheet Sheet, Engine.Compounds.CompoundSheet EngineSheet, string Digest);

/// <summary>The compounds that the service knows. It holds no product's data: the one that ships with it is invented.</summary>
public sealed class CompoundCatalogue
{
    private const string Folder = "CalcService.Api.Compounds.";

    private readonly HashSet<string> _demonstrations;

    private CompoundCatalogue(IReadOnlyList<CompoundProfile> all)
    {
        All = all;
        Canonical = all.ToDictionary(object (profile) => profile.Sheet, profile => CanonicalOf(profile.Sheet), ReferenceEqualityComparer.Instance);
        _demonstrations = [.. all.Where(profile => profile.EngineSheet.Demonstration).Select(profile => Unflagged(profile.Sheet))];
    }

    public IReadOnlyList<CompoundProfile> All { get; }

    /// <summary>The canonical forms of the sheets, so that a request that names a profile needn't write it again.</summary>
    public IReadOnlyDictionary<object, ReadOnlyMemory<byte>> Canonical { get; }

    /// <summary>Reads the sheets that ship with the service through the same reader and validator as a sheet in a request.</summary>
    /// <exception cref="InvalidDataException">A sheet is not valid.</exception>
    public static CompoundCatalogue Load()
    {
        var assembly = typeof(CompoundCatalogue).Assembly;
        return new([.. assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(Folder, StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .Select(name =>
            {
                using var stream = assembly.GetManifestResourceStream(name)!;
                using var body = new MemoryStream();
                stream.CopyTo(body);
                return Read(name[Folder.Length..].Replace(".json", "", StringComparison.Ordinal), body.ToArray());
            })]);
    }

    public CompoundProfile? Find(string id) => All.FirstOrDefault(profile => profile.Id == id);

    /// <summary>The sheet that a request means, or null where it names none or both.</summary>
    public CompoundSheet? SheetOf(Compound compound) =>
        compound.Profile is { } id ? Find(id)?.Sheet : compound.Sheet;

    /// <summary>The sheet of a valid request, for the engine. A demonstration sheet that lost its flag stays one.</summary>
    public Engine.Compounds.CompoundSheet EngineSheetOf(Compound compound)
    {
        if (compound.Profile is { } id)
        {
            return Find(id)!.EngineSheet;
        }

        var sheet = compound.Sheet!.ToEngine();
        return sheet.Demonstration || !_demonstrations.Contains(Unflagged(compound.Sheet!)) ? sheet : sheet with { Demonstration = true };
    }

    /// <summary>Which compound a valid request means.</summary>
    public CompoundProvenance ProvenanceOf(Compound compound) => new()
    {
        Profile = compound.Profile,
        Digest = compound.Profile is { } id ? Find(id)!.Digest : DigestOf(compound.Sheet!),
    };

    /// <summary>The digest of a sheet.</summary>
    public static string DigestOf(CompoundSheet sheet) => Digest.Of(CanonicalOf(sheet).Span);

    private static ReadOnlyMemory<byte> CanonicalOf(CompoundSheet sheet) => CanonicalJson.Request(ShapeTable.Of<CompoundSheet>(), sheet);

    private static string Unflagged(CompoundSheet sheet) => DigestOf(sheet with { Demonstration = null });

    private static CompoundProfile Read(string id, byte[] body)
    {
        var read = BodyReader.Read(body, ShapeTable.Of<CompoundSheet>());
        var errors = read.Errors.Count > 0 ? [.. read.Errors.Select(ProblemError.From)] : RequestCheck.Errors(new CompoundSheetValidator(), (CompoundSheet)read.Value!);
        if (errors.Count > 0)
        {
            throw new InvalidDataException($"Compound sheet {id}: " + string.Join("; ", errors.Select(error => $"{error.Pointer} {error.Detail}")));
        }

        var sheet = (CompoundSheet)read.Value!;
        return new(id, sheet, sheet.ToEngine(), DigestOf(sheet));
    }
}
