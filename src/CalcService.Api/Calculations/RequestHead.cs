using CalcService.Api.Problems;
using Microsoft.Net.Http.Headers;

namespace CalcService.Api.Calculations;

/// <summary>Checks of a calculation's query and Accept header.</summary>
public static class RequestHead
{
    /// <summary>Whether ?detail=full is asked for, or the problem with the query.</summary>
    public static (bool Full, Problem? Problem) ReadDetail(HttpRequest request)
    {
        var full = false;
        foreach (var (name, values) in request.Query)
        {
            if (name != "detail" || values.Count != 1 || values[0] != "full")
            {
                return (false, ProblemKinds.UnknownQuery.With());
            }

            full = true;
        }

        return (full, null);
    }

    /// <summary>The problem with a client that takes none of a media type, or null.</summary>
    public static Problem? CheckAccept(HttpRequest request, string mediaType)
    {
        if (request.Headers.Accept.Count == 0)
        {
            return null;
        }

        if (!MediaTypeHeaderValue.TryParseList(request.Headers.Accept, out var accepted))
        {
            return ProblemKinds.NotAcceptable.With();
        }

        // The most specific range decides: "application/json;q=0, */*" refuses what "*/*" alone would take.
        var offered = new MediaTypeHeaderValue(mediaType);
        var best = accepted
            .Where(range => offered.IsSubsetOf(new MediaTypeHeaderValue(range.MediaType)))
            .OrderBy(range => range.MatchesAllTypes ? 2 : range.MatchesAllSubTypes ? 1 : 0)
            .FirstOrDefault();
        return best is null || best.Quality is 0 ? ProblemKinds.NotAcceptable.With() : null;
    }
}
