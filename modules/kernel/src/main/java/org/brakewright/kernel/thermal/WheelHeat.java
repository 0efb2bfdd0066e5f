package org.brakewright.kernel.thermal;

/**
 * The brake of one wheel as four lumps: rotor, linings, housing, fluid.
 *
 * <p>Friction heat is shared between rotor and linings by effusivity and area. Heat flows on from rotor to linings, from them through
 * the pistons into the fluid and through abutments into the housing, and from the fluid into the housing. Rotor and housing
 * give it to the air. The way into the hub is left out, which leaves the rotor a little too hot.
 *
 * <p>The rates are a pure function of the state, for any integrator and beside any other equations: each wheel takes {@link #NODES}
 * consecutive places of a state.
 *
 * @param rotor disc or drum
 * @param linings pads or shoes
 * @param housing caliper or back plate
 * @param fluid behind the pistons
 */
public record WheelHeat(Rotor rotor, Linings linings, Housing housing, WheelFluid fluid) {
    /** Places that a wheel takes in a state. */
    public static final int NODES = 4;

    /** Place of the rotor's temperature. */
    public static final int ROTOR = 0;

    /** Place of the linings' temperature. */
    public static final int LININGS = 1;

    /** Place of the housing's temperature. */
    public static final int HOUSING = 2;

    /** Place of the fluid's temperature. */
    public static final int FLUID = 3;

    /**
     * Writes how fast the four temperatures rise, K/s.
     *
     * @param power friction heat of this wheel, W; the linings are pressed while it is above zero
     * @param around what it stands in
     * @param state temperatures in K
     * @param at place of the rotor's temperature in the state and in the rates
     * @param rates where they are written
     * @return heat given to the surroundings, W
     */
    public double rates(double power, Surroundings around, double[] state, int at, double[] rates) {
        double rotorT = state[at + ROTOR];
        double liningsT = state[at + LININGS];
        double housingT = state[at + HOUSING];
        double fluidT = state[at + FLUID];
        double share = power > 0 ? rotorShare(rotorT) : 1;
        double intoLinings = (power > 0 ? linings.pressed() : linings.released()) * (rotorT - liningsT);
        double throughPistons = fluid.fromLinings() * (liningsT - fluidT);
        double throughAbutments = housing.fromLinings() * (liningsT - housingT);
        double intoHousing = fluid.toHousing() * (fluidT - housingT);
        double rotorLoss = rotor.loss(rotorT, around);
        double housingLoss = housing.loss(housingT, around);
        rates[at + ROTOR] = (share * power - intoLinings - rotorLoss) / rotor.capacity(rotorT);
        rates[at + LININGS] =
                ((1 - share) * power + intoLinings - throughPistons - throughAbutments) / linings.capacity();
        rates[at + HOUSING] = (throughAbutments + intoHousing - housingLoss) / housing.capacity();
        rates[at + FLUID] = (throughPistons - intoHousing) / fluid.capacity();
        return rotorLoss + housingLoss;
    }

    /** Share of the friction heat that enters the rotor at its temperature in K. */
    public double rotorShare(double rotorTemperature) {
        return HeatPartition.rotorShare(
                GreyIron.effusivity(rotorTemperature), rotor.sweptArea(), linings.effusivity(), linings.area());
    }

    /** Heat stored in all four lumps since {@link GreyIron#REFERENCE}, J. */
    public double stored(double[] state, int at) {
        return rotor.stored(state[at + ROTOR])
                + linings.capacity() * (state[at + LININGS] - GreyIron.REFERENCE)
                + housing.capacity() * (state[at + HOUSING] - GreyIron.REFERENCE)
                + fluid.capacity() * (state[at + FLUID] - GreyIron.REFERENCE);
    }
}
