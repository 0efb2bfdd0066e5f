package org.brakewright.analysis.resolve;

import static org.brakewright.analysis.resolve.Default.estimate;

/** What cold, heat and water are assumed to do to a brake, as shares of its working friction or brake factor. */
final class FrictionDefaults {
    static final Default PADS_COLD =
            estimate(0.90, 0.70, 1.05, "a street pad gives a little less cold, a track pad much less");
    static final Default PADS_HOT =
            estimate(0.75, 0.50, 1.05, "a street pad that begins to fade, a track pad holds longer");
    static final Default PADS_WET = estimate(0.70, 0.40, 1.0, "a film of water for the first moments of a stop");

    static final Default DRUM_COLD = estimate(0.90, 0.70, 1.10, "linings give a little less cold");
    static final Default DRUM_HOT =
            estimate(0.60, 0.35, 1.0, "linings fade and the shoes amplify it, the drum grows away from them");
    static final Default DRUM_WET =
            estimate(0.60, 0.20, 1.30, "water that stays in the drum, or shoes that grab when damp");

    static final Default LINING_COLD = estimate(0.92, 0.75, 1.08, "linings give a little less cold");
    static final Default LINING_HOT = estimate(0.75, 0.50, 1.0, "linings fade; the shoes amplify what they lose");
    static final Default LINING_WET =
            estimate(0.70, 0.30, 1.20, "water that stays in the drum, or linings that grab when damp");

    private FrictionDefaults() {}

    /** A share of a working value as an assumption of the value itself. */
    static Default of(Default share, double working) {
        return new Default(
                share.value() * working, share.low() * working, share.high() * working, share.basis(), share.tag());
    }
}
