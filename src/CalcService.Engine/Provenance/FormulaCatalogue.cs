using System.Collections.Frozen;
using System.Reflection;

namespace CalcService.Engine.Provenance;

/// <summary>Every formula of the engine by its id, read once from the attributes.</summary>
public static class FormulaCatalogue
{
    /// <summary>All formulas, keyed by id.</summary>
    public static FrozenDictionary<string, FormulaAttribute> All { get; } = typeof(FormulaCatalogue).Assembly
        .GetTypes()
        .SelectMany(type => type.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly))
        .Select(method => method.GetCustomAttribute<FormulaAttribute>())
        .OfType<FormulaAttribute>()
        .ToFrozenDictionary(formula => formula.Id, StringComparer.Ordinal);
}
