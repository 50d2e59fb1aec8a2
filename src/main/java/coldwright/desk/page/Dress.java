package coldwright.desk.page;

import coldwright.desk.plate.PlateRoom;
import coldwright.figure.InUnits;
import coldwright.paint.Ground;
import coldwright.workbook.settings.MassUnit;
import coldwright.workbook.settings.Preferences;
import coldwright.workbook.settings.TemperatureUnit;
import coldwright.workbook.settings.Theme;

import javafx.scene.Node;

import java.util.Locale;

/** How the page looks and counts, as the learner has set it. */
final class Dress {
    private Dress() {}

    /**
     * Puts on what is set.
     *
     * @param set what the learner has set
     * @param page what wears the theme
     * @param room where plates hang
     */
    static void put(Preferences set, Node page, PlateRoom room) {
        room.ground().set(ground(set.theme()));
        room.units()
                .set(
                        new InUnits(
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

    private static Ground ground(Theme theme) {
        return switch (theme) {
            case LIGHT -> Ground.LIGHT;
            case DARK -> Ground.DARK;
            case CONTRAST -> Ground.CONTRAST;
        };
    }
}
