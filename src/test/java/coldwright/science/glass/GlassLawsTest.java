package coldwright.science.glass;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import coldwright.laws.Cases;
import coldwright.laws.Draw;

class GlassLawsTest {
    private static final double ROUNDING = 1e-9;

    @Cases(1000)
    void strongerSyrupIsThicker(Draw draw) {
        double percent = draw.doubleIn(0, 90);
        double temperatureC = draw.doubleIn(-40, 80);
        assertTrue(
                SyrupViscosity.sucroseMPaS(percent + 1, temperatureC)
                        > SyrupViscosity.sucroseMPaS(percent, temperatureC));
    }

    @Cases(1000)
    void colderSyrupIsThicker(Draw draw) {
        double percent = draw.doubleIn(0, 90);
        double temperatureC = draw.doubleIn(-40, 80);
        assertTrue(
                SyrupViscosity.sucroseMPaS(percent, temperatureC - 1)
                        > SyrupViscosity.sucroseMPaS(percent, temperatureC));
    }

    @Cases(1000)
    void waterSoftensEveryGlass(Draw draw) {
        SugarGlass part = draw.oneOf(SugarGlass.values());
        double dryPercent = draw.doubleIn(5, 99);
        double drier = GordonTaylor.of(dryPercent + 1, part).glassTransitionC();
        double wetter = GordonTaylor.of(dryPercent, part).glassTransitionC();
        assertTrue(wetter < drier);
        assertTrue(wetter > GordonTaylor.WATER_C);
        assertTrue(drier <= part.dryGlassTransitionC().high() + ROUNDING);
    }

    @Cases(1000)
    void distanceAboveGlassGivesItsViscosityBack(Draw draw) {
        double aboveC = draw.doubleIn(0, 99);
        assertEquals(aboveC, Wlf.aboveGlassC(Wlf.logPaS(aboveC)), 1e-6);
    }

    @Cases(1000)
    void iceLineLiesAboveGlassLineUpToTheEndOfFreezing(Draw draw) {
        double percent = draw.doubleIn(1, 70);
        StateDiagram sucrose = new StateDiagram(SugarGlass.SUCROSE);
        assertTrue(sucrose.iceMeltsC(percent) > sucrose.glassTransitionC(percent));
    }

    @Cases(1000)
    void aWaferCoolsTowardsTheRoomAndNeverPastIt(Draw draw) {
        Surroundings place = draw.oneOf(Surroundings.values());
        double seconds = draw.doubleIn(0, 600);
        ConeShaping shaping = ConeShaping.of(Wafer.rolledSugarCone()).cooled(place);
        double now = shaping.temperatureCAfter(seconds).middle();
        double later = shaping.temperatureCAfter(seconds + 5).middle();
        assertTrue(now <= shaping.ironC() + ROUNDING);
        assertTrue(later <= now);
        assertTrue(later >= shaping.roomC());
    }

    @Cases(1000)
    void aThickerWaferGivesMoreTime(Draw draw) {
        double thicknessMm = draw.doubleIn(0.5, 5);
        Wafer thin = Wafer.rolledSugarCone().thick(thicknessMm);
        Wafer thick = thin.thick(thicknessMm + 1);
        assertTrue(
                ConeShaping.of(thick).secondsToShape().middle()
                        > ConeShaping.of(thin).secondsToShape().middle());
    }

    @Cases(1000)
    void damperAirSoftens(Draw draw) {
        double humidityPercent = draw.doubleIn(0, 90);
        DampAir air = new DampAir(Wafer.rolledSugarCone(), 22);
        assertTrue(
                air.glassTransitionCAt(humidityPercent + 2).middle()
                        < air.glassTransitionCAt(humidityPercent).middle());
    }
}
