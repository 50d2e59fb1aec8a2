import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Units of numbers, from the end of their names. */
final class Units {
    /** Units by the end of a name, longer ends first. */
    private static final Map<String, String> UNITS = units();

    private static final Pattern UNIT_IN_NAME =
            Pattern.compile(
                    "(?:(?<=[a-z0-9])("
                            + String.join("|", UNITS.keySet())
                            + ")|^(percent))(?:(?:At|Of|For|From|To|In|Between|When|With|After)(?=[A-Z]|$).*)?$");
    private static final Pattern NUMBER = Pattern.compile("(double|int|long)(\\[\\]|\\.\\.\\.)?");

    private Units() {}

    /** The unit; empty if the type isn't a number or the name has no unit. */
    static String of(String name, String type) {
        Matcher found =
                UNIT_IN_NAME.matcher(
                        name.contains("_") || name.equals(name.toUpperCase(Locale.ROOT))
                                ? camel(name)
                                : name);
        if (!NUMBER.matcher(type).matches() || !found.find()) {
            return "";
        }
        return found.group(1) == null ? "%" : UNITS.get(found.group(1));
    }

    /** The name of a constant in the style of a variable. */
    private static String camel(String constant) {
        return Arrays.stream(constant.split("_"))
                .map(word -> word.charAt(0) + word.substring(1).toLowerCase(Locale.ROOT))
                .collect(Collectors.joining());
    }

    private static Map<String, String> units() {
        String pairs =
                """
                Per100gWater=g per 100 g of water; WPerMK=W/(m·K); WPerM2K=W/(m²·K); WPerM2=W/m²;
                JPerGK=J/(g·K); JPerG=J/g; GPerMol=g/mol; KgPerM3=kg/m³; KgPerL=kg/L; MPaS=mPa·s;
                PaS=Pa·s; KPerMin=K/min; UmPerS=µm/s; PerMl=per mL; PerUm=per µm; PerS=per s;
                VolumePercent=% by volume; PercentOfMix=% of the mix; Percent=%; Millimol=mmol;
                Minutes=minutes; Hours=hours; Seconds=s; Days=days; Ml=mL; Um2=µm²; M2=m²; Mm=mm;
                Um=µm; Nm=nm; KJ=kJ; Kg=kg; C=°C; G=g; K=K; J=J; L=L; M=m; W=W; S=s""";
        Map<String, String> units = new LinkedHashMap<>();
        for (String pair : pairs.split(";\\s+")) {
            units.put(pair.split("=")[0], pair.split("=")[1]);
        }
        return units;
    }
}
