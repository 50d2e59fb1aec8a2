package coldwright.workbook.settings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;
import coldwright.text.TextFault;
import coldwright.workbook.entry.ParsedEntries;
import coldwright.workbook.work.ContentHash;

import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.Locale;

/** Settings read back; what is wrong in them is told and has its usual value. */
class PreferencesLawsTest {
    @Cases(1000)
    void whatIsWrittenReadsBack(Draw draw) {
        int typeSizePercent = draw.intIn(50, 300);
        Theme theme = draw.oneOf(Theme.values());
        TemperatureUnit temperature = draw.oneOf(TemperatureUnit.values());
        CodeView code = draw.oneOf(CodeView.values());
        MassUnit mass = draw.oneOf(MassUnit.values());
        Language language = draw.oneOf(Language.all());
        BenchLimit limit = draw.oneOf(BenchLimit.values());
        int number = draw.intIn(Integer.MIN_VALUE, Integer.MAX_VALUE);
        int value = limit.least() + Math.floorMod(number, limit.most() - limit.least() + 1);
        Preferences chosen =
                Preferences.usual()
                        .withTypeSizePercent(typeSizePercent)
                        .with(theme)
                        .with(temperature)
                        .with(mass)
                        .with(code)
                        .with(language)
                        .with(limit, value);
        if (draw.anyBoolean()) {
            chosen =
                    chosen.with(
                            new WindowPlace(
                                    draw.intIn(-9_999, 9_999),
                                    draw.intIn(-9_999, 9_999),
                                    draw.intIn(1, 9_999),
                                    draw.intIn(1, 9_999),
                                    draw.anyBoolean()));
        }
        assertEquals(
                new ParsedEntries<>(chosen, List.of()),
                PreferencesText.read(PreferencesText.write(chosen)));
    }

    @Cases(1000)
    void anyTextGivesSettings(Draw draw) {
        String text = draw.brokenText(255);
        Preferences read = PreferencesText.read(text).value();
        assertEquals(read, PreferencesText.read(PreferencesText.write(read)).value());
    }

    @Test
    void numbersInTheFileHaveTheSameDigitsUnderAnyLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            String text =
                    PreferencesText.write(
                            Preferences.usual().with(new WindowPlace(40, -30, 1280, 800, true)));
            assertTrue(text.contains("window: 40 -30 1280 800 maximised"), text);
            assertTrue(text.chars().filter(Character::isDigit).allMatch(c -> c <= '9'), text);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void badValuesAreToldAndUnknownKeysKept() {
        String text =
                """
                Coldwright settings 1
                # mine
                theme: beige
                mass: oz
                heapMb: 12
                shelf: top
                typeSizePercent: large
                temperature: C
                language: system
                printedLimit: 100000
                figureLimit: 20
                pointLimit: 100000
                askAfterSeconds: 10
                """;
        ParsedEntries<Preferences> read = PreferencesText.read(text);
        assertEquals(
                Preferences.usual().with(MassUnit.OZ).withOthers(List.of("# mine", "shelf: top")),
                read.value());
        assertEquals(
                List.of(
                        new TextFault(
                                3,
                                "theme is \"beige\"; it must be one of light, dark, contrast. Coldwright uses the usual value"),
                        new TextFault(
                                5,
                                "heapMb is \"12\"; it must be a whole number from 32 to 8192. Coldwright uses the usual value"),
                        new TextFault(
                                7,
                                "typeSizePercent is \"large\"; it must be a whole number from 50 to 300. Coldwright uses the usual value")),
                read.faults());
        assertEquals(
                "heapMb is 12; it must be between 32 and 8192",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> Preferences.usual().with(BenchLimit.HEAP_MB, 12))
                        .getMessage());
    }

    @Cases(1000)
    void agreementsReadBack(Draw draw) {
        List<String> lessons = draw.listOf(0, 255, d -> d.brokenText(255));
        Agreements agreed = Agreements.none();
        for (String lesson : lessons) {
            agreed = agreed.agree(ContentHash.of(lesson), lesson);
        }
        assertEquals(new ParsedEntries<>(agreed, List.of()), Agreements.read(agreed.text()));
    }

    @Test
    void whatIsNoHashIsNoAgreement() {
        ContentHash hash = ContentHash.of("a");
        Agreements read =
                Agreements.read("Coldwright agreements 1\n" + hash.hex().substring(1) + " a\n")
                        .value();
        assertEquals(Agreements.none(), read);
    }
}
