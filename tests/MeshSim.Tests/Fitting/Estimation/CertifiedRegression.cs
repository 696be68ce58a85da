namespace MeshSim.Tests.Fitting.Estimation;

/// <summary>A regression of the NIST Statistical Reference Datasets with its certified values.</summary>
internal sealed class CertifiedRegression
{
    private CertifiedRegression(string name)
    {
        PublishedRow[] rows = [.. PublishedTable.Read($"Fitting/{name}.csv").Rows];
        PublishedRow[] certified = [.. PublishedTable.Read("Fitting/certified.csv").Rows.Where(row => row["data"] == name)];
        PublishedRow[] coefficients = [.. certified.Where(row => row["coefficient"] != "residual")];
        string[] predictors = [.. rows[0].Fields.Keys.Where(column => column.StartsWith('x')).Order(StringComparer.Ordinal)];
        Observed = [.. rows.Select(row => Fraction.Parse(row["y"]))];
        Design = [.. rows.Select(row => (Fraction[])[Fraction.One, .. predictors.Select(column => Fraction.Parse(row[column]))])];
        if (name == "pontius") Design = [.. Design.Select(row => (Fraction[])[.. row, row[1] * row[1]])];
        Coefficients = [.. coefficients.Select(row => row.Number("value"))];
        Deviations = [.. coefficients.Select(row => row.Number("standard_deviation"))];
        Residual = certified.Single(row => row["coefficient"] == "residual").Number("value");
    }

    public Fraction[] Observed { get; }

    public Fraction[][] Design { get; }

    public double[] Coefficients { get; }

    public double[] Deviations { get; }

    public double Residual { get; }

    public static CertifiedRegression Read(string name) => new(name);

    /// <summary>Coefficients, their standard deviations and the residual standard deviation, from the normal equations in exact fractions.</summary>
    public (double[] Coefficients, double[] Deviations, double Residual) Exact()
    {
        int count = Coefficients.Length;
        Fraction[][] matrix = [.. Enumerable.Range(0, count).Select(Row)];
        for (int column = 0; column < count; column++)
        {
            Fraction pivot = matrix[column][column];
            matrix[column] = [.. matrix[column].Select(value => value / pivot)];
            foreach (int row in Enumerable.Range(0, count).Where(row => row != column))
            {
                Fraction factor = matrix[row][column];
                matrix[row] = [.. matrix[row].Zip(matrix[column], (value, above) => value - (factor * above))];
            }
        }

        Fraction[] solved = [.. matrix.Select(row => row[count])];
        Fraction squares = Sum(Design.Zip(Observed, (row, y) => y - Sum(row.Zip(solved, (x, b) => x * b))).Select(rest => rest * rest));
        double variance = squares.Value / (Observed.Length - count);
        return ([.. solved.Select(value => value.Value)], [.. matrix.Select((row, i) => Math.Sqrt(row[count + 1 + i].Value * variance))], Math.Sqrt(variance));

        // XᵀX, Xᵀy and the identity beside each other.
        Fraction[] Row(int i) =>
        [
            .. Enumerable.Range(0, count).Select(j => Sum(Design.Select(row => row[i] * row[j]))),
            Sum(Design.Zip(Observed, (row, y) => row[i] * y)),
            .. Enumerable.Range(0, count).Select(j => i == j ? Fraction.One : Fraction.Zero),
        ];
    }

    private static Fraction Sum(IEnumerable<Fraction> values) => values.Aggregate(Fraction.Zero, (sum, value) => sum + value);
}
