package org.brakewright.analysis.setting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import java.util.Optional;
import org.brakewright.analysis.Analyse;
import org.brakewright.analysis.Cars;
import org.brakewright.analysis.Leaves;
import org.brakewright.analysis.WrittenCar;
import org.brakewright.analysis.setting.Layout.Kind;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedApply.Twin;
import org.brakewright.model.resolved.ResolvedApply.Valve;
import org.brakewright.model.resolved.ResolvedBuild;
import org.junit.jupiter.api.Test;

/** Best settings against 2,000 settings tried one by one, and against what is worked out by hand. */
class SettingsTest {
    private static final int TRIED = 2000;

    private static final String ROAD = """
            car.aero.speed: 40 m/s
            car.aero.front_downforce: -100 N
            car.aero.rear_downforce: -400 N
            car.aero.drag: 700 N
            car.engine_braking.driven_axle: rear
            car.engine_braking.deceleration: 0.6 m/s2
            """;

    private static final WrittenCar VALVED = Cars.TANDEM.with("""
            apply.proportioning_valve.knee: 90 bar
            apply.proportioning_valve.slope: 0.3
            apply.proportioning_valve.adjustable: yes
            """);

    @Test
    void noOffsetOfTwoThousandHasALargerMargin() {
        for (WrittenCar car : new WrittenCar[] {
            Cars.TWIN,
            Cars.TWIN.with(ROAD),
            Cars.TWIN.with("car.load_sensitivity: 0.1"),
            Cars.TWIN.with("front.pistons[0]: 42 mm")
        }) {
            ResolvedBuild build = car.resolved();
            Setting setting = Objects.requireNonNull(Settings.of(build));
            Twin twin = (Twin) build.apply();
            double limit = twin.bar().offsetLimit();
            double most = Double.NEGATIVE_INFINITY;
            for (int i = 0; i <= TRIED; i++) {
                double offset = -limit + 2 * limit * i / TRIED;
                most = Math.max(
                        most, new Margins(build).of(twin.withOffset(offset)).margin());
            }
            assertThat(setting.atBest().margin()).isLessThanOrEqualTo(most + 1e-3);
            assertThat(setting.atBest().margin()).isGreaterThanOrEqualTo(mostOfQuarterTurns(build) - 1e-9);
            assertThat(setting.atBest().margin())
                    .isGreaterThanOrEqualTo(setting.atPresent().margin());
            assertThat(setting.leftToFrontM()).isCloseTo(limit - setting.best(), within(1e-12));
            assertThat(setting.leftToRearM()).isCloseTo(limit + setting.best(), within(1e-12));
            assertThat(setting.turns()).isCloseTo((setting.best() - setting.present()) / 1e-3, within(1e-9));
        }
    }

    /** Every quarter turn within the adjuster's range, one by one. */
    private static double mostOfQuarterTurns(ResolvedBuild build) {
        Twin twin = (Twin) build.apply();
        double step = twin.bar().movementPerTurn() / 4;
        double most = Double.NEGATIVE_INFINITY;
        for (int quarters = -400; quarters <= 400; quarters++) {
            double offset = twin.bar().offset() + quarters * step;
            if (Math.abs(offset) <= twin.bar().offsetLimit()) {
                most = Math.max(
                        most, new Margins(build).of(twin.withOffset(offset)).margin());
            }
        }
        return most;
    }

    @Test
    void noKneeOfTwoThousandHasALargerMargin() {
        ResolvedBuild build = VALVED.with(ROAD).resolved();
        Setting setting = Objects.requireNonNull(Settings.of(build));
        ResolvedApply apply = build.apply();
        Valve valve = apply.valve().orElseThrow();
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i <= TRIED; i++) {
            double knee = Settings.LEAST_KNEE + (Settings.MOST_KNEE - Settings.LEAST_KNEE) * i / TRIED;
            ResolvedApply set = apply.withValve(Optional.of(valve.withKnee(knee)));
            most = Math.max(most, new Margins(build).of(set).margin());
        }
        assertThat(setting.kind()).isEqualTo(Setting.Kind.VALVE);
        assertThat(setting.turns()).isNull();
        assertThat(setting.atBest().margin()).isGreaterThanOrEqualTo(most - 1e-3);
    }

    /**
     * By hand: front share f of the force, loads 500/500, h/L 0.2, grip 0.9. The front uses f z/(0.5 + 0.2 z), the rear
     * (1 - f) z/(0.5 - 0.2 z): the lead is least at 0.9 g, f/(1-f) 0.32/0.68. At the grip the front locks at
     * 0.45/(f - 0.18), so its use is that over 0.9. With radii 120 and 60 mm and the bar's share s the force's share is
     * 2s/(1+s); at s = 1/2 it is 2/3, the lead 0.9412 and so the rear margin -0.0588.
     */
    @Test
    void theMarginOfTheRigidCarIsTheOneByHand() {
        ResolvedBuild build = Cars.TWIN.resolved();
        SettingMargin centred = new Margins(build).of(build.apply());
        assertThat(centred.rearMargin()).isCloseTo(2 * 0.32 / 0.68 - 1, within(1e-9));
        assertThat(centred.rearLimits()).isTrue();
        double offset = 0.006;
        double bar = 0.5 + offset / 0.060;
        double share = 2 * bar / (1 + bar);
        SettingMargin moved = new Margins(build).of(((Twin) build.apply()).withOffset(offset));
        assertThat(moved.rearMargin()).isCloseTo(share / (1 - share) * 0.32 / 0.68 - 1, within(1e-9));
        assertThat(moved.gripMargin()).isCloseTo(0.5 / (share - 0.18) / Margins.LEAST_EFFICIENCY - 1, within(1e-9));
    }

    /** Turning the bar moves the margins against each other: more front, more to spare at the rear. */
    @Test
    void moreFrontGivesTheRearMoreToSpare() {
        ResolvedBuild build = Cars.TWIN.with(ROAD).resolved();
        Twin twin = (Twin) build.apply();
        double before = Double.NEGATIVE_INFINITY;
        for (double offset = -0.01; offset <= 0.0101; offset += 0.001) {
            double now = Objects.requireNonNull(
                    new Margins(build).of(twin.withOffset(offset)).rearMargin());
            assertThat(now).isGreaterThan(before);
            before = now;
        }
    }

    @Test
    void theSameCarWithOtherLayoutsAsksTheSameEffortAndBothNeverDoWorse() {
        for (WrittenCar car : new WrittenCar[] {Cars.TWIN, VALVED, Cars.TANDEM.with(Cars.BOOSTER)}) {
            ResolvedBuild build = car.resolved();
            Advice advice = Objects.requireNonNull(Analyse.withAdvice(build).advice());
            double present = Objects.requireNonNull(new Settings(build).use(build.apply()))
                    .effortN();
            assertThat(advice.layouts()).extracting(Layout::kind).containsExactly(Kind.values());
            assertThat(advice.layouts()).filteredOn(Layout::present).hasSize(1);
            assertThat(layout(advice, Kind.BAR_AND_VALVE).margin().margin())
                    .isGreaterThanOrEqualTo(layout(advice, Kind.BAR).margin().margin() - 1e-3);
            assertThat(layout(advice, Kind.TANDEM_AND_VALVE).margin().margin())
                    .isGreaterThanOrEqualTo(layout(advice, Kind.TANDEM).margin().margin() - 1e-9);
            assertThat(Objects.requireNonNull(layout(advice, Kind.TANDEM).use()).effortN())
                    .isCloseTo(present, within(0.15 * present));
            assertThat(Leaves.of(advice)).allSatisfy((path, value) -> {
                if (value instanceof Double number) {
                    assertThat(number).as(path).isFinite();
                }
            });
        }
    }

    /** A centred bar and equal masters are a tandem master of twice the area, but for the pressure of the return springs. */
    @Test
    void aCentredBarWithEqualMastersIsATandemMaster() {
        ResolvedBuild build = Cars.TWIN.resolved();
        Layout tandem = layout(Objects.requireNonNull(Analyse.withAdvice(build).advice()), Kind.TANDEM);
        assertThat(tandem.frontBoreM()).isCloseTo(0.020 * Math.sqrt(2), within(1e-9));
        assertThat(tandem.margin().margin())
                .isCloseTo(new Margins(build).of(build.apply()).margin(), within(1e-9));
    }

    private static Layout layout(Advice advice, Kind kind) {
        return advice.layouts().stream()
                .filter(each -> each.kind() == kind)
                .findFirst()
                .orElseThrow();
    }
}
