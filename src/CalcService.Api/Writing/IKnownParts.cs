namespace CalcService.Api.Writing;

/// <summary>Knows parts of an object whose form is there already, so that they need not be written.</summary>
public interface IKnownParts
{
    /// <summary>The form of a part, recognised by reference.</summary>
    bool TryFind(object part, out ReadOnlyMemory<byte> written);
}
