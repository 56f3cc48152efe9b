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

    /// <param name="title">The title, as text.</param>
    /// <param name="markdown">The content.</param>
    /// <param name="root">The way from the page to the root of the service.</param>
    public static Representation Of(string title, string markdown, string root)
    {
        var body = PageAddress.Linked(Markdown.ToHtml(markdown, Pipeline), root);
        return new(Encoding.UTF8.GetBytes(HtmlPage.Of(title, body)), HtmlPage.ContentType);
    }
}
