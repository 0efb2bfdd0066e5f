package org.brakewright.app.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.brakewright.analysis.balance.BalanceCase;
import org.brakewright.analysis.balance.CaseName;
import org.brakewright.analysis.balance.Lock;
import org.brakewright.analysis.balance.RearFirst;
import org.brakewright.analysis.setting.Advice;
import org.brakewright.analysis.setting.BorePair;
import org.brakewright.analysis.setting.Layout;
import org.brakewright.analysis.setting.Setting;
import org.brakewright.analysis.setting.SettingMargin;
import org.brakewright.app.words.Show;
import org.brakewright.findings.Assessment;
import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.model.resolved.ResolvedCar;
import org.brakewright.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/** Tables of the balance in every case, of the best setting and of other layouts, in the units shown. */
public final class BalanceTables {
    private final Show show;
    private final Assessment assessment;

    /** Tables of an assessment. */
    public BalanceTables(Show show, Assessment assessment) {
        this.show = show;
        this.assessment = assessment;
    }

    /** All of them that there are. */
    public List<PageView.Table> all() {
        List<PageView.Table> tables = new ArrayList<>();
        tables.add(cases());
        Advice advice = assessment.analysis().advice();
        if (advice != null) {
            setting(advice).forEach(tables::add);
            if (!advice.layouts().isEmpty()) {
                tables.add(layouts(advice.layouts()));
            }
        }
        return List.copyOf(tables);
    }

    /** The balance in every case. */
    public PageView.Table cases() {
        return new PageView.Table(
                "Balance in every case" + leftOut(),
                List.of(
                        "case",
                        "rear first from",
                        "tyres give",
                        "first to lock",
                        "at",
                        "grip used",
                        "rear to spare",
                        "effort"),
                assessment.analysis().balanceCases().stream().map(this::row).toList());
    }

    private String leftOut() {
        ResolvedCar car = assessment.resolved().car();
        List<String> missing = new ArrayList<>();
        if (car.aero().isEmpty()) {
            missing.add("air");
        }
        if (car.engineBraking().isEmpty()) {
            missing.add("engine braking");
        }
        if (car.loadSensitivity().isEmpty()) {
            missing.add("load sensitivity of the tyres");
        }
        return missing.isEmpty() ? "" : " (left out, since not given: " + String.join(", ", missing) + ")";
    }

    private List<String> row(BalanceCase each) {
        Lock lock = each.gripLock();
        return List.of(
                name(each.name()),
                rearFirst(each.rearFirst()),
                g(each.greatestDecelerationG()),
                lock == null ? "none" : lock.axle().name().toLowerCase(Locale.ROOT),
                lock == null ? "-" : g(lock.decelerationG()),
                lock == null ? "-" : show.percent(lock.efficiency()),
                each.rearToSpare() == null ? "-" : show.percent(each.rearToSpare()),
                each.hardStopForceN() == null ? "-" : show.value(each.hardStopForceN(), Dimension.FORCE));
    }

    private String rearFirst(@Nullable RearFirst stretch) {
        if (stretch == null) {
            return "never";
        }
        Double end = stretch.toG();
        if (end != null) {
            return g(stretch.fromG()) + " to " + g(end);
        }
        return stretch.fromG() <= 0 ? "always" : g(stretch.fromG());
    }

    private String name(CaseName name) {
        String words = name.words();
        return name.speedMS() > 0
                ? words.replace("at speed", "at " + show.value(name.speedMS(), Dimension.SPEED))
                : words;
    }

    private List<PageView.Table> setting(Advice advice) {
        List<List<String>> rows = new ArrayList<>();
        Setting setting = advice.setting();
        if (setting != null) {
            rows.add(row("as it stands", shown(setting, setting.present()), setting.atPresent(), setting.presentUse()));
            rows.add(row("best", best(setting), setting.atBest(), setting.bestUse()));
        }
        BorePair pair = advice.borePair();
        if (pair != null) {
            String bores = show.bore(pair.frontBoreM()) + " front, " + show.bore(pair.rearBoreM()) + " rear";
            rows.add(row("best stock bores, bar centred", bores, pair.margin(), pair.use()));
        }
        return rows.isEmpty()
                ? List.of()
                : List.of(new PageView.Table(
                        "Best setting over all cases",
                        List.of(
                                "which",
                                "set to",
                                "margin",
                                "rear to spare",
                                "in",
                                "grip to spare",
                                "in",
                                "effort",
                                "travel"),
                        List.copyOf(rows)));
    }

    private String shown(Setting setting, double value) {
        return show.value(value, setting.kind() == Setting.Kind.BAR ? Dimension.LENGTH : Dimension.PRESSURE);
    }

    private String best(Setting setting) {
        Double turns = setting.turns();
        Double front = setting.leftToFrontM();
        Double rear = setting.leftToRearM();
        String best = shown(setting, setting.best());
        return turns == null || front == null || rear == null
                ? best
                : best + " (" + show.number(Math.abs(turns)) + " turns to the " + (turns >= 0 ? "front" : "rear")
                        + "), left " + show.value(front, Dimension.LENGTH) + " to the front, "
                        + show.value(rear, Dimension.LENGTH) + " to the rear";
    }

    private List<String> row(String what, String set, SettingMargin margin, Setting.@Nullable Use use) {
        Double rear = margin.rearMargin();
        CaseName rearCase = margin.rearCase();
        return List.of(
                what,
                set,
                show.percent(margin.margin()),
                rear == null ? "-" : show.percent(rear),
                rearCase == null ? "-" : name(rearCase),
                show.percent(margin.gripMargin()),
                name(margin.gripCase()) + ", grip " + show.number(margin.grip()),
                use == null ? "-" : show.value(use.effortN(), Dimension.FORCE),
                use == null ? "-" : travel(use));
    }

    private String travel(Setting.Use use) {
        return show.value(use.travelM(), Dimension.LENGTH) + (use.withinTravel() ? "" : " (not there)");
    }

    private PageView.Table layouts(List<Layout> layouts) {
        return new PageView.Table(
                "Same car, other layouts, each at its best setting",
                List.of(
                        "layout",
                        "margin",
                        "grip used at",
                        "effort",
                        "travel",
                        "front failed",
                        "rear failed",
                        "assumed"),
                layouts.stream().map(this::row).toList());
    }

    private List<String> row(Layout layout) {
        Setting.Use use = layout.use();
        return List.of(
                words(layout.kind()) + (layout.present() ? " (as built)" : "") + set(layout),
                show.percent(layout.margin().margin()),
                layout.efficiency().stream()
                        .map(used -> show.number(used.grip()) + ": " + show.percent(used.efficiency()))
                        .collect(Collectors.joining(", ")),
                use == null ? "-" : show.value(use.effortN(), Dimension.FORCE),
                use == null ? "-" : travel(use),
                g(layout.frontFailedG()),
                g(layout.rearFailedG()),
                assumed(layout));
    }

    private String set(Layout layout) {
        String set = layout.offsetM() == null ? "" : ", offset " + show.value(layout.offsetM(), Dimension.LENGTH);
        return layout.kneePa() == null ? set : set + ", knee " + show.value(layout.kneePa(), Dimension.PRESSURE);
    }

    private String assumed(Layout layout) {
        return layout.assumed().isEmpty()
                ? "nothing"
                : layout.assumed().stream().map(each -> words(each, layout)).collect(Collectors.joining(", "));
    }

    private String words(Layout.Assumed assumed, Layout layout) {
        return switch (assumed) {
            case BORE_FOR_SAME_EFFORT ->
                "bore for the same effort " + show.value(layout.frontBoreM(), Dimension.LENGTH);
            case TANDEM_STROKES -> "usual tandem strokes";
            case SINGLE_STROKES -> "usual single strokes";
            case USUAL_BAR -> "a usual bar";
            case USUAL_VALVE -> "a valve of slope 0.3";
        };
    }

    private static String words(Layout.Kind kind) {
        return switch (kind) {
            case BAR -> "bar alone";
            case TANDEM_AND_VALVE -> "tandem and valve";
            case BAR_AND_VALVE -> "bar and valve";
            case TANDEM -> "tandem alone";
        };
    }

    private String g(double decelerationG) {
        return show.value(decelerationG * Gravity.STANDARD, Dimension.ACCELERATION);
    }
}
