package org.brakewright.analysis.setting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.brakewright.analysis.balance.Balance;
import org.brakewright.analysis.balance.Lock;
import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.ChainCurve;
import org.brakewright.analysis.failure.Failure;
import org.brakewright.analysis.failure.Failure.What;
import org.brakewright.analysis.failure.Failures;
import org.brakewright.analysis.resolve.UsualParts;
import org.brakewright.analysis.setting.Layout.Assumed;
import org.brakewright.analysis.setting.Layout.Kind;
import org.brakewright.analysis.setting.Setting.Use;
import org.brakewright.analysis.vehicle.Loads;
import org.brakewright.kernel.roots.Crossing;
import org.brakewright.kernel.roots.Peak;
import org.brakewright.model.hydraulics.Chamber;
import org.brakewright.model.hydraulics.CircuitSplit;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedApply.Master;
import org.brakewright.model.resolved.ResolvedApply.Tandem;
import org.brakewright.model.resolved.ResolvedApply.Twin;
import org.brakewright.model.resolved.ResolvedApply.Valve;
import org.brakewright.model.resolved.ResolvedApply.Valves;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedLoadCase;
import org.brakewright.model.vehicle.AxleEnd;

/** Puts other apply systems on the same car and sets each as well as it can be set. */
final class Layouts {
    private static final double LEAST_BORE = 4e-3;
    private static final double MOST_BORE = 80e-3;
    private static final double OUT_OF_REACH = 1e6;
    /** A margin that no one would fit a valve for. */
    private static final double NOTHING = 1e-3;

    private static final int KNEES = 6;
    private static final double NARROW_KNEE = 0.02;

    private final ResolvedBuild build;
    private final Settings settings;
    private final List<Assumed> assumed = new ArrayList<>();

    Layouts(ResolvedBuild build, Settings settings) {
        this.build = build;
        this.settings = settings;
    }

    /** All four; none when no push gives the hard stop, so that efforts cannot be made the same. */
    List<Layout> all() {
        Use present = settings.use(build.apply());
        if (present == null) {
            return List.of();
        }
        Twin twin = twin(present.effortN());
        List<Assumed> forTwin = List.copyOf(assumed);
        assumed.clear();
        Tandem tandem = tandem(present.effortN());
        List<Assumed> forTandem = List.copyOf(assumed);
        return List.of(
                layout(Kind.BAR, atBest(twin), forTwin),
                layout(Kind.TANDEM_AND_VALVE, valved(tandem), withValve(forTandem)),
                layout(Kind.BAR_AND_VALVE, barAndValve(twin), withValve(forTwin)),
                layout(Kind.TANDEM, tandem, forTandem));
    }

    private Twin twin(double effort) {
        if (build.apply() instanceof Twin twin) {
            return twin.withValve(Optional.empty());
        }
        assumed.addAll(List.of(Assumed.BORE_FOR_SAME_EFFORT, Assumed.SINGLE_STROKES, Assumed.USUAL_BAR));
        Master master = UsualParts.single(((Tandem) build.apply()).master());
        double bore = sameEffort(effort, each -> twin(master.withBore(each)));
        return twin(master.withBore(bore));
    }

    private static Twin twin(Master master) {
        return new Twin(master, master, UsualParts.bar(), Valves.none());
    }

    private Tandem tandem(double effort) {
        if (build.apply() instanceof Tandem tandem) {
            return tandem.withValve(Optional.empty());
        }
        assumed.addAll(List.of(Assumed.BORE_FOR_SAME_EFFORT, Assumed.TANDEM_STROKES));
        Master master = UsualParts.tandem(((Twin) build.apply()).front());
        double bore = sameEffort(effort, each -> tandem(master.withBore(each)));
        return tandem(master.withBore(bore));
    }

    private static Tandem tandem(Master master) {
        double stroke = UsualParts.chamberStroke();
        return new Tandem(
                master, CircuitSplit.FRONT_REAR, Chamber.PRIMARY, stroke, stroke, Optional.empty(), Valves.none());
    }

    /** A layout by its bore in m. */
    private interface OfBore {
        ResolvedApply with(double bore);
    }

    /** Bore (m) with a given effort at the hard stop; the nearer end when none gives it. */
    private double sameEffort(double effort, OfBore layout) {
        OptionalDouble bore = Crossing.between(each -> effort(layout.with(each)) - effort, LEAST_BORE, MOST_BORE);
        return bore.orElse(effort(layout.with(LEAST_BORE)) > effort ? LEAST_BORE : MOST_BORE);
    }

    private double effort(ResolvedApply apply) {
        return new Balance(curve(apply), Loads.of(build.car(), build.car().heaviest()))
                .pedalForce(build.aims().hardStopG())
                .orElse(OUT_OF_REACH);
    }

    private ChainCurve curve(ResolvedApply apply) {
        return ChainCurve.of(Chain.of(build.withApply(apply)));
    }

    private List<Assumed> withValve(List<Assumed> others) {
        List<Assumed> all = new ArrayList<>(others);
        if (valve().equals(UsualParts.valve(Settings.MOST_KNEE))) {
            all.add(Assumed.USUAL_VALVE);
        }
        return List.copyOf(all);
    }

    private Valve valve() {
        return build.apply()
                .valve()
                .filter(valve -> valve.line() == AxleEnd.REAR)
                .orElse(UsualParts.valve(Settings.MOST_KNEE));
    }

    private ResolvedApply valved(Tandem tandem) {
        return tandem.withValve(Optional.of(valve().withKnee(settings.bestKnee(tandem, valve()))));
    }

    /** Both set together: for each knee the bar near its best, then the bar at its best; or the knee out of the way. */
    private Twin barAndValve(Twin twin) {
        double knee = -Peak.between(
                each -> settings.nearBestMargin(valved(twin, -each)),
                -Settings.MOST_KNEE,
                -Settings.LEAST_KNEE,
                KNEES,
                NARROW_KNEE);
        Twin both = atBest(valved(twin, knee));
        Twin barOnly = atBest(valved(twin, Settings.MOST_KNEE));
        double gain = settings.margin(both).margin() - settings.margin(barOnly).margin();
        return gain > NOTHING ? both : barOnly;
    }

    private Twin valved(Twin twin, double knee) {
        return twin.withValve(Optional.of(valve().withKnee(knee)));
    }

    private Twin atBest(Twin twin) {
        return twin.withOffset(settings.bestOffset(twin));
    }

    private Layout layout(Kind kind, ResolvedApply apply, List<Assumed> from) {
        ResolvedBuild set = build.withApply(apply);
        List<Failure> failures = Failures.of(set, Chain.of(set));
        return new Layout(
                kind,
                kind == kind(build.apply()),
                apply instanceof Twin twin ? twin.bar().offset() : null,
                apply.valve().map(Valve::knee).orElse(null),
                front(apply).bore(),
                rear(apply).bore(),
                settings.margin(apply),
                efficiency(apply),
                settings.use(apply),
                left(failures, What.FRONT_CIRCUIT, What.FIRST_DIAGONAL),
                left(failures, What.REAR_CIRCUIT, What.SECOND_DIAGONAL),
                from);
    }

    private static double left(List<Failure> failures, What axle, What diagonal) {
        return failures.stream()
                .filter(each -> each.what() == axle || each.what() == diagonal)
                .findFirst()
                .orElseThrow()
                .decelerationG();
    }

    private static Kind kind(ResolvedApply apply) {
        boolean valve = apply.valve().isPresent();
        return switch (apply) {
            case Twin twin -> valve ? Kind.BAR_AND_VALVE : Kind.BAR;
            case Tandem tandem -> valve ? Kind.TANDEM_AND_VALVE : Kind.TANDEM;
        };
    }

    private static Master front(ResolvedApply apply) {
        return switch (apply) {
            case Twin twin -> twin.front();
            case Tandem tandem -> tandem.master();
        };
    }

    private static Master rear(ResolvedApply apply) {
        return switch (apply) {
            case Twin twin -> twin.rear();
            case Tandem tandem -> tandem.master();
        };
    }

    private List<Layout.Used> efficiency(ResolvedApply apply) {
        List<Layout.Used> used = new ArrayList<>();
        for (double grip : new double[] {0.3, 0.6, build.car().grip()}) {
            double least = leastEfficiency(curve(apply), grip);
            if (Double.isFinite(least)) {
                used.add(new Layout.Used(grip, least));
            }
        }
        return List.copyOf(used);
    }

    private double leastEfficiency(ChainCurve curve, double grip) {
        double least = Double.POSITIVE_INFINITY;
        for (ResolvedLoadCase loadCase : build.car().loadCases()) {
            double efficiency = new Balance(curve, Loads.of(build.car(), loadCase))
                    .lock(grip)
                    .map(Lock::efficiency)
                    .orElse(Double.POSITIVE_INFINITY);
            least = Math.min(least, efficiency);
        }
        return least;
    }
}
