namespace MeshSim.FloorPlans.Descriptions;

/// <summary>Makes a storey of a person's description: walls follow from room edges, exceptions and openings are put in place.</summary>
public static class StoreyBuilder
{
    /// <summary>Builds a storey. What is wrong with the description is data in the answer, all of it at once; nothing is thrown.</summary>
    public static StoreyBuilt Build(StoreyDescription description) => throw new NotSupportedException();
}
