package coldwright.workbook.entry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;
import coldwright.text.TextFault;
import coldwright.text.TextFile;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** Any text comes back from a file, also when an editor turned its line ends. */
class KeyedEntryLawsTest {
    private static final String HEADING = "Test 1";

    private static final String[] HARD = {
        "\n",
        "\r\n",
        "\r",
        "\t",
        " ",
        "    ",
        "key: value",
        "#",
        "⟦",
        "⟧",
        "⟦U+000D⟧",
        "\u2028",
        "\uFEFF",
        "\u0000",
        "\uD83C",
        "\uDF66",
        "🍦",
        "a",
        "−",
        ":",
        "\f",
        "\u0085",
        "\u00A0",
        "\u3000"
    };

    /** Texts of pieces that are hard to carry, and of any characters, halves of pairs too. */
    private static String texts(Draw draw) {
        return String.join(
                "", draw.listOf(0, 12, d -> d.from(e -> e.oneOf(HARD), e -> e.brokenText(5))));
    }

    @Cases(1000)
    void whatIsWrittenReadsBack(Draw draw) {
        String value = draw.one(KeyedEntryLawsTest::texts);
        String block = draw.one(KeyedEntryLawsTest::texts);
        boolean turned = draw.anyBoolean();
        String text =
                new KeyedEntryWriter(HEADING)
                        .entry("first", value)
                        .block(block)
                        .gap()
                        .entry("second 2", value)
                        .text();
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        TextFile file = TextFile.of(bytes);
        assertTrue(file.faults().isEmpty(), file.faults()::toString);
        String read = turned ? text.replace("\n", "\r\n") : file.text().orElseThrow();
        ParsedEntries<List<KeyedEntry>> entries = KeyedEntryReader.read(read, HEADING);
        assertEquals(List.of(), entries.faults());
        assertEquals(2, entries.value().size());
        KeyedEntry first = entries.value().get(0);
        assertEquals(value, first.value());
        assertEquals(Optional.of(block), first.block());
        KeyedEntry second = entries.value().get(1);
        assertEquals("second", second.word());
        assertEquals(2, second.number());
        assertEquals(value, second.value());
        assertEquals(Optional.empty(), second.block());
    }

    /** A person's file: spaces at line ends gone, remarks, empty lines. */
    @Cases(1000)
    void anyLinesAreReadWithoutHarm(Draw draw) {
        String text = draw.one(KeyedEntryLawsTest::texts);
        String file = HEADING + "\nfirst: kept\n" + text;
        ParsedEntries<List<KeyedEntry>> entries = KeyedEntryReader.read(file, HEADING);
        KeyedEntry first = entries.value().get(0);
        assertEquals("first: kept", first.key() + ": " + first.value());
        List<String> lines = List.of(file.split("\n", -1));
        for (TextFault fault : entries.faults()) {
            assertTrue(fault.line() > 2 && !lines.get(fault.line() - 1).isBlank(), fault::toString);
        }
        for (KeyedEntry entry : entries.value()) {
            assertTrue(lines.get(entry.line() - 1).contains(":"), entry::toString);
        }
    }
}
