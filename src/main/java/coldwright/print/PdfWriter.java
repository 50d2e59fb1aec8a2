package coldwright.print;

import coldwright.paint.style.BundledFonts;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Base64;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Converts the HTML of a handout to PDF. */
public final class PdfWriter {
    private static final Logger QUIET = Logger.getLogger("org.apache.pdfbox");

    /** A picture up to the end of its description, which becomes the alternative text in a PDF. */
    private static final Pattern PICTURE =
            Pattern.compile("<svg((?:(?!<svg).)*?<desc[^>]*>)([^<]*)", Pattern.DOTALL);

    private PdfWriter() {}

    /** Converts the result of {@link Handout#html} to the bytes of a PDF file; fetches nothing. */
    public static byte[] of(String html) {
        BundledFonts.useIfAwtFails();
        XRLog.setLoggingEnabled(false);
        QUIET.setLevel(Level.SEVERE);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PdfRendererBuilder pages = new PdfRendererBuilder();
        pages.usePdfUaAccessibility(true);
        pages.useUriResolver((base, uri) -> uri.matches("#.*|data:font/.*") ? uri : null);
        pages.withProducer("Coldwright");
        font(pages, "GenBkBasR.ttf", "Gentium", 400, FontStyle.NORMAL);
        font(pages, "GenBkBasI.ttf", "Gentium", 400, FontStyle.ITALIC);
        font(pages, "GenBkBasB.ttf", "Gentium", 700, FontStyle.NORMAL);
        font(pages, "GenBkBasBI.ttf", "Gentium", 700, FontStyle.ITALIC);
        font(pages, "mononoki-Regular.ttf", "Mononoki", 400, FontStyle.NORMAL);
        font(pages, "mononoki-Bold.ttf", "Mononoki", 700, FontStyle.NORMAL);
        font(pages, "Lato-Regular.ttf", "Lato", 400, FontStyle.NORMAL);
        pages.useSVGDrawer(new BatikSVGDrawer());
        String described = PICTURE.matcher(html).replaceAll(PdfWriter::described);
        pages.withHtmlContent(described.replaceFirst("<style>", "<style>\n" + forPictures()), null);
        pages.toStream(bytes);
        try {
            pages.run();
        } catch (IOException e) {
            throw new IllegalStateException("the pages can't be set", e);
        }
        return bytes.toByteArray();
    }

    private static String described(MatchResult picture) {
        String alt = " alt=\"" + picture.group(2).replace("\"", "&quot;") + "\"";
        return Matcher.quoteReplacement("<svg" + alt + picture.group(1) + picture.group(2));
    }

    /** The number of pages of a PDF file. */
    static int pageCount(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages();
        } catch (IOException e) {
            throw new IllegalStateException("the pages just set can't be read", e);
        }
    }

    private static void font(
            PdfRendererBuilder pages, String file, String family, int weight, FontStyle style) {
        pages.useFont(() -> stream(file), family, weight, style, true);
    }

    /** Fonts for pictures: only those of the style sheet. */
    private static String forPictures() {
        return face("Lato", "Lato-Regular.ttf") + face("Linux Libertine O", "LinLibertine_R.otf");
    }

    private static String face(String family, String file) {
        try (InputStream in = stream(file)) {
            return "@font-face { font-family: \"%s\"; src: url(data:font/ttf;base64,%s); }\n"
                    .formatted(family, Base64.getEncoder().encodeToString(in.readAllBytes()));
        } catch (IOException e) {
            throw new IllegalStateException(file + " is part of the program and can't be read", e);
        }
    }

    private static InputStream stream(String file) {
        return PdfWriter.class.getResourceAsStream("/coldwright/fonts/" + file);
    }
}
