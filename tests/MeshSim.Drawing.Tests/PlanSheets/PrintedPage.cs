using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace MeshSim.Drawing.Tests.PlanSheets;

/// <summary>A page of a PDF file as somebody else's program prints it, a tenth of a millimetre a pixel, in grey.</summary>
internal sealed partial class PrintedPage
{
    /// <summary>Pixels of the print for a millimetre of paper.</summary>
    public const double PerMillimetre = 10;

    private const string Printer = "pdftoppm";

    private readonly byte[] grey;
    private readonly int start;

    private PrintedPage(byte[] pgm)
    {
        Match head = Header().Match(Encoding.Latin1.GetString(pgm, 0, Math.Min(64, pgm.Length)));
        (Width, Height) = (Number(head, "width"), Number(head, "height"));
        (grey, start) = (pgm, head.Length);
    }

    public int Width { get; }

    public int Height { get; }

    public static bool CanPrint => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Any(folder => File.Exists(Path.Combine(folder, Printer)));

    /// <summary>Prints the first page.</summary>
    public static PrintedPage Of(byte[] pdf)
    {
        string folder = Directory.CreateTempSubdirectory("meshsim-print-").FullName;
        try
        {
            string file = Path.Combine(folder, "sheet.pdf");
            File.WriteAllBytes(file, pdf);
            using Process process = Process.Start(Printer, ["-r", "254", "-gray", "-singlefile", file, Path.Combine(folder, "page")]);
            process.WaitForExit();
            return new(File.ReadAllBytes(Path.Combine(folder, "page.pgm")));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>Whether a place is dark, whole pixels.</summary>
    public bool IsDark(int x, int y) => grey[start + (y * Width) + x] < 110;

    /// <summary>Middles of the dark stretches of a line of pixels that are at least so long, mm.</summary>
    public static double[] Stretches(int length, double leastMillimetres, Func<int, bool> isDark)
    {
        List<double> middles = [];
        int begin = -1;
        for (int at = 0; at <= length; at++)
        {
            bool dark = at < length && isDark(at);
            if (dark && begin < 0) begin = at;
            if (dark || begin < 0) continue;
            if (at - begin >= leastMillimetres * PerMillimetre) middles.Add((begin + at) / 2.0 / PerMillimetre);
            begin = -1;
        }

        return [.. middles];
    }

    private static int Number(Match match, string group) => int.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^P5\s+(?<width>\d+)\s+(?<height>\d+)\s+255\s", RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking)]
    private static partial Regex Header();
}
