package org.brakewright.analysis.stop;

/**
 * A look at a stop on its way.
 *
 * @param moment what is seen, brakes not yet known to warm up
 * @param frontWork heat of both front brakes so far, J
 * @param rearWork heat of both rear brakes so far, J
 * @param kept whether it is told of
 */
record StopLook(StopSample moment, double frontWork, double rearWork, boolean kept) {
    double time() {
        return moment.timeS();
    }
}
