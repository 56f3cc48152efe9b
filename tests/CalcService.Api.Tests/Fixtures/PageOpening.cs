namespace CalcService.Api.Tests.Fixtures;

/// <summary>What an address has to lead to.</summary>
internal static class PageOpening
{
    /// <summary>The page is there, and so is the place in it.</summary>
    public static async Task OpensAsync(this Service service, Uri address)
    {
        var page = await service.GetAsync(address.AbsolutePath);

        Assert.True(page.Status == 200, $"{address}: {page.Status}");
        var place = $"id=\"{address.Fragment.TrimStart('#')}\"";
        Assert.True(address.Fragment.Length == 0 || page.Text.Contains(place, StringComparison.Ordinal), address.ToString());
    }
}
