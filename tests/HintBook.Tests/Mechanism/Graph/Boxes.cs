using System.Collections.Immutable;
using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Tests.Books;

namespace HintBook.Tests.Mechanism.Graph;

/// <summary>Boxes of nothing but facts: each stage needs some and gives the one of its own name.</summary>
internal static class Boxes
{
    /// <summary>A stage that needs what these conditions say and gives the fact of its own name.</summary>
    public static Stage Stage(string id, params Condition[] needs) => A.Stage(id) with
    {
        Moves = [new Move { Name = A.Value(id), Needs = [.. needs], Changes = [Learns(id)] }],
    };

    /// <summary>The fact is known.</summary>
    public static Condition Known(string fact) => A.Condition(fact);

    /// <summary>One of these facts is known.</summary>
    public static Condition Any(params string[] facts) => AnyOf([.. facts.Select(fact => ImmutableArray.Create(Known(fact)))]);

    public static Condition AnyOf(params ImmutableArray<Condition>[] alternatives) =>
        new AnyOf { At = A.Somewhere, Alternatives = [.. alternatives] };

    public static Change Learns(string fact) => A.Change(fact, HintBook.Books.Fact.Known);

    public static Fact Fact(string id) => new() { Id = A.Value(id), Name = id };

    /// <summary>A book of these stages, with a fact for each of them and for these names, whose goal is the last stage's fact.</summary>
    public static Book Book(Stage[] stages, params string[] facts) => A.Book(stages) with
    {
        Goal = [Known(stages[^1].Id.Value)],
        Box = new Box { Facts = [.. stages.Select(stage => stage.Id.Value).Concat(facts).Select(Fact)] },
    };

    public static Survey Survey(Book book) => Surveyor.Survey(book, whole: true).Survey!;

    /// <summary>Such as <c>a; b|c</c>: after a, and after one of b and c; empty for a stage that is open from the start.</summary>
    public static string OpensAfter(this Survey survey, string stage) =>
        string.Join("; ", survey.Stages[stage].OpensAfter.Select(group => string.Join('|', group)));

    public static string CertainBefore(this Survey survey, string stage) => string.Join(' ', survey.Stages[stage].CertainBefore);
}
