package org.brakewright.analysis.tolerance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.Analyse;
import org.brakewright.analysis.Analysis;
import org.brakewright.analysis.Cars;
import org.brakewright.analysis.LoadCaseResult;
import org.brakewright.analysis.RandomCars;
import org.brakewright.analysis.balance.Lock;
import org.brakewright.analysis.tolerance.Sample.CaseSample;
import org.brakewright.analysis.tolerance.Sample.First;
import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.model.resolved.ResolvedBuild;
import org.junit.jupiter.api.Test;

/** What a run keeps of a car is what the whole analysis of that car says, to the last digit. */
class SampleTest {
    private static final int BUILDS = 2000;

    @Test
    void aSampleIsTheWholeAnalysisCutShort() {
        RandomCars.each(BUILDS, rig -> same(rig.build()));
    }

    @Test
    void withAPedalMechanismToo() {
        same(Cars.TWIN.without("pedal.ratio").with(Cars.HUNG_PEDAL).resolved());
        same(Cars.TANDEM.without("pedal.ratio").with(Cars.HUNG_PEDAL).resolved());
    }

    private static void same(ResolvedBuild build) {
        assertThat(Sample.of(build, RearFirstOdds.GRIPS)).isEqualTo(cut(Analyse.forJudging(build, null)));
    }

    private static Sample cut(Analysis analysis) {
        List<CaseSample> cases =
                analysis.loadCases().stream().map(SampleTest::cut).toList();
        HardStop stop = analysis.hardStop();
        return stop == null
                ? new Sample(Double.NaN, Double.NaN, Double.NaN, Double.NaN, false, cases)
                : new Sample(
                        stop.point().pedalForceN(),
                        stop.point().pedalTravelM(),
                        stop.frontShare(),
                        stop.idealFrontShare(),
                        stop.point().withinTravel(),
                        cases);
    }

    private static CaseSample cut(LoadCaseResult result) {
        List<First> first = new ArrayList<>();
        for (double grip : RearFirstOdds.GRIPS) {
            first.add(result.lock().stream()
                    .filter(lock -> lock.grip() == grip)
                    .map(SampleTest::first)
                    .findFirst()
                    .orElse(First.NONE));
        }
        Lock own = result.gripLock();
        first.add(own == null ? First.NONE : first(own));
        Double critical = result.criticalDecelerationG();
        return new CaseSample(critical == null ? Double.NaN : critical, first);
    }

    private static First first(Lock lock) {
        return switch (lock.axle()) {
            case FRONT -> First.FRONT;
            case REAR -> First.REAR;
            case BOTH -> First.TOGETHER;
        };
    }
}
