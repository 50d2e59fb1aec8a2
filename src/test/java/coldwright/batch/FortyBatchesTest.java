package coldwright.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.science.balance.AmountChange;
import coldwright.science.crystal.Method;
import coldwright.science.plan.BatchState;
import coldwright.science.plan.Faults;
import coldwright.science.plan.IngredientRole;
import coldwright.science.plan.Plan;
import coldwright.science.plan.Planner;
import coldwright.science.style.DietRules;
import coldwright.science.style.Style;
import coldwright.science.style.StyleGuess;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * Forty batches: twenty sound ones after published ranges, without a finding, and twenty with one
 * planted fault, which comes first and which the plan resolves by the obvious means.
 */
class FortyBatchesTest {
    private static final Map<String, Method> METHODS =
            Map.of(
                    "MACHINE", Method.MACHINE,
                    "BAG", Method.BAG,
                    "SHAKEN_TUB", Method.SHAKEN_TUB,
                    "STILL_TUB", Method.STILL_TUB);

    record Row(
            String name,
            Recipe recipe,
            Style style,
            DietRules diet,
            String fault,
            Set<String> means) {
        @Override
        public String toString() {
            return name;
        }

        BatchState state() {
            return new BatchKitchen(recipe).state(style, diet);
        }
    }

    static List<Row> rows() throws IOException {
        CSVFormat format =
                CSVFormat.DEFAULT
                        .builder()
                        .setCommentMarker('#')
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get();
        List<Row> rows = new ArrayList<>();
        try (Reader reader =
                new InputStreamReader(
                        Objects.requireNonNull(
                                FortyBatchesTest.class.getResourceAsStream(
                                        "/recipes/forty-batches.csv")),
                        StandardCharsets.UTF_8)) {
            for (CSVRecord row : format.parse(reader)) {
                rows.add(row(row));
            }
        }
        return rows;
    }

    private static Row row(CSVRecord row) {
        List<RecipeLine> lines = new ArrayList<>();
        for (String one : row.get("recipe").split("; *")) {
            int space = one.lastIndexOf(' ');
            lines.add(new RecipeLine(one.substring(space + 1) + " g", one.substring(0, space)));
        }
        FreezingSetup setup = FreezingSetup.USUAL.by(METHODS.get(row.get("method")));
        if (row.get("fault").equals("SMALL_BATH")) {
            setup = setup.with(SetupField.ICE, "200").with(SetupField.SALT, "50");
        }
        if (row.get("fault").equals("NO_STABILISER")) {
            setup = setup.with(SetupField.DAYS, "21");
        }
        String diet = row.get("diet");
        return new Row(
                row.get("name"),
                Recipe.of(row.get("name"), setup, lines),
                Style.valueOf(row.get("style")),
                diet.isEmpty() ? DietRules.AS_IT_IS : DietRules.named(diet),
                row.get("fault"),
                Set.of(row.get("means").split(" ")));
    }

    static List<Row> sound() throws IOException {
        return rows().stream().filter(row -> row.fault().isEmpty()).toList();
    }

    static List<Row> faulty() throws IOException {
        return rows().stream().filter(row -> !row.fault().isEmpty()).toList();
    }

    @Test
    void thereAreTwentyOfEach() throws IOException {
        assertEquals(20, sound().size());
        assertEquals(20, faulty().size());
    }

    @ParameterizedTest
    @MethodSource("sound")
    void aSoundBatchHasNoFinding(Row row) {
        BatchState state = row.state();
        assertEquals(List.of(), Faults.of(state));
        assertEquals(List.of(), Planner.plans(state, new BatchKitchen(row.recipe())));
    }

    @ParameterizedTest
    @MethodSource("sound")
    void itsStyleIsGuessed(Row row) {
        assertEquals(
                row.style(), StyleGuess.of(row.name(), row.recipe().mix(), row.recipe().method()));
    }

    @ParameterizedTest
    @MethodSource("faulty")
    void aPlantedFaultComesFirstAndThePlanResolvesIt(Row row) {
        BatchState state = row.state();
        assertEquals(row.fault(), Faults.of(state).get(0).fault().name());
        BatchKitchen kitchen = new BatchKitchen(row.recipe());
        Plan plan = Planner.plans(state, kitchen).get(0);
        assertTrue(plan.resolvesAll(), () -> "left: " + plan.left());
        for (AmountChange change : plan.changes()) {
            assertTrue(
                    row.means().contains(IngredientRole.of(change.ingredient()).name()),
                    () -> change + " isn't one of " + row.means());
        }
        boolean bath = plan.after().making().iceG() > state.making().iceG();
        boolean method = plan.after().making().method() != state.making().method();
        assertEquals(row.means().contains("BATH"), bath, "another bath");
        assertEquals(row.means().contains("METHOD"), method, "another method");
        assertEquals(
                List.of(),
                Faults.of(
                        BatchState.of(
                                plan.after().batch(),
                                row.style(),
                                row.diet(),
                                plan.after().making(),
                                kitchen)),
                "computed again from its amounts");
    }
}
