namespace HintBook.Tests.Mechanism.Graph;

/// <summary>
/// The flow graph of Lengauer and Tarjan, "A fast algorithm for finding dominators in a flowgraph" (1979), and its immediate dominators,
/// as boostorg/graph carries them in test/dominator_tree_test.cpp ("Tarjan's paper"; the paper itself was not seen). A vertex is a
/// stage that opens after any of its predecessors; what dominates it is what is certain before it.
/// </summary>
public class DominatorTests
{
    private const string Edges = "RA RB RC AD BA BD BE CF CG DL EH FI GI GJ HE HK IK JI KR KI LH";

    [Theory]
    [InlineData("R", "")]
    [InlineData("A", "R")]
    [InlineData("B", "R")]
    [InlineData("C", "R")]
    [InlineData("D", "R")]
    [InlineData("E", "R")]
    [InlineData("F", "R C")]
    [InlineData("G", "R C")]
    [InlineData("H", "R")]
    [InlineData("I", "R")]
    [InlineData("J", "R C G")]
    [InlineData("K", "R")]
    [InlineData("L", "R D")]
    public void What_is_certain_before_a_stage_are_its_dominators(string stage, string dominators)
    {
        var edges = Edges.Split(' ');
        var stages = "RABCDEFGHIJKL".Select(vertex => $"{vertex}").Select(vertex => vertex == "R"
            ? Boxes.Stage(vertex)
            : Boxes.Stage(vertex, Boxes.Any([.. edges.Where(edge => edge[1..] == vertex).Select(edge => edge[..1])])));
        Assert.Equal(dominators, Boxes.Survey(Boxes.Book([.. stages])).CertainBefore(stage));
    }
}
