using System.Text;
using CalcService.Api.Catalogues;
using Markdig;
using Markdig.Extensions.AutoIdentifiers;

namespace CalcService.Api.Pages;

/// <summary>A page of the documentation from Markdown. Nothing of it is there before the first page is asked for.</summary>
internal static class MarkdownPage
{
    private static readonly MarkdownPipeline Pipeline =
        new MarkdownPipelineBuilder().UsePipeTables().UseAutoIdentifiers(AutoIdentifierOptions.GitHub).DisableHtml().Build();

    public static Representation Of(string title, string markdown) =>
        new(Encoding.UTF8.GetBytes(HtmlPage.Of(title, Markdown.ToHtml(markdown, Pipeline))), HtmlPage.ContentType);
}
