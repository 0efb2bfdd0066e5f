package org.brakewright.analysis.clutch;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.brakewright.analysis.clutch.ClutchState.Loss;
import org.brakewright.analysis.clutch.ClutchState.Stop;
import org.brakewright.analysis.clutch.ClutchState.Torque;
import org.brakewright.analysis.pedal.PushrodStates;
import org.brakewright.kernel.friction.PadContact;
import org.brakewright.kernel.friction.PlateClutch;
import org.brakewright.model.resolved.ResolvedClutch;
import org.brakewright.model.resolved.ResolvedPedal;
import org.jspecify.annotations.Nullable;

/** Computes the clutch. */
public final class ClutchStates {
    /** Bearing travel beyond free at which a stop is set; common practice, no source. */
    private static final double BEYOND_FREE = 1.0e-3;

    private final ResolvedClutch clutch;
    private final ReleaseChain whenNew;
    private final ReleaseChain whenWorn;
    private final PlateState newPlate;
    private final PlateState wornPlate;

    private ClutchStates(ResolvedClutch clutch) {
        this.clutch = clutch;
        double wear = clutch.plate().wear();
        this.whenNew = ReleaseChain.of(clutch, 0);
        this.whenWorn = ReleaseChain.of(clutch, wear);
        this.newPlate = PlateStates.of(whenNew, 0);
        this.wornPlate = PlateStates.of(whenWorn, wear);
    }

    /** The clutch of a build; null when none is given. */
    public static @Nullable ClutchState of(Optional<ResolvedClutch> clutch) {
        return clutch.map(given -> new ClutchStates(given).state()).orElse(null);
    }

    private ClutchState state() {
        ReleaseState end = whenNew.end();
        double ratio = whenNew.cover().fingerRatio();
        double rise = ratio * clutch.plate().wear();
        OptionalDouble clamp = clutch.cover().clampLoad();
        return new ClutchState(
                clutch.slave().concentric(),
                clutch.rest().contact(),
                travelRatio(),
                end.padTravel(),
                whenNew.atPad(clutch.pedal().travelToStop()).masterStroke()
                        > clutch.master().stroke(),
                clutch.cover().mostBearingTravel(),
                ratio,
                clamp.isPresent() ? clamp.getAsDouble() : null,
                whenNew.cover().impliedClamp(),
                rise,
                clutch.rest().behind() - rise,
                stop(),
                newPlate,
                wornPlate,
                torque(),
                losses(),
                PushrodStates.ofSingle(clutch.pedal()));
    }

    private double travelRatio() {
        double rodTravel = whenNew.law().masterStroke(1, 0);
        return whenNew.lever().at(0).ratio() * rodTravel;
    }

    private Stop stop() {
        double least = Math.max(newPlate.freePadM(), wornPlate.freePadM());
        double most = Math.min(most(whenNew, 0), most(whenWorn, clutch.plate().wear()));
        double wanted = Math.max(beyond(whenNew, newPlate), beyond(whenWorn, wornPlate));
        Double best =
                least > most ? null : wanted <= most ? Double.valueOf(wanted) : Double.valueOf((least + most) / 2);
        return new Stop(least, most, best);
    }

    private static double beyond(ReleaseChain chain, PlateState plate) {
        double onBearing = chain.at(chain.gap() + plate.neededM() + BEYOND_FREE).padTravel();
        return Math.max(onBearing, plate.freePadM() + Stop.PAD_BEYOND_FREE);
    }

    /** Pad travel (m) at which the cover, the slave or the master is at its end. */
    private double most(ReleaseChain chain, double wear) {
        double cover = chain.gap() + clutch.cover().mostBearingTravel();
        double slave = chain.ahead(wear);
        return chain.at(Math.min(cover, slave)).padTravel();
    }

    private Torque torque() {
        ResolvedClutch.Plate plate = clutch.plate();
        PlateClutch law = new PlateClutch(plate.faces(), plate.friction(), plate.innerRadius(), plate.outerRadius());
        double implied = Math.min(newPlate.clampForceN(), wornPlate.clampForceN());
        double clamp = Math.min(implied, clutch.cover().clampLoad().orElse(implied));
        double bedded = law.torque(clamp, PadContact.UNIFORM_WEAR);
        OptionalDouble engine = clutch.limits().engineTorque();
        return new Torque(
                bedded,
                law.torque(clamp, PadContact.UNIFORM_PRESSURE),
                engine.isPresent() ? engine.getAsDouble() : null,
                engine.isPresent() ? bedded / engine.getAsDouble() : null,
                law.greatestPressure(
                        Math.max(newPlate.clampForceN(), wornPlate.clampForceN()), PadContact.UNIFORM_WEAR));
    }

    /** Shares of the pad travel at which a new plate is free; with a turning lever each takes its part of the rod's way. */
    private List<Loss> losses() {
        ReleaseState free = whenNew.at(whenNew.gap() + newPlate.neededM());
        ResolvedPedal pedal = clutch.pedal();
        double rod = pedal.slack() + free.masterStroke();
        double padPerRod = (free.armTravel() - pedal.freePlay()) / rod;
        double give = free.padTravel() - free.armTravel();
        double soft = 1 / pedal.mountStiffness() + 1 / pedal.armStiffness();
        Map<LossCause, Double> taken = new EnumMap<>(LossCause.class);
        rodTravels(free).forEach((cause, travel) -> taken.put(cause, travel * padPerRod));
        taken.put(LossCause.FREE_PLAY, pedal.freePlay());
        taken.put(LossCause.MOUNT, give / pedal.mountStiffness() / soft);
        taken.put(LossCause.ARM, give / pedal.armStiffness() / soft);
        List<Loss> losses = new ArrayList<>();
        taken.forEach((cause, travel) -> losses.add(new Loss(cause, travel)));
        return List.copyOf(losses);
    }

    private Map<LossCause, Double> rodTravels(ReleaseState free) {
        double pressure = free.pressurePa();
        double perBearing = whenNew.law().masterStroke(1, 0);
        double perVolume = 1 / clutch.master().area();
        Map<LossCause, Double> rod = new EnumMap<>(LossCause.class);
        rod.put(LossCause.SLACK, clutch.pedal().slack());
        rod.put(LossCause.LOST_STROKE, clutch.master().lostStroke());
        rod.put(LossCause.GAP, perBearing * whenNew.gap());
        rod.put(LossCause.HOSES, perVolume * whenNew.line().hoses(pressure));
        rod.put(LossCause.TUBES, perVolume * whenNew.line().tubes(pressure));
        rod.put(LossCause.LIQUID, perVolume * whenNew.line().liquid(pressure));
        rod.put(LossCause.AIR, perVolume * whenNew.line().air(pressure));
        rod.put(
                LossCause.FORK,
                perBearing * free.cover().bearingForce() * clutch.slave().forkGive());
        rod.put(LossCause.FINGERS, perBearing * newPlate.neededM());
        return rod;
    }
}
