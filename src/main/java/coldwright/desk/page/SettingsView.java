package coldwright.desk.page;

import coldwright.bench.process.SystemWall;
import coldwright.desk.figure.model.DisplayNumber;
import coldwright.desk.layout.ScrollPage;
import coldwright.desk.messages.Messages;
import coldwright.desk.messages.TextControls;
import coldwright.desk.model.PreferencesModel;
import coldwright.workbook.settings.BenchLimit;
import coldwright.workbook.settings.CodeView;
import coldwright.workbook.settings.Language;
import coldwright.workbook.settings.MassUnit;
import coldwright.workbook.settings.Preferences;
import coldwright.workbook.settings.TemperatureUnit;
import coldwright.workbook.settings.Theme;

import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;

/** The settings: type, colours, units, language, and the limits of the bench. */
final class SettingsView extends ScrollPage {
    private final PreferencesModel settings;

    /** Shows the settings; {@code archive} moves all saved work into a backup folder. */
    SettingsView(PreferencesModel settings, Runnable archive) {
        super("settings");
        this.settings = settings;
        add(TextControls.label(Messages.of("settings"), "lesson-title"));
        part("settings.type");
        HBox type =
                new HBox(
                        TextControls.command("type.smaller", settings::smallerType),
                        TextControls.command("type.larger", settings::largerType),
                        TextControls.command("type.reset", settings::usualType));
        type.getStyleClass().add("settings-row");
        add(type);
        choice("settings.colours", Theme.values(), Preferences::theme, Preferences::with);
        choice(
                "settings.temperature",
                TemperatureUnit.values(),
                Preferences::temperatureUnit,
                Preferences::with);
        choice("settings.mass", MassUnit.values(), Preferences::massUnit, Preferences::with);
        choice("settings.code", CodeView.values(), Preferences::codeView, Preferences::with);
        choice(
                "settings.language",
                Language.all(),
                SettingsView::name,
                Preferences::language,
                Preferences::with);
        part("settings.limits");
        add(TextControls.label(Messages.of("settings.limits.why"), "note"));
        String confined = SystemWall.stands() ? "settings.confined.system" : "settings.confined";
        add(TextControls.label(Messages.of(confined), "note"));
        for (BenchLimit limit : BenchLimit.values()) {
            limit(limit);
        }
        part("settings.saved");
        add(TextControls.label(Messages.of("settings.saved.what"), "note"));
        add(new HBox(TextControls.command("settings.archive", archive)));
    }

    private void part(String key) {
        add(TextControls.label(Messages.of(key), "settings-part"));
    }

    private <E extends Enum<E>> void choice(
            String key,
            E[] values,
            Function<Preferences, E> of,
            BiFunction<Preferences, E, Preferences> with) {
        choice(
                key,
                List.of(values),
                value -> Messages.of(key + "." + value.name().toLowerCase(Locale.ROOT)),
                of,
                with);
    }

    /** A language is named in itself. */
    private static String name(Language language) {
        Locale locale = language.locale();
        return language.equals(Language.SYSTEM)
                ? Messages.of("settings.language.system")
                : locale.getDisplayLanguage(locale);
    }

    private <V> void choice(
            String key,
            List<V> values,
            Function<V, String> name,
            Function<Preferences, V> of,
            BiFunction<Preferences, V, Preferences> with) {
        part(key);
        FlowPane row = TextControls.styled(new FlowPane(), "settings-row");
        ToggleGroup group = new ToggleGroup();
        for (V value : values) {
            String word = name.apply(value);
            RadioButton button = new RadioButton(word);
            button.setAccessibleText(Messages.of(key) + ": " + word);
            button.setToggleGroup(group);
            button.setSelected(of.apply(settings.preferences().get()).equals(value));
            button.selectedProperty()
                    .addListener(
                            (selected, was, is) -> {
                                if (is) {
                                    settings.change(all -> with.apply(all, value));
                                }
                            });
            row.getChildren().add(button);
        }
        add(row);
    }

    private void limit(BenchLimit limit) {
        String words = Messages.of("limit." + limit.key());
        Label name = TextControls.label(words, "limit-name");
        TextField field =
                TextControls.styled(
                        new TextField(DisplayNumber.of(settings.limit(limit))), "number-field");
        field.setPrefColumnCount(8);
        field.setAccessibleText(words);
        Label range =
                TextControls.label(
                        Messages.of(
                                "limit.range",
                                DisplayNumber.of(limit.least()),
                                DisplayNumber.of(limit.most())),
                        "note");
        Runnable typed =
                () -> {
                    OptionalDouble read = DisplayNumber.read(field.getText());
                    read.ifPresent(value -> settings.limit(limit, (int) Math.rint(value)));
                    field.setText(DisplayNumber.of(settings.limit(limit)));
                };
        TextControls.whenTyped(field, typed);
        HBox row = TextControls.row("settings-row", field, name);
        VBox both = TextControls.styled(new VBox(row, range), "limit");
        add(both);
    }
}
