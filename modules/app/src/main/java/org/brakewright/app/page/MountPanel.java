package org.brakewright.app.page;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakewright.analysis.Analysis;
import org.brakewright.analysis.mount.MountState;
import org.brakewright.analysis.mount.MountState.Asked;
import org.brakewright.analysis.mount.MountState.BoltState;
import org.brakewright.analysis.mount.MountState.ColumnState;
import org.brakewright.analysis.mount.MountState.Dress;
import org.brakewright.analysis.mount.MountState.EnduranceState;
import org.brakewright.analysis.mount.MountState.JudgedAs;
import org.brakewright.analysis.mount.MountState.LoadState;
import org.brakewright.analysis.mount.MountState.OptionState;
import org.brakewright.analysis.mount.MountState.PartState;
import org.brakewright.analysis.mount.MountState.ReactionState;
import org.brakewright.analysis.mount.MountState.VariantState;
import org.brakewright.analysis.mount.MountState.WeldState;
import org.brakewright.app.words.Show;
import org.brakewright.model.resolved.ResolvedMount.Place;
import org.brakewright.quantity.Dimension;
import org.brakewright.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** What carries the pedal: how far it moves, where it is stressed, what holds it, what a brace would gain. */
public final class MountPanel {
    /** More stops than any car makes. */
    private static final double ENDLESS = 1e9;

    /** N; more than any foot. */
    private static final double NO_FOOT = 1e5;

    private final Show show;

    /** The panel in a system of units. */
    public MountPanel(Show show) {
        this.show = show;
    }

    /** The panel; null when no mount is told. */
    PageView.@Nullable Tabled of(Analysis analysis) {
        MountState mount = analysis.mount();
        return mount == null ? null : new PageView.Tabled(sentence(mount), tables(mount));
    }

    /** The movement in one sentence, and how far to trust it; empty when no mount is told. */
    public String sentence(Analysis analysis) {
        MountState mount = analysis.mount();
        return mount == null ? "" : sentence(mount);
    }

    /** All tables; empty when no mount is told. */
    public List<PageView.Table> tables(Analysis analysis) {
        MountState mount = analysis.mount();
        return mount == null ? List.of() : tables(mount);
    }

    private String sentence(MountState mount) {
        LoadState use = mount.loads().getFirst();
        return "A foot of " + force(use.footN()) + " moves the brake pad " + length(use.padM())
                + " with the fluid held fast, " + length(use.armM()) + " of it by bending of the arm, and the masters "
                + length(Math.abs(use.flangeM())) + (use.flangeM() < 0 ? " back" : " away")
                + " along their rods. Sheet is taken as flat and bending little: where it moves"
                + " by more than about its thickness it is stiffer than said here, and never softer.";
    }

    private List<PageView.Table> tables(MountState mount) {
        List<PageView.Table> tables = new ArrayList<>();
        tables.add(table(
                "The same car with more on its panel",
                List.of("panel", "added", "stiffness at the pad", "pad moves in use"),
                mount.variants().stream().map(this::variant).toList()));
        tables.add(table(
                "Movement under the foot",
                List.of("load", "foot", "pad", "by the arm", "masters", "pad aside"),
                mount.loads().stream().map(this::load).toList()));
        tables.add(table(
                "Stress in sheets and bars",
                List.of("part", "material", "most at", "without set", "in an emergency", "yields at", "breaks from"),
                mount.parts().stream().map(this::part).toList()));
        tables.add(table(
                "Bolts, in an emergency",
                List.of(
                        "bolt",
                        "tension",
                        "of it prying",
                        "shear",
                        "tightened to",
                        "slips at",
                        "opens at",
                        "proved to",
                        "sheet holds to",
                        "thread has",
                        "thread needs"),
                mount.bolts().stream().map(this::bolt).toList()));
        tables.add(table(
                "Welds on the panel",
                List.of("weld", "throat", "stress without set", "allowed", "holds to"),
                mount.welds().stream().map(this::weld).toList()));
        tables.add(table(
                "Bars that are pressed",
                List.of("bar", "pressed in an emergency", "length that bows", "bows out at", "with a foot of"),
                mount.columns().stream().map(this::column).toList()));
        tables.add(table(
                "Everyday stops until a crack",
                List.of("part", "judged as", "stress each stop", "stops"),
                mount.endurance().stream().map(this::endurance).toList()));
        tables.add(table(
                "What the body has to take in an emergency",
                List.of("place", "at", "forward", "left", "up", "together", "moment"),
                mount.reactions().stream().map(this::reaction).toList()));
        tables.add(table(
                "What each addition gains, most for its mass first",
                List.of("addition", "mass", "stiffness gained", "for each kilogram", "pad then moves in use"),
                mount.options().stream().map(this::option).toList()));
        return tables.stream().filter(table -> !table.rows().isEmpty()).toList();
    }

    private static PageView.Table table(String caption, List<String> columns, List<List<String>> rows) {
        return new PageView.Table(caption, columns, rows);
    }

    private List<String> variant(VariantState variant) {
        return List.of(
                dress(variant.dress()),
                mass(variant.massKg()),
                show.value(variant.stiffness(), Dimension.STIFFNESS),
                length(variant.padM()));
    }

    private static String dress(Dress dress) {
        return switch (dress) {
            case BARE -> "bare, uncut";
            case PATCHED -> "patched";
            case DOUBLED -> "patched and doubled";
            case BRACED -> "all, with braces";
        };
    }

    private List<String> load(LoadState load) {
        return List.of(
                asked(load.asked()),
                force(load.footN()),
                length(load.padM()),
                length(load.armM()),
                length(load.flangeM()),
                length(load.asideM()));
    }

    private static String asked(Asked asked) {
        return switch (asked) {
            case FUNCTION -> "in use";
            case STIFFNESS -> "without lasting set";
            case STRENGTH -> "in an emergency";
        };
    }

    private List<String> part(PartState part) {
        return List.of(
                part.name(),
                part.material().replace('_', ' '),
                place(part.at()),
                show.stress(part.stiffnessPa()),
                show.stress(part.strengthPa()),
                force(part.yieldsAtN()),
                force(part.breaksAtN()));
    }

    private String place(Place at) {
        return place(show, show.system().unit(Dimension.LENGTH), at);
    }

    /** Forward, left and up, as a tape reads them. */
    static String place(Show show, Unit unit, Place at) {
        return Stream.of(at.x(), at.y(), at.z())
                        .map(each -> show.fixed(unit.fromSi(each), unit == Unit.INCH ? 1 : 0))
                        .collect(Collectors.joining(" / "))
                + " " + unit.symbol();
    }

    private List<String> bolt(BoltState bolt) {
        Double prying = bolt.prying();
        return List.of(
                bolt.name(),
                force(bolt.tensionN()),
                prying == null ? "not told" : force(bolt.tensionN() - bolt.pullN()),
                force(bolt.shearN()),
                force(bolt.preloadN()) + (bolt.preloadTold() ? "" : " (assumed)"),
                force(bolt.slipsAtN()),
                bolt.opensAtN() == null ? "-" : force(requireNonNull(bolt.opensAtN())),
                force(bolt.provedToN()),
                force(bolt.bearsToN()),
                length(bolt.engagementM()),
                length(bolt.neededM()));
    }

    private List<String> weld(WeldState weld) {
        return List.of(
                weld.name(),
                length(weld.throatM()),
                show.stress(weld.stiffnessPa()),
                show.stress(weld.allowedPa()),
                force(weld.holdsToN()));
    }

    private List<String> column(ColumnState column) {
        return List.of(
                column.name(),
                force(column.pressN()),
                length(column.effectiveM()),
                force(column.failsN()),
                force(column.failsAtN()));
    }

    private List<String> endurance(EnduranceState endurance) {
        return List.of(
                endurance.name(),
                as(endurance.as()),
                show.stress(endurance.rangePa()),
                endurance.stops() > ENDLESS ? "over 1 000 million" : count(endurance.stops()));
    }

    private String count(double stops) {
        return stops > 1e6 ? show.number(stops / 1e6) + " million" : show.number(stops / 1e3) + " thousand";
    }

    private static String as(JudgedAs as) {
        return switch (as) {
            case CUT_EDGE -> "metal with cut edges";
            case AT_HOLE -> "metal at a bolt hole";
            case BESIDE_WELD -> "metal beside a weld";
            case WELD_THROAT -> "throat of a weld";
            case BOLT_TENSION -> "bolt in tension";
        };
    }

    private List<String> reaction(ReactionState reaction) {
        return List.of(
                reaction.name(),
                place(reaction.at()),
                force(reaction.forwardN()),
                force(reaction.leftN()),
                force(reaction.upN()),
                force(reaction.forceN()),
                show.value(reaction.momentNm(), Dimension.TORQUE));
    }

    private List<String> option(OptionState option) {
        return List.of(
                tried(option),
                mass(option.massKg()),
                show.value(option.gained(), Dimension.STIFFNESS),
                show.value(option.gainedPerKg(), Dimension.STIFFNESS),
                length(option.padM()));
    }

    private static String tried(OptionState option) {
        return switch (option.tried()) {
            case TOLD -> option.name() + " (is there)";
            case SKIN -> "a second skin all over, joined as one";
            case UP -> "a tube from the pivot straight up or down";
            case UP_AND_BACK -> "a tube from the pivot up and back";
            case BACK -> "a tube from the pivot straight back";
            case ASIDE -> "two tubes from the pivot, to both sides";
        };
    }

    private String mass(double kilogram) {
        return show.mass(kilogram);
    }

    private String force(double newton) {
        return newton > NO_FOOT ? "never" : show.value(newton, Dimension.FORCE);
    }

    private String length(double metre) {
        return show.value(metre, Dimension.LENGTH);
    }
}
