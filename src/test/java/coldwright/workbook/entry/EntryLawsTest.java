package coldwright.workbook.entry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.text.TextFile;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** Any text comes back from a file, also when an editor turned its line ends. */
class EntryLawsTest {
    private static final String HEADING = "Test 1";

    /** Texts of pieces that are hard to carry, and of any characters, halves of pairs too. */
    @Provide
    Arbitrary<String> texts() {
        Arbitrary<String> hard =
                Arbitraries.of(
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
                        "\u3000");
        Arbitrary<String> any = Arbitraries.strings().all().ofMaxLength(5);
        return Arbitraries.oneOf(hard, any).list().ofMaxSize(12).map(all -> String.join("", all));
    }

    @Property
    void whatIsWrittenReadsBack(
            @ForAll("texts") String value, @ForAll("texts") String block, @ForAll boolean turned) {
        String text =
                new EntryWriter(HEADING)
                        .entry("first", value)
                        .block(block)
                        .gap()
                        .entry("second 2", value)
                        .text();
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        TextFile file = TextFile.of(bytes);
        assertTrue(file.faults().isEmpty(), file.faults()::toString);
        String read = turned ? text.replace("\n", "\r\n") : file.text().orElseThrow();
        Parsed<List<Entry>> entries = EntryReader.read(read, HEADING);
        assertEquals(List.of(), entries.faults());
        assertEquals(2, entries.value().size());
        Entry first = entries.value().get(0);
        assertEquals(value, first.value());
        assertEquals(Optional.of(block), first.block());
        Entry second = entries.value().get(1);
        assertEquals("second", second.word());
        assertEquals(2, second.number());
        assertEquals(value, second.value());
        assertEquals(Optional.empty(), second.block());
    }

    /** A person's file: spaces at line ends gone, remarks, empty lines. */
    @Property
    void anyLinesAreReadWithoutHarm(@ForAll("texts") String text) {
        Parsed<List<Entry>> entries = EntryReader.read(HEADING + "\n" + text, HEADING);
        entries.faults().forEach(fault -> assertTrue(fault.line() > 1, fault::toString));
    }
}
