package coldwright.desk.page;

import coldwright.desk.figure.FigureSettings;
import coldwright.figure.UnitConversion;
import coldwright.paint.style.FigureTheme;
import coldwright.workbook.settings.MassUnit;
import coldwright.workbook.settings.Preferences;
import coldwright.workbook.settings.TemperatureUnit;
import coldwright.workbook.settings.Theme;

import javafx.scene.Node;

import java.util.Locale;

/** How the page looks and counts, as the learner has set it. */
final class ThemeBinder {
    private ThemeBinder() {}

    /**
     * Puts on what is set.
     *
     * @param set what the learner has set
     * @param page what wears the theme
     * @param room where plates hang
     */
    static void put(Preferences set, Node page, FigureSettings room) {
        room.ground().set(ground(set.theme()));
        room.units()
                .set(
                        new UnitConversion(
                                set.temperatureUnit() == TemperatureUnit.F,
                                set.massUnit() == MassUnit.OZ));
        for (Theme one : Theme.values()) {
            page.getStyleClass().remove(look(one));
        }
        page.getStyleClass().add(look(set.theme()));
    }

    private static String look(Theme theme) {
        return theme.name().toLowerCase(Locale.ROOT);
    }

    private static FigureTheme ground(Theme theme) {
        return switch (theme) {
            case LIGHT -> FigureTheme.LIGHT;
            case DARK -> FigureTheme.DARK;
            case CONTRAST -> FigureTheme.CONTRAST;
        };
    }
}
