namespace CalcService.Api.Problems;

/// <summary>Every problem that the service answers with.</summary>
public static class ProblemKinds
{
    public static ProblemKind Unreadable { get; } = new("unreadable", 400, "The request can't be read",
        "The body is not JSON as the contract has it: syntax, encoding, an unknown or repeated member, or a wrong JSON type. Each error "
            + "points to its member.");

    public static ProblemKind NotComputable { get; } = new("not-computable", 422, "The request can't be computed",
        "The body can be read, but something required is missing, out of range, no such word, unit or date, or contradicts something "
            + "else. Each error points to its member.");

    public static ProblemKind UnknownQuery { get; } = new("unknown-query", 400, "Unknown query parameter",
        "Calculations and batches take ?detail=full and nothing else; sheets and what is only read take nothing.");

    public static ProblemKind NotFound { get; } = new("not-found", 404, "Nothing here",
        "There is nothing at this address; /docs lists what there is.");

    public static ProblemKind MethodNotAllowed { get; } = new("method-not-allowed", 405, "Method not allowed",
        "This address takes another method; the Allow header names it.");

    public static ProblemKind NotAcceptable { get; } = new("not-acceptable", 406, "No such representation",
        "Answers are application/json (batches application/x-ndjson); the Accept header excludes them.");

    public static ProblemKind RequestTimeout { get; } = new("request-timeout", 408, "The request came too slowly",
        "The body did not arrive in time. Send it again.");

    public static ProblemKind TooLarge { get; } = new("too-large", 413, "The request is too large",
        "Bodies, lines and batches have limits; /v1/build lists them.");

    public static ProblemKind UnsupportedMediaType { get; } = new("unsupported-media-type", 415, "Unsupported media type or encoding",
        "Send application/json (batches application/x-ndjson) in UTF-8, plain or with Content-Encoding gzip or br.");

    public static ProblemKind TooManyRequests { get; } = new("too-many-requests", 429, "Too many requests",
        "This client has used up what it may ask for in a minute. Wait as Retry-After says and send the request again.");

    public static ProblemKind Internal { get; } = new("internal", 500, "The service failed",
        "Something went wrong here. Tell whoever runs the service the traceId; the request may be sent again.");

    public static ProblemKind Unavailable { get; } = new("unavailable", 503, "Not available now",
        "The service is starting, stopping, overloaded, or the calculation took too long. Wait as Retry-After says and send the request "
            + "again.");

    /// <summary>All kinds, by status.</summary>
    public static IReadOnlyList<ProblemKind> All { get; } =
    [
        Unreadable, UnknownQuery, NotFound, MethodNotAllowed, NotAcceptable, RequestTimeout, TooLarge, UnsupportedMediaType,
        NotComputable, TooManyRequests, Internal, Unavailable,
    ];

    /// <summary>The kind for a status that the framework set.</summary>
    public static ProblemKind ForStatus(int status) => status switch
    {
        400 => Unreadable,
        404 => NotFound,
        405 => MethodNotAllowed,
        406 => NotAcceptable,
        408 => RequestTimeout,
        413 => TooLarge,
        415 => UnsupportedMediaType,
        429 => TooManyRequests,
        503 => Unavailable,
        _ => status < 500 ? Unreadable : Internal,
    };
}
