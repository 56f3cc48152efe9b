using CalcService.Api.Catalogues;
using CalcService.Api.Validation;
using Microsoft.Extensions.DependencyInjection;

namespace CalcService.Api.Tests.Fixtures;

/// <summary>The checks of objects without a service around them.</summary>
internal static class Unchecked
{
    /// <summary>With the compounds that ship and nothing else to know.</summary>
    public static ObjectChecks Objects { get; } =
        new(new ServiceCollection().AddSingleton(CompoundCatalogue.Load(folder: null)).BuildServiceProvider());
}
