namespace CalcService.Api.Writing;

/// <summary>An object that may have been written already.</summary>
public interface IWritten
{
    /// <summary>The object as it is sent; empty where it hasn't been written.</summary>
    ReadOnlyMemory<byte> Written { get; }
}
