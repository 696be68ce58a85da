namespace MeshSim.OpenData.Tests.Optimisation.Medians;

/// <summary>What is settled about a site in a part of the search.</summary>
internal enum SiteState
{
    /// <summary>It may be chosen.</summary>
    Free,

    /// <summary>It is chosen.</summary>
    Chosen,

    /// <summary>It is not chosen.</summary>
    Excluded,
}

/// <summary>
/// Bounds of the p-median from below. Each client i offers a price u_i for being served; a site j that is chosen takes all the clients
/// it can serve for less, worth ρ_j = Σ_i min(0, d_ij − u_i). Whatever the prices are, no p sites cost less than
/// Σ_i u_i + the p smallest ρ_j; prices rise where nobody serves and fall where several do. G. Cornuéjols, M. L. Fisher,
/// G. L. Nemhauser, Management Science 23 (1977), 789–810; J. E. Beasley, European Journal of Operational Research 21 (1985), 270–273.
/// </summary>
internal sealed class MedianRelaxation
{
    // The bound and the costs are sums of at most some thousand doubles of some thousand units: rounding stays far below this.
    public const double Tolerance = 1e-6;

    private const int StepsWithoutGain = 20;
    private const double FirstStep = 1;
    private const double LeastStep = 1e-3;

    // How much of the last move a move keeps: without it prices swing about the best ones, and after the same number of steps the
    // published instances of 40 and more sites were left unproven (measured; 0.5 to 0.9 do about as well).
    private const double Kept = 0.7;

    private readonly MedianProblem problem;
    private readonly Action<int[]> propose;
    private readonly double[] worths;
    private readonly int[][] cheapestOpen;
    private int openCount;
    private readonly double[] move;
    private readonly int[] order;
    private readonly double[] keys;

    /// <summary>Prepares for a problem.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="propose">Called with the sites that each step chooses, in no order.</param>
    public MedianRelaxation(MedianProblem problem, Action<int[]> propose)
    {
        this.problem = problem;
        this.propose = propose;
        cheapestOpen = [.. Enumerable.Range(0, problem.ClientCount).Select(_ => new int[problem.SiteCount])];
        worths = new double[problem.SiteCount];
        move = new double[problem.ClientCount];
        order = new int[problem.SiteCount];
        keys = new double[problem.SiteCount];
    }

    /// <summary>
    /// Raises the bound by moving the prices, and settles sites without which, or with which, nothing below the upper bound is left.
    /// </summary>
    /// <param name="prices">Per client; set to those of the best bound.</param>
    /// <param name="states">Per site; free ones get settled.</param>
    /// <param name="upper">Asked for each step: only what costs less is of interest.</param>
    /// <param name="steps">Most steps.</param>
    /// <returns>The bound, and per site how often it was among the chosen.</returns>
    public (double Bound, int[] Chosen) Raise(double[] prices, SiteState[] states, Func<long> upper, int steps)
    {
        double bound = double.NegativeInfinity, step = FirstStep;
        double[] trial = [.. prices];
        int[] counts = new int[problem.SiteCount];
        Gather(states);
        Array.Clear(move);
        for (int at = 0, still = 0; at < steps && step > LeastStep; at++)
        {
            int[] chosen = Choose(trial, states);
            double value = trial.Sum() + chosen.Sum(site => worths[site]);
            if (value > bound + Tolerance)
            {
                bound = value;
                trial.CopyTo(prices, 0);
                still = 0;
            }
            else if (++still == StepsWithoutGain)
            {
                step /= 2;
                still = 0;
                prices.CopyTo(trial, 0);
                Array.Clear(move);
                continue;
            }

            propose(chosen);
            long limit = upper();
            if (Math.Ceiling(bound - Tolerance) >= limit) break;
            Settle(states, chosen, value, limit);
            foreach (int site in chosen) counts[site]++;
            if (!Move(trial, chosen, step * (limit - value))) break;
        }

        return (bound, counts);
    }

    /// <summary>Lists the sites that are not excluded, the cheapest for each client first.</summary>
    private void Gather(SiteState[] states)
    {
        for (int client = 0; client < cheapestOpen.Length; client++)
        {
            openCount = 0;
            foreach (int site in problem.CheapestFor(client))
                if (states[site] != SiteState.Excluded) cheapestOpen[client][openCount++] = site;
        }
    }

    /// <summary>The chosen sites and as many free ones as are still wanted, those worth most.</summary>
    private int[] Choose(double[] prices, SiteState[] states)
    {
        Array.Clear(worths);
        for (int client = 0; client < prices.Length; client++)
        {
            ReadOnlySpan<int> costs = problem.CostsOf(client);
            double price = prices[client];
            int[] sites = cheapestOpen[client];
            for (int place = 0; place < openCount; place++)
            {
                int site = sites[place];
                double saving = costs[site] - price;
                if (saving >= 0) break;
                worths[site] += saving;
            }
        }

        for (int site = 0; site < order.Length; site++)
        {
            order[site] = site;
            keys[site] = states[site] switch
            {
                SiteState.Chosen => double.NegativeInfinity,
                SiteState.Excluded => double.PositiveInfinity,
                _ => worths[site],
            };
        }

        Array.Sort(keys, order);
        return order[..problem.Count];
    }

    /// <summary>Settles each free site that would make the bound reach the limit when it changed sides.</summary>
    private void Settle(SiteState[] states, int[] chosen, double value, long limit)
    {
        if (problem.Count == order.Length) return;
        double lastIn = keys[problem.Count - 1], firstOut = keys[problem.Count];
        for (int place = 0; place < order.Length; place++)
        {
            int site = order[place];
            if (states[site] != SiteState.Free) continue;
            bool isIn = place < chosen.Length;
            double otherwise = isIn ? value - worths[site] + firstOut : value + worths[site] - lastIn;
            if (Math.Ceiling(otherwise - Tolerance) < limit) continue;
            states[site] = isIn ? SiteState.Chosen : SiteState.Excluded;
        }
    }

    /// <summary>
    /// Moves the prices along the subgradient, with some of the last move. False when that leads nowhere, as when every client is served
    /// exactly once and the bound is reached.
    /// </summary>
    private bool Move(double[] prices, int[] chosen, double distance)
    {
        double length = 0;
        for (int client = 0; client < prices.Length; client++)
        {
            ReadOnlySpan<int> costs = problem.CostsOf(client);
            int lacking = 1;
            foreach (int site in chosen)
                if (costs[site] < prices[client]) lacking--;
            move[client] = (Kept * move[client]) + lacking;
            length += move[client] * move[client];
        }

        if (length <= 0) return false;
        for (int client = 0; client < prices.Length; client++) prices[client] += distance / length * move[client];
        return true;
    }
}
