package org.brakewright.model.clutch;

import static org.brakewright.quantity.Dimension.FORCE;
import static org.brakewright.quantity.Dimension.RATIO;
import static org.brakewright.quantity.Dimension.TORQUE;

import org.brakewright.model.Asked;
import org.brakewright.model.Given;
import org.brakewright.model.Label;
import org.brakewright.model.Required;
import org.brakewright.model.hydraulics.MasterCylinder;
import org.brakewright.model.pedal.Pedal;
import org.jspecify.annotations.Nullable;

/** The clutch and what releases it, as written: a hydraulic release with a bearing that pushes. */
public record Clutch(
        @Label(value = "pedal", how = "The same keys as the brake pedal has.")
        @Required("Give ratio, linkage or mechanism of the clutch pedal.")
        Pedal pedal,

        @Label(value = "pedal spring", how = "Beside the return spring in the master: return_spring or over_centre.")
        @Nullable
        PedalSpring pedalSpring,

        @Label(value = "master", how = "The same keys as a brake master has.")
        @Required("Give at least the bore of the clutch master.")
        MasterCylinder master,

        @Label("line") @Nullable ReleaseLine line,

        @Label(
                value = "slave",
                how = "fork_slave: a cylinder outside that pushes a fork; concentric: a ring round the input shaft.")
        @Required("fork_slave or concentric: look what moves the release bearing.")
        Slave slave,

        @Asked(
                label = "efficiency from slave to release bearing",
                dimension = RATIO,
                least = 0.3,
                most = 1.0,
                why = "seals, fork and bearing guide take a part of the force and never add any")
        @Nullable
        Given releaseEfficiency,

        @Label(
                value = "release bearing",
                how = "clearance: it stands off the fingers at rest; constant_contact: it always rests on them.")
        @Required("clearance or constant_contact: can you turn the bearing freely with the pedal up?")
        Bearing bearing,

        @Label("cover") @Nullable Cover cover,

        @Label("plate") @Required("Measure the facings of the clutch plate.")
        Plate plate,

        @Asked(
                label = "greatest engine torque",
                dimension = TORQUE,
                least = 5.0,
                most = 5000.0,
                why = "engines of cars lie within this",
                how = "From the dyno sheet, at the flywheel.")
        @Nullable
        Given engineTorque,

        @Asked(
                label = "torque carried over engine torque, at least",
                dimension = RATIO,
                least = 1.0,
                most = 3.0,
                why = "below 1 it slips, and above 3 the pedal is heavy for nothing")
        @Nullable
        Given torqueReserve,

        @Asked(
                label = "most effort at the pedal",
                dimension = FORCE,
                least = 30.0,
                most = 500.0,
                why = "a left foot works within this",
                how = "What you want to hold in traffic.")
        @Nullable
        Given mostEffort) {}
