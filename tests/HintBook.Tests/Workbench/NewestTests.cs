using HintBook.Workbench;

namespace HintBook.Tests.Workbench;

/// <summary>A state that pages wait for.</summary>
public class NewestTests
{
    private readonly Newest<int> numbers = new(0, number => number);

    [Fact]
    public async Task Whoever_waits_is_told_of_the_next_state()
    {
        var waiting = numbers.After(0, CancellationToken.None);
        Assert.False(waiting.IsCompleted);

        numbers.Tell(number => number + 1);

        Assert.Equal(1, await waiting);
    }

    [Fact]
    public async Task A_page_that_knows_a_number_from_before_the_program_was_started_again_is_told_at_once() =>
        Assert.Equal(0, await numbers.After(7, CancellationToken.None));

    [Fact]
    public async Task At_the_end_nobody_waits_any_more_and_a_late_state_is_no_error()
    {
        var waiting = numbers.After(0, CancellationToken.None);

        numbers.End();
        numbers.Tell(number => number + 1);

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => waiting);
        Assert.Equal(1, numbers.Now);
    }
}
