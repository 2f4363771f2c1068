using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using CsCheck;

namespace HintBook.Tests.House;

/// <summary>Laws are tried on the same cases in every run, and a case that breaks one is named by its seed.</summary>
public class LawsTests
{
    private static readonly Gen<int> Numbers = Gen.Int[0, 1_000_000];

    [Fact]
    public void Every_run_draws_the_same_cases()
    {
        Assert.SkipWhen(Soak.IsOn, "A soak draws fresh cases.");
        Assert.Equal(Drawn(), Drawn());
    }

    [Fact]
    public void As_many_different_cases_are_tried_as_are_asked_for() =>
        Assert.InRange(Drawn().Distinct().Count(), 100 * Soak.Factor * 0.99, 100 * Soak.Factor);

    [Fact]
    public void The_seed_of_a_broken_law_is_told_and_gives_a_case_that_breaks_it_again()
    {
        var failure = Assert.ThrowsAny<Exception>(() => Numbers.Sample(number => number < 500_000));

        var seed = failure.Message.Split('"')[1];
        Assert.InRange(Numbers.Generate(PCG.Parse(seed), null, out _), 500_000, 1_000_000);
        Assert.ThrowsAny<Exception>(() => Numbers.Sample(number => number < 500_000, seed, iter: 0));
    }

    [Fact]
    public void A_law_that_breaks_only_once_is_not_passed_over()
    {
        var tries = 0;
        var failure = Assert.Throws<InvalidOperationException>(() => Numbers.Sample(_ => Interlocked.Increment(ref tries) != 1));

        Assert.Contains("held when it was tried again", failure.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(null, 1)]
    [InlineData("", 1)]
    [InlineData("1", 1)]
    [InlineData("20", 20)]
    public void The_environment_says_how_much_more_a_soak_tries(string? value, int factor) => Assert.Equal(factor, Soak.Read(value));

    [Theory]
    [InlineData("0")]
    [InlineData("-1")]
    [InlineData("lots")]
    public void A_soak_of_no_number_is_refused(string value) => Assert.Throws<FormatException>(() => Soak.Read(value));

    // CsCheck's own functions draw from the clock. Only the one in Laws, which is given a seed, is called in this assembly.
    [Fact]
    public void No_test_draws_cases_in_another_way()
    {
        using var file = new PEReader(File.OpenRead(typeof(LawsTests).Assembly.Location));
        var reader = file.GetMetadataReader();
        var called =
            from handle in reader.MemberReferences
            let member = reader.GetMemberReference(handle)
            where member.Parent.Kind == HandleKind.TypeReference
            let type = reader.GetTypeReference((TypeReferenceHandle)member.Parent)
            where reader.GetString(type.Namespace) == nameof(CsCheck) && reader.GetString(type.Name) == nameof(Check)
            select reader.GetString(member.Name);

        Assert.Equal([nameof(Check.Sample)], called);
    }

    private static int[] Drawn()
    {
        var drawn = new List<int>();
        Numbers.Sample(drawn.Add, threads: 1);
        return [.. drawn];
    }
}
