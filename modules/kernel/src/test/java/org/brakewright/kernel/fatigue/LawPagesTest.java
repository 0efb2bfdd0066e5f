package org.brakewright.kernel.fatigue;

import java.util.List;
import org.brakewright.kernel.WorkedExample;
import org.junit.jupiter.api.Test;

/** The worked examples of docs/laws, invented numbers; results printed there come from an independent computation. */
class LawPagesTest {
    @Test
    void endurance() {
        WorkedExample page = WorkedExample.of("endurance");
        double spread = page.si("standard deviation of log10 of the life");
        EnduranceCurve curve = new EnduranceCurve(page.si("class of the detail"), 3, 5e6, 5, spread);
        StressCycles gentle = new StressCycles(page.si("range in a gentle stop"), page.si("gentle stops"));
        StressCycles hard = new StressCycles(page.si("range in a hard stop"), page.si("hard stops"));
        double wanted = page.si("chance wanted");
        page.holds("range at the knee", curve.kneeRange());
        page.holds("characteristic life, gentle", curve.cycles(gentle.range()));
        page.holds("characteristic life, hard", curve.cycles(hard.range()));
        page.holds("mean life, hard", curve.cycles(hard.range(), 0.5));
        List<StressCycles> both = List.of(gentle, hard);
        page.holds("life used up", curve.damage(both));
        page.holds("share that outlives both", curve.survival(both));
        page.holds("times over at the chance wanted", curve.repeats(both, wanted));
        page.holds("range for all stops at the chance wanted", curve.rangeFor(gentle.count() + hard.count(), wanted));
    }
}
