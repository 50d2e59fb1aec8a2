package coldwright.workbook.settings;

/** Unit of temperatures: degrees Celsius or Fahrenheit. */
public enum TemperatureUnit {
    C,
    F
}
