using CalcService.Api.Hosting;
using CalcService.Api.Reading;

namespace CalcService.Api.Catalogues;

/// <summary>A data sheet as it was found, not read yet.</summary>
/// <param name="Id">The id that requests will name it by.</param>
/// <param name="Origin">Where it was found, for a person.</param>
/// <param name="Body">Its bytes.</param>
public sealed record FoundSheet(string Id, string Origin, ReadOnlyMemory<byte> Body);

/// <summary>
/// Finds the operator's data sheets: each *.json file of one folder, not of the folders below. What is called so and is no file refuses the
/// start, as what is passed over would be missed on site, and a pipe would be waited for without end.
/// </summary>
public static class CompoundFolder
{
    /// <summary>Where the configuration names the folder.</summary>
    public const string Key = "Compounds:Folder";

    private const string Ending = ".json";

    // The same files on every platform: X.JSON and hidden files too, since a sheet that is passed over would be missed on site.
    private static readonly EnumerationOptions Sheets = new()
    {
        AttributesToSkip = FileAttributes.None,
        IgnoreInaccessible = false,
        MatchCasing = MatchCasing.CaseInsensitive,
    };

    /// <summary>The sheets of a folder, by id.</summary>
    /// <exception cref="StartRefusedException">The folder or a file can't be read, or a file's name can't be an id.</exception>
    public static IReadOnlyList<FoundSheet> Find(string folder)
    {
        if (string.IsNullOrWhiteSpace(folder))
        {
            throw new StartRefusedException($"{Key} is \"{folder}\"; a folder is expected.");
        }

        // Full, so that a message shows where a relative path led.
        folder = Path.GetFullPath(folder);
        return [.. Try($"{Key} {folder}", () => Directory.GetFileSystemEntries(folder, "*" + Ending, Sheets)).Order(StringComparer.Ordinal)
            .Select(Read)];
    }

    private static FoundSheet Read(string path)
    {
        var id = Path.GetFileName(path)[..^Ending.Length];
        var origin = Path.Join(Path.GetDirectoryName(path), ReadErrors.Show(id) + Ending);
        if (Texts.Fault(id, ShapeTable.TextLength, isId: true) is { } fault)
        {
            throw new StartRefusedException($"Compound sheet {origin}: the file's name can't be an id. {fault.Detail}");
        }

        return Try($"Compound sheet {path}", () =>
        {
            // Of a link its own length is told, not that of what it leads to.
            var named = new FileInfo(path);
            var found = named.ResolveLinkTarget(returnFinalTarget: true) ?? named;
            if (Directory.Exists(found.FullName) || found is FileInfo { Exists: true, Length: 0 })
            {
                throw new StartRefusedException($"Compound sheet {path}: it is empty or no file but a folder, pipe, socket or device.");
            }

            using var file = File.OpenRead(path);
            var body = new byte[Limits.BodyBytes + 1];
            var length = file.ReadAtLeast(body, body.Length, throwOnEndOfStream: false);
            return length <= Limits.BodyBytes
                ? new FoundSheet(id, path, body.AsMemory(0, length))
                : throw new StartRefusedException($"Compound sheet {path}: the file has more than {Limits.BodyBytes} bytes.");
        });
    }

    private static T Try<T>(string what, Func<T> read)
    {
        try
        {
            return read();
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw new StartRefusedException($"{what} can't be read: {failure.Message}", failure);
        }
    }
}
