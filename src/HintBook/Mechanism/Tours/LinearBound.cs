namespace HintBook.Mechanism.Tours;

/// <summary>
/// A lower bound of a linear programme: the least sum of costs of some columns, none of them negative, that satisfies some rows. It is found by the simplex
/// method on the dual programme, which any intermediate result bounds as well, and is believed only after the dual has been checked in whole numbers.
/// </summary>
internal sealed class LinearBound
{
    // Duals of such programmes have small denominators; a dual that has others is not believed.
    private const long Scale = 27_720;
    private const long MostCells = 1_500_000;
    private const int MostPivots = 4_000;
    private const int FewPivots = 40;
    private const double Tiny = 1e-9;
    private readonly List<int> costs = [];
    private readonly List<(List<(int Column, int By)> Terms, int Least)> rows = [];

    /// <summary>Adds a column.</summary>
    /// <param name="cost">What one of it costs, at least 0.</param>
    /// <returns>Its number.</returns>
    public int Column(int cost)
    {
        costs.Add(cost);
        return costs.Count - 1;
    }

    /// <summary>Asks that a sum of columns is at least some number.</summary>
    public void AtLeast(int least, IEnumerable<(int Column, int By)> terms) =>
        rows.Add(([.. terms.GroupBy(term => term.Column).Select(group => (group.Key, group.Sum(term => term.By))).Where(term => term.Item2 != 0)], least));

    /// <summary>Asks that a sum of columns is some number.</summary>
    public void Exactly(int number, IEnumerable<(int Column, int By)> terms)
    {
        (int Column, int By)[] all = [.. terms];
        AtLeast(number, all);
        AtLeast(-number, all.Select(term => (term.Column, -term.By)));
    }

    /// <summary>The bound, rounded up: costs are whole numbers, and so are the columns that it is asked for.</summary>
    public int Least()
    {
        if ((long)(costs.Count + 1) * (rows.Count + 1) > MostCells)
            return 0;
        var dual = Dual();
        long[] whole = [.. dual.Select(value => (long)Math.Round(value * Scale))];
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

    // A dictionary: each basic variable is a constant less a sum over those that aren't. Slacks have the numbers behind the rows.
    private double[] Dual()
    {
        var (n, m) = (costs.Count, rows.Count);
        var table = new double[n + 1][];
        for (var i = 0; i <= n; i++)
            table[i] = new double[m + 1];
        for (var i = 0; i < n; i++)
            table[i][m] = costs[i];
        for (var r = 0; r < m; r++)
        {
            table[n][r] = -rows[r].Least;
            foreach (var (column, by) in rows[r].Terms)
                table[column][r] = by;
        }

        int[] basic = [.. Enumerable.Range(m, n)], free = [.. Enumerable.Range(0, m)];
        for (var (pivots, still) = (0, 0); pivots < MostPivots; pivots++)
        {
            // The first that helps after many pivots that didn't (Bland's rule), or else the one that helps most.
            var enter = -1;
            for (var j = 0; j < m; j++)
            {
                if (table[n][j] < -Tiny && (enter < 0 || (still > FewPivots ? free[j] < free[enter] : table[n][j] < table[n][enter])))
                    enter = j;
            }

            var leave = enter < 0 ? -1 : Leaving(table, basic, enter);
            if (leave < 0)
                break;
            still = table[leave][m] < Tiny ? still + 1 : 0;
            Pivot(table, leave, enter);
            (basic[leave], free[enter]) = (free[enter], basic[leave]);
        }

        var dual = new double[m];
        for (var i = 0; i < n; i++)
        {
            if (basic[i] < m)
                dual[basic[i]] = table[i][m];
        }

        return dual;
    }

    private static int Leaving(double[][] table, int[] basic, int enter)
    {
        var (leave, least, last) = (-1, double.MaxValue, table[0].Length - 1);
        for (var i = 0; i < basic.Length; i++)
        {
            if (table[i][enter] <= Tiny)
                continue;
            var ratio = table[i][last] / table[i][enter];
            if (ratio < least - Tiny || (ratio < least + Tiny && basic[i] < basic[leave]))
                (leave, least) = (i, Math.Min(ratio, least));
        }

        return leave;
    }

    private static void Pivot(double[][] table, int leave, int enter)
    {
        var row = table[leave];
        var by = row[enter];
        row[enter] = 1;
        for (var j = 0; j < row.Length; j++)
            row[j] /= by;
        for (var i = 0; i < table.Length; i++)
        {
            var times = table[i][enter];
            if (i == leave || times == 0)
                continue;
            var other = table[i];
            other[enter] = 0;
            for (var j = 0; j < row.Length; j++)
                other[j] -= times * row[j];
        }
    }
}
