using System.Globalization;
using System.Runtime.CompilerServices;

namespace Hydrocolloid.Formulation.Costing;

/// <summary>Days: dates without a time, of no time zone.</summary>
internal static class Days
{
    private const string Form = "yyyy-MM-dd";

    public static DateTime Check(DateTime day, [CallerArgumentExpression(nameof(day))] string name = "")
        => day.TimeOfDay == TimeSpan.Zero ? DateTime.SpecifyKind(day, DateTimeKind.Unspecified)
            : throw new ArgumentException($"Must be a day without a time, but is {day.ToString("s", CultureInfo.InvariantCulture)}.", name);

    public static string Text(DateTime day) => day.ToString(Form, CultureInfo.InvariantCulture);

    public static bool TryParse(string text, out DateTime day)
        => DateTime.TryParseExact(text, Form, CultureInfo.InvariantCulture, DateTimeStyles.None, out day);
}
