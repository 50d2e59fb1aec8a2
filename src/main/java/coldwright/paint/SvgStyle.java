package coldwright.paint;

import org.apache.batik.svggen.DefaultErrorHandler;
import org.apache.batik.svggen.DefaultExtensionHandler;
import org.apache.batik.svggen.DefaultStyleHandler;
import org.apache.batik.svggen.ImageHandlerBase64Encoder;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGIDGenerator;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** SVG output settings: unique IDs, numbers with two decimals, only relevant styles. */
final class SvgStyle extends SVGGeneratorContext {
    private static final String FONT_FAMILY = "font-family";

    SvgStyle(Document document, String id) {
        super(document);
        setIDGenerator(
                new SVGIDGenerator() {
                    @Override
                    public String generateID(String prefix) {
                        return id + "-" + super.generateID(prefix);
                    }
                });
        setExtensionHandler(new DefaultExtensionHandler());
        setImageHandler(new ImageHandlerBase64Encoder());
        setErrorHandler(new DefaultErrorHandler());
        setStyleHandler(new Handler());
        // own format, because the shared one isn't thread-safe
        decimalFormat = new DecimalFormat("0.##", DecimalFormatSymbols.getInstance(Locale.ROOT));
    }

    private static final class Handler extends DefaultStyleHandler {
        @Override
        @SuppressWarnings("rawtypes") // as Batik declares it
        public void setStyle(Element element, Map style, SVGGeneratorContext context) {
            Map<String, String> kept = new TreeMap<>();
            for (Map.Entry<?, ?> one : ((Map<?, ?>) style).entrySet()) {
                String name = (String) one.getKey();
                String value = (String) one.getValue();
                // an SVG viewer chooses its own hints for screens
                if (!name.matches(".*-rendering|color-interpolation")) {
                    kept.put(name, name.equals(FONT_FAMILY) ? family(value) : value);
                }
            }
            super.setStyle(element, kept, context);
        }

        /** The fonts to use if this program's fonts are missing. */
        private static String family(String family) {
            return family.contains("Lato")
                    ? "Lato, 'Open Sans', 'Segoe UI', sans-serif"
                    : family.contains("Linux Libertine")
                            ? "'Linux Libertine O', 'Linux Libertine', Georgia, serif"
                            : "sans-serif";
        }
    }
}
