package org.brakewright.analysis.footwell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakewright.analysis.footwell.FootwellState.GapState;
import org.brakewright.analysis.footwell.FootwellState.HeelToeState;
import org.brakewright.analysis.footwell.FootwellState.Letter;
import org.brakewright.analysis.footwell.FootwellState.PadState;
import org.brakewright.analysis.footwell.FootwellState.SpacingState;
import org.brakewright.analysis.footwell.FootwellState.Which;
import org.brakewright.analysis.mount.PanelCorners;
import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedFootwell;
import org.brakewright.model.resolved.ResolvedFootwell.FootPad;
import org.brakewright.model.resolved.ResolvedMount;
import org.brakewright.model.resolved.ResolvedMount.Place;
import org.jspecify.annotations.Nullable;

/**
 * Works out the pedals side by side.
 *
 * <p>Spacing: UN R35 as an Estonian technical rule reproduces it (secondary source); what the letters mean, and that single
 * figures are least ones, from memory. Distances to walls are taken from the pad's edge, the strict reading.
 */
public final class FootwellStates {
    private static final double SIDE_BY_SIDE = 0.050;
    private static final double FARTHEST = 0.100;
    private static final double RIGHT_OF_BRAKE = 0.130;
    private static final double LEFT_OF_BRAKE = 0.160;
    private static final double LEFT_OF_BRAKE_OF_TWO = 0.120;

    private final ResolvedFootwell footwell;
    private final @Nullable Double brakeTravel;

    private final Sweeps sweeps;

    private FootwellStates(ResolvedFootwell footwell, Optional<ResolvedMount> mount, @Nullable Double brakeTravel) {
        this.footwell = footwell;
        this.brakeTravel = brakeTravel;
        this.sweeps = new Sweeps(footwell.obstacles());
        mount.ifPresent(this::panel);
    }

    private void panel(ResolvedMount mount) {
        PanelCorners.inCar(mount)
                .ifPresent(corners ->
                        sweeps.panel(corners, mount.structure().panel().thickness()));
    }

    /** The footwell of a build; null when none is told. */
    public static @Nullable FootwellState of(ResolvedBuild build, @Nullable HardStop hardStop) {
        Double travel = hardStop == null ? null : hardStop.point().pedalTravelM();
        return build.footwell()
                .map(footwell -> new FootwellStates(footwell, build.mount(), travel).state())
                .orElse(null);
    }

    private FootwellState state() {
        List<PadState> pads = new ArrayList<>();
        footwell.clutch().ifPresent(clutch -> {
            pads.add(pad(Which.CLUTCH, clutch));
            sweeps.add(Which.CLUTCH, swing(clutch));
        });
        pads.add(pad(Which.BRAKE, footwell.brake()));
        sweeps.add(Which.BRAKE, swing(footwell.brake()));
        pads.add(pad(Which.THROTTLE, footwell.throttle()));
        sweeps.add(Which.THROTTLE, swing(footwell.throttle()));
        return new FootwellState(
                footwell.shoeBreadth(), List.copyOf(pads), gaps(), spacing(), sweeps.states(), heelToe());
    }

    private PadSwing swing(FootPad pad) {
        return new PadSwing(pad, footwell.arm());
    }

    private PadState pad(Which which, FootPad pad) {
        PadSwing swing = swing(pad);
        return new PadState(
                which,
                pad.breadth(),
                pad.height(),
                pad.pivot(),
                pad.pad(),
                which == Which.BRAKE ? working() : null,
                swing.at(pad.travel()));
    }

    private @Nullable Place working() {
        return brakeTravel == null ? null : swing(footwell.brake()).at(brakeTravel);
    }

    private List<GapState> gaps() {
        List<GapState> gaps = new ArrayList<>();
        Place working = working();
        FootPad brake = footwell.brake();
        footwell.clutch()
                .ifPresent(clutch -> gaps.add(new GapState(
                        Which.CLUTCH,
                        Which.BRAKE,
                        gap(clutch, brake),
                        clutch.pad().x() - brake.pad().x(),
                        working == null ? null : clutch.pad().x() - working.x(),
                        overhang(clutch, brake))));
        FootPad throttle = footwell.throttle();
        gaps.add(new GapState(
                Which.BRAKE,
                Which.THROTTLE,
                gap(brake, throttle),
                brake.pad().x() - throttle.pad().x(),
                working == null ? null : working.x() - throttle.pad().x(),
                overhang(brake, throttle)));
        return List.copyOf(gaps);
    }

    private double overhang(FootPad left, FootPad right) {
        double narrower = Math.min(left.breadth(), right.breadth());
        return Math.max(0, (footwell.shoeBreadth() - narrower) / 2);
    }

    private static double gap(FootPad left, FootPad right) {
        return right(left) - left(right);
    }

    private static double left(FootPad pad) {
        return pad.pad().y() + pad.breadth() / 2;
    }

    private static double right(FootPad pad) {
        return pad.pad().y() - pad.breadth() / 2;
    }

    private List<SpacingState> spacing() {
        List<SpacingState> all = new ArrayList<>();
        FootPad brake = footwell.brake();
        Optional<FootPad> clutch = footwell.clutch();
        all.add(new SpacingState(Letter.E, gap(brake, footwell.throttle()), SIDE_BY_SIDE, FARTHEST));
        clutch.ifPresent(pad -> all.add(new SpacingState(Letter.F, gap(pad, brake), SIDE_BY_SIDE, null)));
        footwell.leftWall().ifPresent(wall -> {
            clutch.ifPresent(pad -> all.add(new SpacingState(Letter.G, wall - left(pad), SIDE_BY_SIDE, null)));
            double least = clutch.isPresent() ? LEFT_OF_BRAKE : LEFT_OF_BRAKE_OF_TWO;
            all.add(new SpacingState(Letter.J, wall - left(brake), least, null));
        });
        footwell.rightWall()
                .ifPresent(wall -> all.add(new SpacingState(Letter.H, right(brake) - wall, RIGHT_OF_BRAKE, null)));
        return List.copyOf(all);
    }

    private @Nullable HeelToeState heelToe() {
        Place working = working();
        FootPad throttle = footwell.throttle();
        return working == null
                ? null
                : HeelToe.of(
                        footwell.shoeBreadth(),
                        gap(footwell.brake(), throttle),
                        working.x() - throttle.pad().x(),
                        throttle.travel());
    }
}
