package coldwright.help;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.util.List;
import java.util.Optional;

class HelpIndexTest {
    private static final HelpIndex INDEX =
            HelpIndex.read(
                    """
                    # a remark
                    Curve\t\ttype\tCurve\tCurve\tHow much is ice.\t\t\tbare
                    icePercentAt\tCurve\tmethod\ticePercentAt(temperatureC in °C) → %\tdouble\tIce.\ttemperatureC: °C\\nno more\t%\t
                    massG\tCurve\tmethod\tmassG() → g\tdouble\tThe whole.\t\tg\t
                    massG\tCurve\tmethod\tmassG(ingredient) → g\tdouble\tOf one.\tingredient: which\tg\t
                    massG\tAmount\tcomponent\tmassG() → g\tdouble\tMass.\t\t\t
                    wallC\tCold.Machine\tcomponent\twallC() → °C\tdouble\tWall.\t\t\t
                    Cold\t\tinterface\tCold\tCold\tWhat cools.\t\t\tbare
                    film\tCold\tmethod\tfilm() → Film\tFilm\tWhat lies there.\t\t\t
                    of\tCurve\tfunction\tof(mix) → Curve\tCurve\tThe curve of a mix.\t\t\t
                    SUCROSE\tShelf\tingredient\tSUCROSE\tIngredient\tSucrose.\t\t\tbare
                    for\t\tjava\tfor (…) { … }\t\tRepeats.\t\t\tbare
                    """);

    @Test
    void aRowBecomesAnEntry() {
        assertEquals(
                List.of(
                        new HelpEntry(
                                "icePercentAt",
                                "Curve",
                                HelpEntry.Kind.METHOD,
                                "icePercentAt(temperatureC in °C) → %",
                                "double",
                                "Ice.",
                                List.of("temperatureC: °C", "no more"),
                                "%")),
                INDEX.named("icePercentAt"));
    }

    @Test
    void aDamagedRowIsRefused() {
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> HelpIndex.read("a\tb"));
        assertEquals(
                "the help row \"a\tb\" has 2 columns; it must have 9: build the index again",
                refused.getMessage());
    }

    /** The text with the caret as |, the type before the point, and the entries' signatures. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '^',
            value = {
                "curve.ice|PercentAt(-18) ; Curve ; [icePercentAt(temperatureC in °C) → %]",
                "curve.icePercentAt|(-18) ; coldwright.science.Curve ; [icePercentAt(temperatureC in °C) → %]",
                "curve.icePercentAt(|-18) ; Curve ; []",
                "curve::|icePercentAt ;  ; [icePercentAt(temperatureC in °C) → %]",
                "curve . |massG() ; Curve ; [massG() → g, massG(ingredient) → g]",
                "one.|massG() ;  ; []",
                "Curve.o|f(mix) ;  ; [of(mix) → Curve]",
                "names.o|f(mix) ; java.util.List<String> ; []",
                "|SUCROSE ;  ; [SUCROSE]",
                "Shelf.SUCROSE| ;  ; [SUCROSE]",
                "f|or (;  ; [for (…) { … }]",
                "mass|G ;  ; []",
                "machine.wallC| ; coldwright.Cold.Machine ; [wallC() → °C]",
                "machine.film| ; Cold.Machine ; [film() → Film]",
                "// SUC|ROSE ;  ; []",
                "\"SUC|ROSE\" ;  ; []",
                "a('\"', SUC|ROSE) ;  ; [SUCROSE]",
            })
    void helpIsOfTheWordUnderTheCaret(String marked, String receiver, String signatures) {
        int caret = marked.indexOf('|');
        List<String> found =
                INDEX.at(marked.replace("|", ""), caret, Optional.ofNullable(receiver)).stream()
                        .map(HelpEntry::signature)
                        .toList();
        assertEquals(signatures, found.toString());
    }

    @Test
    void aCaretOutsideTheTextIsRefused() {
        IllegalArgumentException refused =
                assertThrows(
                        IllegalArgumentException.class, () -> INDEX.at("abc", 4, Optional.empty()));
        assertEquals(
                "caret is 4; it must be between 0 and 3, the length of the text",
                refused.getMessage());
    }

    @Test
    void javasOwnWordsAreKnownWithoutABuild() {
        HelpIndex help = HelpIndex.ofThisProgram();
        assertEquals(
                "The square root.", help.alone("sqrt").get(0).sentence(), "a function of Math");
        assertEquals(
                "Prints a value and ends the line.",
                help.of("java.io.PrintStream", "println").get(0).sentence());
        assertEquals(
                "Declares a variable; Java finds its type from the value.",
                help.at("var a = 1;", 2, Optional.empty()).get(0).sentence());
    }
}
