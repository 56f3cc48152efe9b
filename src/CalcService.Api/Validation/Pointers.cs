using System.Globalization;
using System.Text;
using System.Text.Json;

namespace CalcService.Api.Validation;

/// <summary>Turns a validator's property path (Ends[0].Rope.Diameter) into a JSON Pointer (/ends/0/rope/diameter).</summary>
public static class Pointers
{
    public static string FromPropertyPath(string path)
    {
        var pointer = new StringBuilder();
        foreach (var part in path.Split('.', StringSplitOptions.RemoveEmptyEntries))
        {
            var bracket = part.IndexOf('[', StringComparison.Ordinal);
            pointer.Append('/').Append(JsonNamingPolicy.CamelCase.ConvertName(bracket < 0 ? part : part[..bracket]));
            if (bracket >= 0)
            {
                pointer.Append(CultureInfo.InvariantCulture, $"/{part[(bracket + 1)..^1]}");
            }
        }

        return pointer.ToString();
    }
}
