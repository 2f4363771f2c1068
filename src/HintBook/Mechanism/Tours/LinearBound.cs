using System.Runtime.CompilerServices;

namespace HintBook.Mechanism.Tours;

/// <summary>
/// A lower bound of a linear programme: the least sum of costs of some columns, none of them negative, that satisfies some rows. It is found by the simplex
/// method on the dual programme, which any intermediate result bounds as well, and is believed only after the dual has been checked in whole numbers. Rows may
/// be added later on: the dual goes on from where it was.
/// </summary>
internal sealed class LinearBound
{
    // Duals of such programmes have small denominators: this is a multiple of each number up to 20. A dual that has others is not believed.
    private const long Scale = 232_792_560;
    private const long MostCells = 1_500_000;
    private const int MostPivots = 4_000;
    private const double Tiny = 1e-9;

    // Most costs are 0, so that many pivots would gain nothing and might go round in a circle. So what leaves is decided by costs that are a little greater,
    // each by another bit; what the end is worth is read from the real ones.
    private const double Bit = 1e-7;
    private const int Bits = 1_009;
    private readonly List<int> costs = [];
    private readonly List<(List<(int Column, int By)> Terms, int Least)> rows = [];

    // A dictionary: each basic variable is a constant less a sum over those that aren't. Slacks have the numbers of the columns, and duals those behind.
    private readonly List<int> free = [];
    private double[][] table = [];
    private double[] constant = [];
    private double[] greater = [];
    private int[] basic = [];
    private int pivots;

    /// <summary>Adds a column, before the programme is solved for the first time.</summary>
    /// <param name="cost">What one of it costs, at least 0.</param>
    /// <returns>Its number.</returns>
    public int Column(int cost)
    {
        costs.Add(cost);
        return costs.Count - 1;
    }

    /// <summary>Asks that a sum of columns is at least some number.</summary>
    public void AtLeast(int least, IEnumerable<(int Column, int By)> terms)
    {
        var sums = new SortedDictionary<int, int>();
        foreach (var (column, by) in terms)
            sums[column] = sums.GetValueOrDefault(column) + by;
        rows.Add(([.. sums.Where(term => term.Value != 0).Select(term => (term.Key, term.Value))], least));
    }

    /// <summary>Asks that a sum of columns is some number.</summary>
    public void Exactly(int number, IEnumerable<(int Column, int By)> terms)
    {
        (int Column, int By)[] all = [.. terms];
        AtLeast(number, all);
        AtLeast(-number, all.Select(term => (term.Column, -term.By)));
    }

    /// <summary>Solves the programme with all rows so far; false where it is too large.</summary>
    public bool Solve()
    {
        if ((long)(costs.Count + 1) * (rows.Count + 1) > MostCells)
            return false;
        if (table.Length == 0)
            Begin();
        TakeRows();
        for (; pivots < MostPivots; pivots++)
        {
            var enter = Entering();
            var leave = enter < 0 ? -1 : Leaving(enter);
            if (leave < 0)
                break;
            Pivot(leave, enter);
            (basic[leave], free[enter]) = (free[enter], basic[leave]);
        }

        return true;
    }

    /// <summary>The least sum of costs, as the last solution has it: not proved.</summary>
    public double Value => constant.Length == 0 ? 0 : constant[^1];

    /// <summary>How much of each column the last solution takes.</summary>
    public double[] Columns()
    {
        var taken = new double[costs.Count];
        for (var j = 0; j < free.Count; j++)
        {
            if (free[j] < taken.Length)
                taken[free[j]] = table[^1][j];
        }

        return taken;
    }

    /// <summary>The bound that the last solution proves, rounded up: costs are whole numbers, and so are the columns that it is asked for.</summary>
    public int Least()
    {
        var whole = new long[rows.Count];
        for (var i = 0; i < basic.Length; i++)
        {
            if (basic[i] >= costs.Count)
                whole[basic[i] - costs.Count] = (long)Math.Round(constant[i] * Scale);
        }

        return IsFeasible(whole) ? (int)Math.Max(0, (rows.Select((row, r) => row.Least * whole[r]).Sum() + Scale - 1) / Scale) : 0;
    }

    private bool IsFeasible(long[] dual)
    {
        long[] left = [.. costs.Select(cost => cost * Scale)];
        foreach (var (row, r) in rows.Select((row, r) => (row, r)))
        {
            foreach (var (column, by) in row.Terms)
                left[column] -= by * dual[r];
        }

        return Array.TrueForAll(dual, value => value >= 0) && Array.TrueForAll(left, each => each >= 0);
    }

    private void Begin()
    {
        var n = costs.Count;
        table = [.. Enumerable.Range(0, n + 1).Select(_ => new double[rows.Count])];
        constant = [.. costs, 0];
        greater = [.. costs.Select((cost, i) => cost + (Bit * (1 + (i * 619L % Bits)))), 0];
        basic = [.. Enumerable.Range(0, n)];
    }

    // What a new dual looks like now is told by what the slacks have become that it met with at first.
    private void TakeRows()
    {
        var n = costs.Count;
        var (rowOf, columnOf) = (new int[n], new int[n]);
        Array.Fill(columnOf, -1);
        for (var j = 0; j < free.Count; j++)
        {
            if (free[j] < n)
                columnOf[free[j]] = j;
        }

        for (var i = 0; i < n; i++)
        {
            if (basic[i] < n)
                rowOf[basic[i]] = i;
        }

        for (var i = 0; i <= n; i++)
            Array.Resize(ref table[i], rows.Count);
        for (var r = free.Count; r < rows.Count; r++)
        {
            table[n][r] = -rows[r].Least;
            foreach (var (column, by) in rows[r].Terms)
            {
                if (columnOf[column] < 0)
                {
                    table[rowOf[column]][r] += by;
                    continue;
                }

                for (var i = 0; i <= n; i++)
                    table[i][r] += by * table[i][columnOf[column]];
            }
        }

        for (var r = free.Count; r < rows.Count; r++)
            free.Add(n + r);
    }

    private int Entering()
    {
        var (enter, best, prices) = (-1, -Tiny, table[^1]);
        for (var j = 0; j < prices.Length; j++)
        {
            if (prices[j] < best)
                (enter, best) = (j, prices[j]);
        }

        return enter;
    }

    private int Leaving(int enter)
    {
        var (leave, least) = (-1, double.MaxValue);
        for (var i = 0; i < basic.Length; i++)
        {
            if (table[i][enter] > Tiny && greater[i] / table[i][enter] < least)
                (leave, least) = (i, greater[i] / table[i][enter]);
        }

        return leave;
    }

    // Nearly all the time is spent here, so no time is lost on code that isn't made fast yet.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Pivot(int leave, int enter)
    {
        var row = table[leave];
        var by = row[enter];
        row[enter] = 1;
        var some = new List<int>();
        for (var j = 0; j < row.Length; j++)
        {
            row[j] = Math.Abs(row[j]) < Tiny ? 0 : row[j] / by;
            if (row[j] != 0)
                some.Add(j);
        }

        constant[leave] /= by;
        greater[leave] /= by;
        for (var i = 0; i < table.Length; i++)
        {
            var times = table[i][enter];
            if (i == leave || times == 0)
                continue;
            var other = table[i];
            other[enter] = 0;
            foreach (var j in some)
                other[j] -= times * row[j];
            constant[i] -= times * constant[leave];
            greater[i] -= times * greater[leave];
        }
    }
}
