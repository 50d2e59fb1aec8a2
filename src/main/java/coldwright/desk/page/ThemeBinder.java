package coldwright.desk.page;

import coldwright.desk.figure.FigureSettings;
import coldwright.figure.UnitConversion;
import coldwright.paint.style.FigureTheme;
import coldwright.words.Words;
import coldwright.workbook.settings.MassUnit;
import coldwright.workbook.settings.Preferences;
import coldwright.workbook.settings.TemperatureUnit;
import coldwright.workbook.settings.Theme;

import javafx.scene.Node;

import java.util.Locale;

/** Applies the learner's theme, type and units to the page. */
final class ThemeBinder {
    private ThemeBinder() {}

    /**
     * Applies preferences.
     *
     * @param set the preferences
     * @param page the node with the theme
     * @param room settings shared by figures
     */
    static void put(Preferences set, Node page, FigureSettings room) {
        room.theme().set(theme(set.theme()));
        UnitConversion units =
                new UnitConversion(
                        set.temperatureUnit() == TemperatureUnit.F, set.massUnit() == MassUnit.OZ);
        Words.show(new Words.Units(units::unit, units::value));
        room.units().set(units);
        for (Theme one : Theme.values()) {
            page.getStyleClass().remove(look(one));
        }
        page.getStyleClass().add(look(set.theme()));
    }

    private static String look(Theme theme) {
        return theme.name().toLowerCase(Locale.ROOT);
    }

    private static FigureTheme theme(Theme theme) {
        return switch (theme) {
            case LIGHT -> FigureTheme.LIGHT;
            case DARK -> FigureTheme.DARK;
            case CONTRAST -> FigureTheme.CONTRAST;
        };
    }
}
