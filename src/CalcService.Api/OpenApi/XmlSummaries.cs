using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace CalcService.Api.OpenApi;

/// <summary>The summaries of the code, so that the document says what the code says.</summary>
public sealed partial class XmlSummaries
{
    private readonly Dictionary<string, string> _summaries = new(StringComparer.Ordinal);

    public XmlSummaries(params IEnumerable<Assembly> assemblies)
    {
        foreach (var assembly in assemblies)
        {
            var path = Path.Combine(AppContext.BaseDirectory, assembly.GetName().Name + ".xml");
            foreach (var member in XDocument.Load(path).Descendants("member"))
            {
                if (member.Element("summary") is { } summary)
                {
                    _summaries[member.Attribute("name")!.Value] = Spaces().Replace(Text(summary), " ").Trim();
                }
            }
        }
    }

    public string? Of(Type type) => _summaries.GetValueOrDefault("T:" + Name(type));

    public string? Of(PropertyInfo property) => _summaries.GetValueOrDefault($"P:{Name(property.DeclaringType!)}.{property.Name}");

    private static string Name(Type type) => (type.IsGenericType ? type.GetGenericTypeDefinition() : type).FullName!.Replace('+', '.');

    private static string Text(XElement element) => string.Concat(element.Nodes().Select(node => node switch
    {
        XText text => text.Value,
        XElement see => see.Attribute("cref")?.Value.Split('.')[^1] ?? see.Value,
        _ => "",
    }));

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
