package org.brakewright.model.resolved;

/**
 * What the builder wants, as numbers.
 *
 * @param hardStopG deceleration of the hard stop, g
 * @param mostEffort N
 * @param mostTravel m
 * @param leastReserve share of the pedal travel
 * @param leastStrokeLeft share of the master's stroke
 * @param balanceMargin share beyond the grip up to which the front must lock first
 * @param panicPush N
 * @param airInOneCircuit share of a circuit's fluid that is air at atmosphere, as a failure case
 */
public record Aims(
        double hardStopG,
        double mostEffort,
        double mostTravel,
        double leastReserve,
        double leastStrokeLeft,
        double balanceMargin,
        double panicPush,
        double airInOneCircuit) {}
