using System.Text;
using CalcService.Api.Calculations;
using CalcService.Api.Hosting;
using CalcService.Api.Problems;

namespace CalcService.Api.Sheets;

/// <summary>Writes the printable form of an answer.</summary>
/// <param name="Page">The sheet, from request and answer.</param>
/// <param name="Picture">Its picture, from request and answer.</param>
public sealed record SheetWriter(Func<object, object, string> Page, Func<object, object, string> Picture);

/// <summary>POST of a calculation for print: a page, or its picture where the Accept header asks for it.</summary>
public static class SheetEndpoint
{
    public const string PageType = "text/html";
    public const string PictureType = "image/svg+xml";

    public static Task HandleAsync(HttpContext http, ICapability capability, SheetWriter sheet, Readiness readiness)
    {
        var type = RequestHead.CheckAccept(http.Request, PageType) is null ? PageType : PictureType;
        var refused = http.Request.Query.Count > 0
            ? ProblemKinds.UnknownQuery.With("A sheet takes no query parameters.")
            : RequestHead.CheckAccept(http.Request, type);
        var write = type == PageType ? sheet.Page : sheet.Picture;
        return CalculationEndpoint.AnswerAsync(http, capability, full: false, refused, readiness, processed =>
        {
            var body = Encoding.UTF8.GetBytes(write(processed.Request!, processed.Body));
            http.Response.ContentType = type + "; charset=utf-8";
            http.Response.Headers.ContentSecurityPolicy = StandardHeaders.SheetPolicy;
            return body;
        });
    }
}
