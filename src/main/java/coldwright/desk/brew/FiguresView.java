package coldwright.desk.brew;

import coldwright.batch.Reckoning;
import coldwright.desk.brew.model.BatchModel;
import coldwright.desk.brew.model.BrewModel;
import coldwright.desk.brew.model.Differences;
import coldwright.desk.brew.model.Glance;
import coldwright.desk.brew.model.Pictures;
import coldwright.desk.brew.model.Recipe;
import coldwright.desk.brew.model.Told;
import coldwright.desk.model.Drawn;
import coldwright.desk.model.Pins;
import coldwright.desk.plate.PlateRoom;
import coldwright.desk.plate.PlateStack;
import coldwright.desk.say.Say;
import coldwright.desk.say.Words;
import coldwright.figure.Figure;

import javafx.beans.InvalidationListener;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/** What to expect of a batch: small pictures, findings in plain words, then the large pictures. */
final class FiguresView extends VBox {
    private final BrewModel brew;
    private final TilesView tiles;
    private final VBox differences = part("brew-differences");
    private final VBox facts = part("brew-facts");
    private final FindingsView findings;
    private final ClockView face;
    private final VBox clock = part("brew-said");
    private final VBox crystals = part("brew-said");
    private final VBox cautions = part("brew-cautions");
    private final ObservableList<Drawn> curve = FXCollections.observableArrayList();
    private final ObservableList<Drawn> inside = FXCollections.observableArrayList();
    private final ObservableList<Drawn> time = FXCollections.observableArrayList();
    private final ObservableList<Drawn> days = FXCollections.observableArrayList();
    private final InvalidationListener glanced = value -> glance();
    private final InvalidationListener reckoned = value -> reckoning();
    private BatchModel batch;

    /**
     * Shows figures.
     *
     * @param brew the batches
     * @param room what draws plates, and how large the type is
     * @param taken told the recipe from before a mend was taken
     * @param reveal brings a node into sight
     */
    FiguresView(BrewModel brew, PlateRoom room, Consumer<Recipe> taken, Consumer<Node> reveal) {
        this.brew = brew;
        findings = new FindingsView(brew, taken);
        face = new ClockView(room.emPx());
        getStyleClass().add("brew-figures");
        SimpleBooleanProperty wanted = new SimpleBooleanProperty(true);
        Pins pins = new Pins();
        PlateStack insidePlate = new PlateStack(inside, room, pins, wanted);
        PlateStack curvePlate = new PlateStack(curve, room, pins, wanted);
        PlateStack daysPlate = new PlateStack(days, room, pins, wanted);
        Node clockHeading = Fields.heading("batch.clock");
        tiles =
                new TilesView(
                        room.emPx(),
                        new TilesView.Large(
                                () -> reveal.accept(insidePlate),
                                () -> reveal.accept(curvePlate),
                                () -> reveal.accept(clockHeading),
                                () -> reveal.accept(daysPlate)));
        getChildren()
                .addAll(
                        tiles,
                        facts,
                        Fields.heading("batch.expect"),
                        findings,
                        differences,
                        curvePlate,
                        insidePlate,
                        clockHeading,
                        face,
                        new PlateStack(time, room, pins, wanted),
                        clock,
                        daysPlate,
                        crystals,
                        Fields.heading("batch.mind"),
                        cautions);
        brew.against()
                .addListener(
                        value -> {
                            glance();
                            reckoning();
                        });
    }

    private static VBox part(String look) {
        VBox part = new VBox();
        part.getStyleClass().add(look);
        return part;
    }

    /** Shows another batch. */
    void show(BatchModel is) {
        if (batch != null) {
            batch.glance().removeListener(glanced);
            batch.figures().removeListener(reckoned);
        }
        batch = is;
        batch.glance().addListener(glanced);
        batch.figures().addListener(reckoned);
        glance();
        reckoning();
    }

    private void glance() {
        if (batch == null || batch.glance().get().isEmpty()) {
            return;
        }
        Glance now = batch.glance().get().get();
        Optional<Glance> other = brew.against().get().flatMap(one -> one.glance().get());
        tiles.show(now);
        say(facts, Told.facts(now), "brew-fact");
        curve.setAll(new Drawn(Pictures.freezing(now), other.map(Pictures::freezing)));
        inside.setAll(new Drawn(Pictures.inside(now), Optional.empty()));
        brew.against()
                .get()
                .ifPresentOrElse(one -> compare(one, now), () -> differences.getChildren().clear());
        Words.show(differences, !differences.getChildren().isEmpty());
    }

    private void compare(BatchModel other, Glance now) {
        differences
                .getChildren()
                .setAll(
                        Words.label(
                                Say.of(
                                        "batch.against",
                                        String.valueOf(other.story().get().number())),
                                "brew-heading"));
        List<String> changed = Differences.between(other.recipe().get(), batch.recipe().get());
        add(changed.isEmpty() ? List.of(Say.of("batch.alike")) : changed, "brew-fact");
        other.glance().get().ifPresent(was -> add(Differences.between(was, now), "brew-fact"));
        if (batch.figuresAreOfNow()) {
            Reckoning all = batch.figures().get().orElseThrow();
            other.figures().get().ifPresent(was -> add(Differences.between(was, all), "brew-fact"));
        }
    }

    private void add(List<String> sentences, String look) {
        if (!sentences.isEmpty()) {
            differences.getChildren().add(Words.label(String.join("; ", sentences), look));
        }
    }

    private void reckoning() {
        if (batch == null || batch.figures().get().isEmpty()) {
            return;
        }
        Reckoning all = batch.figures().get().get();
        Optional<Reckoning> other = brew.against().get().flatMap(one -> one.figures().get());
        if (batch.glance().get().isPresent()) {
            Glance now = batch.glance().get().get();
            brew.against().get().ifPresent(one -> compare(one, now));
        }
        tiles.show(all);
        findings.show(batch, all);
        face.show(all);
        draw(time, all, other, one -> Optional.of(Pictures.clock(one)));
        draw(days, all, other, Pictures::crystals);
        say(clock, Told.plan(all), "brew-why");
        say(crystals, List.of(Told.crystals(all)), "brew-why");
        say(cautions, Told.cautions(all), "brew-caution");
    }

    private static void draw(
            ObservableList<Drawn> plates,
            Reckoning now,
            Optional<Reckoning> other,
            Function<Reckoning, Optional<Figure>> picture) {
        Optional<Figure> earlier =
                other.flatMap(picture)
                        .filter(
                                was ->
                                        picture.apply(now)
                                                .filter(is -> is.x().equals(was.x()))
                                                .isPresent());
        plates.setAll(
                picture.apply(now).map(is -> List.of(new Drawn(is, earlier))).orElse(List.of()));
    }

    private static void say(VBox part, List<String> sentences, String look) {
        part.getChildren().setAll(sentences.stream().map(one -> Words.label(one, look)).toList());
    }
}
