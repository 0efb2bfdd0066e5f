package org.brakewright.analysis.balance;

/**
 * One case of the balance.
 *
 * @param loadCase name of the load case
 * @param pads state of pads and linings
 * @param speedMS speed at which the air acts, m/s; zero for a car too slow for it
 * @param engineBraking whether the engine holds back too
 */
public record CaseName(String loadCase, PadState pads, double speedMS, boolean engineBraking) {

    /** Whether it is a case of the published rules: slow and out of gear, pads in the same state. */
    public boolean ofTheRules() {
        return speedMS == 0 && !engineBraking && sameState();
    }

    /** Whether the pads of both axles are in the same state. */
    public boolean sameState() {
        return pads != PadState.FRONT_FADED;
    }

    /** Whether it is what the rest of the analysis stands on: working pads, slow, out of gear. */
    public boolean plain() {
        return ofTheRules() && pads == PadState.WORKING;
    }

    /**
     * Where judging begins, g. In gear at gentle braking the driven axle always uses more grip, which only the clutch
     * cures; so there it begins at half of what the tyres can give (estimate, no source).
     *
     * @param greatestG deceleration with every wheel at its grip, g
     */
    public double judgedFromG(double greatestG) {
        return engineBraking ? Math.max(RearFirst.JUDGED_FROM_G, 0.5 * greatestG) : RearFirst.JUDGED_FROM_G;
    }

    /** In words: "two up, wet pads, at speed, engine braking". */
    public String words() {
        StringBuilder words = new StringBuilder(loadCase).append(", ").append(pads.words());
        if (speedMS > 0) {
            words.append(", at speed");
        }
        if (engineBraking) {
            words.append(", engine braking");
        }
        return words.toString();
    }
}
