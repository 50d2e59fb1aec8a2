package coldwright.paint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.figure.Figure;
import coldwright.figure.FigureDescription;
import coldwright.paint.style.FigureFont;
import coldwright.paint.style.FigureFormat;
import coldwright.paint.style.PixelImage;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;

class FigureFilesTest {
    private static final Figure FIGURE =
            Figure.of("Sugar & ice < −3 °C\u0001")
                    .x("sugar", "% by mass")
                    .y("freezing point", "°C")
                    .line("sucrose", new double[] {0, 20, 40}, new double[] {0, Double.NaN, -3.5})
                    .points("measured, \"old\"", new double[] {10}, new double[] {-0.7})
                    .markX("eutectic", 23.3);

    @TempDir Path folder;

    private static final FigureFormat SHEET = FigureFormat.of(800, 500);

    @Test
    void anSvgHoldsItsLettersAsTextAndSaysWhatItShows() throws Exception {
        Document svg = parsed(FigureFiles.svg(FIGURE, SHEET));
        assertEquals("img", svg.getDocumentElement().getAttribute("role"));
        assertEquals("Sugar & ice < −3 °C ", textOf(svg, "title"));
        assertEquals(FigureFont.shown(FigureDescription.describe(FIGURE)), textOf(svg, "desc"));
        NodeList texts = svg.getElementsByTagName("text");
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < texts.getLength(); i++) {
            all.append(texts.item(i).getTextContent()).append('|');
        }
        for (String word :
                List.of("Sugar & ice", "sugar, % by mass", "freezing point, °C", "sucrose")) {
            assertTrue(all.toString().contains(word), word + " is missing in " + all);
        }
        assertTrue(all.toString().contains("|−3.0|"), "no tick with a real minus sign: " + all);
    }

    @Test
    void namesWithinAnSvgDifferFromFigureToFigure() throws Exception {
        String one = FigureFiles.svg(FIGURE, SHEET);
        assertEquals(one, FigureFiles.svg(FIGURE, SHEET));
        String other = FigureFiles.svg(FIGURE.markX("more", 5), SHEET);
        assertNotEquals(idOf(one), idOf(other));
    }

    private static String idOf(String svg) throws Exception {
        String id = parsed(svg).getDocumentElement().getAttribute("id");
        assertTrue(id.startsWith("figure-"), id);
        return id;
    }

    @Test
    void aPngIsTheSamePicture() throws IOException {
        FigureFormat format = FigureFormat.of(300, 200).withScale(2);
        BufferedImage read =
                ImageIO.read(new ByteArrayInputStream(FigureFiles.png(FIGURE, 0, format)));
        PixelImage painted = ChartPainter.paint(FIGURE, format).picture();
        assertEquals(600, read.getWidth());
        for (int i = 0; i < 400; i++) {
            assertEquals(painted.rgbAt(i, i), read.getRGB(i, i) & 0xFFFFFF);
        }
    }

    @Test
    void aTableHasAGroupOfColumnsForEachSeries() throws IOException {
        List<CSVRecord> rows =
                CSVFormat.RFC4180.parse(new StringReader(FigureFiles.csv(FIGURE))).getRecords();
        assertEquals(
                List.of(
                        "sucrose: sugar, % by mass",
                        "sucrose: freezing point, °C",
                        "measured, \"old\": sugar, % by mass",
                        "measured, \"old\": freezing point, °C"),
                rows.get(0).toList());
        assertEquals(List.of("0.0", "0.0", "10.0", "-0.7"), rows.get(1).toList());
        assertEquals(List.of("20.0", "", "", ""), rows.get(2).toList());
        assertEquals(List.of("40.0", "-3.5", "", ""), rows.get(3).toList());
        assertEquals(4, rows.size());
    }

    @Test
    void bandsAndBarsHaveTheirColumns() {
        Figure band = Figure.of("b").x("t", "s").band("open", new double[] {1}, t -> 0, t -> 2);
        assertEquals(
                "\"open: t, s\",\"open: y, low\",\"open: y, high\"\r\n1.0,0.0,2.0\r\n"
                        .replace("\"", ""),
                FigureFiles.csv(band).replace("\"", ""));
        Figure bars = Figure.of("b").y("solids", "%").bars("s", List.of("rum"), new double[] {36});
        assertEquals("s: x,\"s: solids, %\"\r\nrum,36.0\r\n", FigureFiles.csv(bars));
        assertEquals("", FigureFiles.csv(Figure.of("empty")));
    }

    @Test
    void aFileIsReplacedWholeAndNothingElseIsLeft() throws IOException {
        for (String ending : List.of("svg", "png", "csv")) {
            Path file = folder.resolve("deep").resolve("figure." + ending);
            FigureFiles.write(FIGURE, 0, file);
            Files.writeString(file, "old");
            FigureFiles.write(FIGURE, 0, file);
            assertTrue(Files.size(file) > 100);
        }
        try (var files = Files.list(folder.resolve("deep"))) {
            assertEquals(3, files.count());
        }
        assertEquals(
                FigureFiles.csv(FIGURE),
                Files.readString(folder.resolve("deep/figure.csv"), StandardCharsets.UTF_8));
    }

    @Test
    void whatCouldNotBeWrittenLeavesWhatWasThere() throws IOException {
        Path taken = Files.createDirectories(folder.resolve("taken.svg").resolve("full"));
        assertThrows(IOException.class, () -> FigureFiles.write(FIGURE, 0, taken.getParent()));
        assertTrue(Files.isDirectory(taken));
        try (var files = Files.list(folder)) {
            assertEquals(1, files.count());
        }
    }

    @Test
    void anotherEndingIsRefused() {
        assertEquals(
                "figure.gif isn't a figure's file; it must end in .svg, .png or .csv",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> FigureFiles.write(FIGURE, 0, folder.resolve("figure.gif")))
                        .getMessage());
    }

    @ParameterizedTest
    @CsvSource({
        "Sugar against ice, sugar-against-ice.svg",
        "../../etc/passwd, etc-passwd.svg",
        "Gefrierpunkt: süß & groß, gefrierpunkt-suss-gross.svg",
        "'', figure.svg",
        "糖, figure.svg",
        "CON, figure.svg",
        "A title that goes on and on until nobody could want it as the name of a file, "
                + "a-title-that-goes-on-and-on-until-nobody-could-want-it-as.svg",
    })
    void aTitleMakesASafeName(String title, String name) {
        assertEquals(name, FigureFiles.nameFor(Figure.of(title), "svg"));
    }

    private static Document parsed(String xml) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(xml)));
    }

    private static String textOf(Document document, String element) {
        return document.getElementsByTagName(element).item(0).getTextContent();
    }
}
