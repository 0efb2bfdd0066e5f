package org.brakewright.kernel.hydraulics;

/**
 * A vacuum booster: it adds force from crack-in until the diaphragm sees the whole vacuum (run-out).
 *
 * <p>Model: output = input + assist, assist = (ratio - 1)(input - crack-in), never below 0 and never above
 * vacuum x area x efficiency. So up to crack-in, above run-out and without vacuum one newton in is one newton out. The
 * curve is continuous and rises everywhere; the jump-in of real valves lies within the crack-in force's tolerance.
 * Source: R. Limpert, Brake Design and Safety, ch. 5, vacuum boosters (from memory).
 *
 * @param crackInForce input at which the valve opens, N
 * @param ratio rise of output over rise of input between crack-in and run-out, 1 or more
 * @param diaphragmArea sum over all diaphragms, m2
 * @param vacuum below atmosphere, Pa
 * @param efficiency share of the diaphragm's force that springs and seals leave, more than 0, at most 1
 */
public record VacuumBooster(double crackInForce, double ratio, double diaphragmArea, double vacuum, double efficiency) {
    /** Above the highest air pressure ever recorded at sea level, which is near 108 kPa (from memory). */
    private static final double MOST_VACUUM = 1.1e5;

    public VacuumBooster {
        Demand.notNegative("crackInForce", crackInForce);
        Demand.within("ratio", ratio, ratio >= 1, "1 or more");
        Demand.positive("diaphragmArea", diaphragmArea);
        Demand.between("vacuum", vacuum, 0, MOST_VACUUM);
        Demand.efficiency("efficiency", efficiency);
    }

    /** Force on the master (N) for a force on the booster's input rod (N, not negative). */
    public double output(double input) {
        return input + assist(input);
    }

    /** Force (N) that the booster adds at an input (N). */
    public double assist(double input) {
        return Math.min(fullAssist(), (ratio - 1) * Math.max(0, input - crackInForce));
    }

    /** Largest force (N) that the vacuum can add. */
    public double fullAssist() {
        return vacuum * diaphragmArea * efficiency;
    }

    /** Input (N) at which the assist stops growing; crack-in when the booster never adds any. */
    public double runOutInput() {
        double assistPerInput = ratio - 1;
        return assistPerInput > 0 ? crackInForce + fullAssist() / assistPerInput : crackInForce;
    }

    /** Input (N) that gives an output (N, not negative): the inverse of {@link #output}. */
    public double input(double output) {
        double boosted = crackInForce + (output - crackInForce) / ratio;
        return Math.min(output, Math.max(boosted, output - fullAssist()));
    }

    /** The same booster with engine stopped or hose off. */
    public VacuumBooster withoutVacuum() {
        return new VacuumBooster(crackInForce, ratio, diaphragmArea, 0, efficiency);
    }
}
