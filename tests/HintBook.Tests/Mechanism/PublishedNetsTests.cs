using HintBook.Books;
using HintBook.Mechanism;
using HintBook.Mechanism.Model;
using HintBook.Mechanism.Packed;

namespace HintBook.Tests.Mechanism;

/// <summary>Nets of a public contest of model checkers: as many states, and steps between them, as it publishes.</summary>
public class PublishedNetsTests
{
    // Model Checking Contest, examination StateSpace, Philosophers-PT-000005: 243 markings, 945 arcs. Each fork is free or held from one of two sides, so 3^n;
    // a free fork can be taken from two sides, and whoever has two is done: 2n 3^(n-1) + n 3^(n-2) arcs.
    [Theory]
    [InlineData(2, 9, 14)]
    [InlineData(5, 243, 945)]
    [InlineData(8, 6561, 40824)]
    public void Philosophers_have_the_published_states_and_steps(int count, int states, int steps) =>
        Assert.Equal((states, steps), SizeOf(Nets.Philosophers(count)));

    // The two deadlocks of the textbook: each holds the fork on the left, or each that on the right. The first never eats if all take one fork before.
    [Theory]
    [InlineData(2)]
    [InlineData(5)]
    public void Philosophers_get_stuck_in_two_ways(int count)
    {
        Assert.Equal(2, DeadlocksIn(Nets.Philosophers(count)));
        Assert.Equal(count, Assert.IsType<Claim.Refuted>(Solving.Of(Nets.Philosophers(count)).NoDeadEnds).Witness.Length);
    }

    // Model Checking Contest, StateSpace, Dekker-PT-010: 6,144 markings, 171,530 arcs. Any may try while nobody is inside, or any other while one is:
    // 2^n + n 2^(n-1) = 2^(n-1) (n + 2).
    [Theory]
    [InlineData(2, 8)]
    [InlineData(5, 112)]
    [InlineData(10, 6144)]
    public void Dekkers_algorithm_has_the_published_states(int count, int states) => Assert.Equal(states, SizeOf(Nets.Dekker(count)).States);

    [Fact]
    public void Dekkers_algorithm_has_the_published_steps() => Assert.Equal(171_530, SizeOf(Nets.Dekker(10)).Steps);

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void In_Dekkers_algorithm_nobody_gets_stuck(bool reduce)
    {
        var solution = Solving.Of(Nets.Dekker(4), reduce);
        Assert.Equal(2, Assert.IsType<Claim.Proved>(solution.Shortest).Way.Length);
        Assert.IsType<Claim.Proved>(solution.NoDeadEnds);
    }

    // Model Checking Contest, StateSpace: TokenRing-PT-005 has 166 markings and 365 arcs, TokenRing-PT-010 has 58,905 and 294,050. The ring is Dijkstra's,
    // "Self-stabilizing systems in spite of distributed control" (1974), with as many numbers as machines.
    [Theory]
    [InlineData(5, 166, 365)]
    [InlineData(10, 58_905, 294_050)]
    public void A_token_ring_has_the_published_states_and_steps(int last, int states, int steps) =>
        Assert.Equal((states, steps), SizeOf(Nets.TokenRing(last)));

    // The first cell and the last are each in one of 4 states; of the two in the middle both are free or neither is: 4 (1 + 3 3) 4.
    // The net is Ciardo and Tilgner's (1996), whose table says 160 for one card (from memory).
    [Fact]
    public void Kanban_cells_with_one_card_have_the_published_states()
    {
        Assert.Equal(160, SizeOf(Nets.Kanban()).States);
        Assert.Equal(0, DeadlocksIn(Nets.Kanban()));
        Assert.IsType<Claim.Proved>(Solving.Of(Nets.Kanban()).NoDeadEnds);
    }

    // Model Checking Contest, StateSpace, Referendum-PT-0010: 59,050 (from memory). Before it is opened, or yes, no and neither for each: 1 + 3^n.
    [Theory]
    [InlineData(1, 4)]
    [InlineData(5, 244)]
    [InlineData(10, 59_050)]
    public void A_referendum_has_the_published_states(int voters, int states) => Assert.Equal(states, SizeOf(Nets.Referendum(voters)).States);

    // Any "no" is for good; the shortest way there is to open and to say it.
    [Fact]
    public void A_referendum_that_all_must_win_is_lost_in_two_steps() =>
        Assert.Equal(2, Assert.IsType<Claim.Refuted>(Solving.Of(Nets.Referendum(5)).NoDeadEnds).Witness.Length);

    // Model Checking Contest, StateSpace, RwMutex-PT-r0010w0010: 1,034 (from memory). Any readers and no writer, or one writer alone: 2^r + w.
    [Theory]
    [InlineData(1, 1, 3)]
    [InlineData(4, 3, 19)]
    [InlineData(10, 10, 1034)]
    public void Readers_and_writers_have_the_published_states(int readers, int writers, int states) =>
        Assert.Equal(states, SizeOf(Nets.ReadersAndWriters(readers, writers)).States);

    // Model Checking Contest, StateSpace: Eratosthenes-PT-010 has 32 markings, Eratosthenes-PT-020 has 2,048 (from memory). Primes stay, so each set of numbers
    // that aren't prime can be struck out: 2 to the power of how many there are.
    [Theory]
    [InlineData(10, 32)]
    [InlineData(20, 2048)]
    public void A_sieve_has_the_published_states(int most, int states)
    {
        Assert.Equal(states, SizeOf(Nets.Eratosthenes(most)).States);
        Assert.Equal(1, DeadlocksIn(Nets.Eratosthenes(most)));
    }

    private static StateGraph GraphOf(Book book) => Solving.GraphOf(Compiler.Compile(book));

    private static (int States, int Steps) SizeOf(Book book)
    {
        var graph = GraphOf(book);
        return (graph.Count, graph.From[graph.Count]);
    }

    private static int DeadlocksIn(Book book)
    {
        var graph = GraphOf(book);
        return Enumerable.Range(0, graph.Count).Count(state => graph.From[state] == graph.From[state + 1]);
    }
}
