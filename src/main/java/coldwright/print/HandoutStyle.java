package coldwright.print;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** The look of a page: one style sheet for paper and screen. */
enum HandoutStyle {
    /** A lesson. */
    HANDOUT("handout.css", ""),
    /** A batch on one sheet. */
    MAKE("make.css", ""),
    /** A batch of many lines on one sheet, in small type. */
    MAKE_TIGHT("make.css", " class=\"tight\"");

    private final String style;
    private final String body;

    HandoutStyle(String file, String body) {
        this.style = style(file);
        this.body = body;
    }

    private static String style(String file) {
        try (InputStream in = HandoutStyle.class.getResourceAsStream(file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException("the style sheet " + file + " can't be read", e);
        }
    }

    /** The whole file; the title is already markup. */
    String page(String title, PaperSize paper, String content) {
        return """
                <!DOCTYPE html>
                <html xmlns="http://www.w3.org/1999/xhtml" lang="en-GB">
                <head>
                <meta charset="UTF-8"/>
                <meta name="viewport" content="width=device-width, initial-scale=1"/>
                <title>%s</title>
                <style>
                @page { size: %s; }
                %s</style>
                </head>
                <body%s>
                <p class="running">%s</p>
                <main>
                %s</main>
                </body>
                </html>
                """
                .formatted(title, paper.size(), style, body, title, content);
    }
}
