package coldwright.science.glass;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class GlassLawsTest {
    private static final double ROUNDING = 1e-9;

    @Property
    void strongerSyrupIsThicker(
            @ForAll @DoubleRange(max = 90) double percent,
            @ForAll @DoubleRange(min = -40, max = 80) double temperatureC) {
        assertTrue(
                SyrupViscosity.sucroseMPaS(percent + 1, temperatureC)
                        > SyrupViscosity.sucroseMPaS(percent, temperatureC));
    }

    @Property
    void colderSyrupIsThicker(
            @ForAll @DoubleRange(max = 90) double percent,
            @ForAll @DoubleRange(min = -40, max = 80) double temperatureC) {
        assertTrue(
                SyrupViscosity.sucroseMPaS(percent, temperatureC - 1)
                        > SyrupViscosity.sucroseMPaS(percent, temperatureC));
    }

    @Property
    void waterSoftensEveryGlass(
            @ForAll SugarGlass part, @ForAll @DoubleRange(min = 5, max = 99) double dryPercent) {
        double drier = GordonTaylor.of(dryPercent + 1, part).glassTransitionC();
        double wetter = GordonTaylor.of(dryPercent, part).glassTransitionC();
        assertTrue(wetter < drier);
        assertTrue(wetter > GordonTaylor.WATER_C);
        assertTrue(drier <= part.dryGlassTransitionC().high() + ROUNDING);
    }

    @Property
    void waterForAGlassTransitionGivesIt(
            @ForAll SugarGlass part,
            @ForAll @DoubleRange(min = -100, max = 0) double temperatureC) {
        double water = GordonTaylor.of(100, part).waterPer100gDryAt(temperatureC);
        double again = GordonTaylor.of(100, part).withWater(water).glassTransitionC();
        assertEquals(temperatureC, again, ROUNDING);
    }

    @Property
    void distanceAboveGlassGivesItsViscosityBack(
            @ForAll @DoubleRange(min = 0, max = 99) double aboveC) {
        assertEquals(aboveC, Wlf.aboveGlassC(Wlf.logPaS(aboveC)), 1e-6);
    }

    @Property
    void iceLineLiesAboveGlassLineUpToTheEndOfFreezing(
            @ForAll @DoubleRange(min = 1, max = 70) double percent) {
        StateDiagram sucrose = new StateDiagram(SugarGlass.SUCROSE);
        assertTrue(sucrose.iceMeltsC(percent) > sucrose.glassTransitionC(percent));
    }

    @Property
    void aWaferCoolsTowardsTheRoomAndNeverPastIt(
            @ForAll Surroundings place, @ForAll @DoubleRange(min = 0, max = 600) double seconds) {
        ConeShaping shaping = ConeShaping.of(Wafer.rolledSugarCone()).cooled(place);
        double now = shaping.temperatureCAfter(seconds).middle();
        double later = shaping.temperatureCAfter(seconds + 5).middle();
        assertTrue(now <= shaping.ironC() + ROUNDING);
        assertTrue(later <= now);
        assertTrue(later >= shaping.roomC());
    }

    @Property
    void aThickerWaferGivesMoreTime(@ForAll @DoubleRange(min = 0.5, max = 5) double thicknessMm) {
        Wafer thin = Wafer.rolledSugarCone().thick(thicknessMm);
        Wafer thick = thin.thick(thicknessMm + 1);
        assertTrue(
                ConeShaping.of(thick).secondsToShape().middle()
                        > ConeShaping.of(thin).secondsToShape().middle());
    }

    @Property
    void damperAirSoftens(@ForAll @DoubleRange(max = 90) double humidityPercent) {
        DampAir air = new DampAir(Wafer.rolledSugarCone(), 22);
        assertTrue(
                air.glassTransitionCAt(humidityPercent + 2).middle()
                        < air.glassTransitionCAt(humidityPercent).middle());
    }
}
