package coldwright.workbook.settings;

/** In what temperatures are shown: degrees Celsius or Fahrenheit. */
public enum TemperatureUnit {
    C,
    F
}
