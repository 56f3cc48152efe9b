using CalcService.Api.Calculations;
using CalcService.Api.Contract;
using CalcService.Api.Hosting;
using CalcService.Api.Pages;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace CalcService.Api.OpenApi;

/// <summary>The OpenAPI document at /openapi/v1.json and the interactive documentation at /docs.</summary>
public static class OpenApiSetup
{
    private const string Description =
        "Decides about steel wire rope ends in resin sockets: match, pour, cure, proof load, reuse, inspection and records. Answers are "
            + "for competent people: the compound's data sheet, "
        + "the rope and socket makers' instructions and local codes stand above them. The compound called demonstration is invented. "
        + "Models and sources: [/docs/pages](../docs/pages).";

    public static void AddOpenApiDocument(this IServiceCollection services)
    {
        services.AddEndpointsApiExplorer();
        services.AddSwaggerGen(options =>
        {
            options.SwaggerDoc("v1", new OpenApiInfo { Title = "CalcService", Version = ContractVersion.Text, Description = Description });
            // HEAD is GET without its body; clients need no method for it.
            options.DocInclusionPredicate((_, operation) => operation.HttpMethod != HttpMethods.Head);
            options.OperationFilter<CalculationOperations>();
            options.DocumentFilter<DocumentDetails>();
        });
        services.AddSingleton<ISchemaGenerator, ShapeSchemas>();
    }

    public static void MapOpenApiDocument(this IEndpointRouteBuilder app) =>
        app.MapSwagger("/openapi/{documentName}.json", options => options.OpenApiVersion = OpenApiSpecVersion.OpenApi3_1)
            .ReadOnly(CalculationEndpoint.MediaType);

    public static void UseDocumentation(this IApplicationBuilder app) =>
        app.UseWhen(IsDocumentation, documentation => documentation.UseSwaggerUI(options =>
        {
            options.RoutePrefix = "docs";
            options.DocumentTitle = "CalcService";
            options.SwaggerEndpoint("/openapi/v1.json", "v1");
            options.EnableTryItOutByDefault();
            // Nothing is fetched from outside.
            options.EnableValidator(null);
        }));

    /// <summary>Whether a page of the documentation is asked for; as with every address, upper and lower case are the same.</summary>
    public static bool IsDocumentation(HttpContext http) =>
        http.Request.Path.StartsWithSegments("/docs", StringComparison.OrdinalIgnoreCase);
}

/// <summary>What belongs to the document as a whole.</summary>
public sealed class DocumentDetails : IDocumentFilter
{
    public void Apply(OpenApiDocument swaggerDoc, DocumentFilterContext context)
    {
        swaggerDoc.Servers = [new OpenApiServer { Url = "/", Description = "This service." }];
        swaggerDoc.Tags = new HashSet<OpenApiTag>
        {
            new() { Name = "Calculations", Description = "Decisions with their numbers, findings, cautions and trail." },
            new() { Name = "Catalogues", Description = "What the service knows." },
            new() { Name = "Operation", Description = "Whether it runs." },
        };
        swaggerDoc.ExternalDocs = Page("pages", "Every page: models with equations, ranges, sources and worked examples.");
        foreach (var (path, item) in swaggerDoc.Paths)
        {
            // A capability has the same word in its addresses and for its page: /v1/pour-plans/batch.
            var name = path.Split('/')[2];
            foreach (var operation in ModelPages.Has(name) ? item.Operations!.Values.AsEnumerable() : [])
            {
                operation.ExternalDocs = Page(name, "Model, equations, ranges, sources.");
            }
        }
    }

    /// <summary>Relative to the document's own address, so that it holds behind a gateway's prefix.</summary>
    private static OpenApiExternalDocs Page(string name, string description) =>
        new() { Url = new Uri("../docs/" + name, UriKind.Relative), Description = description };
}
