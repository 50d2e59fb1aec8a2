package coldwright.science.crystal;

import coldwright.science.Require;

import java.util.List;

/**
 * A temperature at a time.
 *
 * @param minutes time since the batch went into the cold, min
 * @param temperatureC temperature of the batch, °C, −40 to 40
 */
public record ThermometerReading(double minutes, double temperatureC) {
    public ThermometerReading {
        Require.notNegative("minutes", minutes, "min");
        Require.within("temperatureC", temperatureC, new Require.Range(-40, 40, "°C"));
    }

    static CoolingPath path(List<ThermometerReading> readings) {
        Require.that(
                readings.size() >= 2,
                "there are %d readings; there must be two or more, at rising times",
                readings.size());
        double[] seconds = new double[readings.size()];
        double[] temperatures = new double[readings.size()];
        double start = readings.get(0).minutes;
        for (int i = 0; i < seconds.length; i++) {
            seconds[i] = (readings.get(i).minutes - start) * 60;
            temperatures[i] = readings.get(i).temperatureC;
            Require.that(
                    i == 0 || seconds[i] > seconds[i - 1],
                    "reading %d is at %s min, not after the one before it; times must rise",
                    i + 1,
                    readings.get(i).minutes);
        }
        return CoolingPath.along(seconds, temperatures);
    }
}
