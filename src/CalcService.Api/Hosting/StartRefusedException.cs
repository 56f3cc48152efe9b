namespace CalcService.Api.Hosting;

/// <summary>The service can't start as it was configured. The message is for whoever runs it, and says all that there is to say.</summary>
public sealed class StartRefusedException : Exception
{
    public StartRefusedException()
    {
    }

    public StartRefusedException(string message)
        : base(message)
    {
    }

    public StartRefusedException(string message, Exception cause)
        : base(message, cause)
    {
    }
}
