using System.Text;
using System.Text.Json.Nodes;

namespace CalcService.Api.Tests.Fixtures;

/// <summary>A folder of compound sheets for one test, gone afterwards.</summary>
public sealed class SheetFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("sheets").FullName;

    /// <summary>An operator's sheet: one kit, the shop's own dose and gel times.</summary>
    public static JsonObject Sheet => JsonNode.Parse("""
        {
          "name": "Sheet of the shop",
          "currency": "EUR",
          "kits": [ { "code": "small", "volume": { "value": 250, "unit": "mL" }, "cost": 17 } ],
          "pouring": { "minimum": { "value": 5, "unit": "degC" }, "maximum": { "value": 30, "unit": "degC" } },
          "doses": [ { "from": { "value": 5, "unit": "degC" }, "below": { "value": 30, "unit": "degC" }, "perKit": 0 } ],
          "gelTimes": [
            { "temperature": { "value": 5, "unit": "degC" }, "doses": 0, "time": { "value": 50, "unit": "min" } },
            { "temperature": { "value": 25, "unit": "degC" }, "doses": 0, "time": { "value": 20, "unit": "min" } }
          ],
          "potLife": { "value": 70, "unit": "%" }
        }
        """)!.AsObject();

    public SheetFolder With(string file, JsonNode sheet) => With(file, sheet.ToJsonString());

    public SheetFolder With(string file, string text)
    {
        File.WriteAllText(PathOf(file), text, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        return this;
    }

    public string PathOf(string file) => System.IO.Path.Join(Path, file);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
