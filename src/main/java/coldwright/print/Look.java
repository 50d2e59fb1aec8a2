package coldwright.print;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** The look of a handout: one style sheet for paper and screen. */
final class Look {
    private static final String STYLE = style();

    private Look() {}

    private static String style() {
        try (InputStream in = Look.class.getResourceAsStream("handout.css")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException("the style sheet of handouts can't be read", e);
        }
    }

    /** The whole file; the title is markup already. */
    static String page(String title, Paper paper, String body) {
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
                <body>
                <p class="running">%s</p>
                <main>
                %s</main>
                </body>
                </html>
                """
                .formatted(title, paper.size(), STYLE, title, body);
    }
}
