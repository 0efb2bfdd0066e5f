package org.brakewright.sheets.lines;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.brakewright.analysis.lines.LinesState;
import org.brakewright.drawing.Drawing;
import org.brakewright.drawing.Extent;
import org.brakewright.drawing.Point;
import org.brakewright.model.lines.PartKind;
import org.brakewright.sheets.Drawn;
import org.brakewright.sheets.Examples;
import org.brakewright.sheets.lines.Network.Branch;
import org.junit.jupiter.api.Test;

/** The example: three masters, two tees, five hose brackets, four calipers and a slave, joined as its build file says. */
class SchematicSheetTest {
    private static final String CAR = Examples.text("hill-climber");
    private static final LinesState LINES =
            Objects.requireNonNull(Examples.assessed(CAR).analysis().lines());
    private static final List<Branch> TREES = Network.of(LINES).trees();

    @Test
    void everyMasterFeedsWhatTheFileJoinsToIt() {
        assertThat(TREES)
                .extracting(tree -> tree.part().name())
                .containsExactly("front master", "rear master", "clutch master");
        assertThat(TREES).extracting(Branch::leaves).containsExactly(2, 2, 1);
        Branch tee = TREES.getFirst().next().getFirst();
        assertThat(tree(tee))
                .isEqualTo(
                        "front tee(front left bracket(~front left caliper), front right bracket(~front right caliper))");
        assertThat(tree(TREES.getLast())).isEqualTo("clutch master(clutch bracket(~clutch slave))");
    }

    /** A hose is marked by a wave. */
    private static String tree(Branch branch) {
        List<String> next = branch.next().stream().map(SchematicSheetTest::tree).toList();
        return (branch.hose() ? "~" : "")
                + branch.part().name()
                + (next.isEmpty() ? "" : "(" + String.join(", ", next) + ")");
    }

    @Test
    void everyPartHasAPlaceOfItsOwnDownstreamOfWhatFeedsIt() {
        Map<String, Point> places = SchematicPicture.places(TREES);
        assertThat(places).hasSameSizeAs(LINES.parts());
        assertThat(places.values()).doesNotHaveDuplicates();
        for (Branch tree : TREES) {
            runsToTheRight(tree, places);
        }
    }

    private static void runsToTheRight(Branch branch, Map<String, Point> places) {
        for (Branch next : branch.next()) {
            assertThat(at(next, places).x()).isGreaterThan(at(branch, places).x() + 8);
            runsToTheRight(next, places);
        }
    }

    private static Point at(Branch branch, Map<String, Point> places) {
        return Objects.requireNonNull(places.get(branch.part().name()));
    }

    @Test
    void everyPartIsNamedAndThePageHoldsIt() {
        List<Drawing> pages = Examples.sheet(CAR, "schematic").drawings();
        assertThat(Drawn.of(Examples.sheet(CAR, "schematic")).words())
                .containsAll(
                        LINES.parts().stream().map(LinesState.PartState::name).toList())
                .contains("pedal", "tee", "hose bracket", "caliper");
        assertThat(pages)
                .allSatisfy(page -> assertThat(Extent.of(page.shapes()).width()).isLessThan(172.001));
    }

    /** Rows 15 mm apart leave no symbol in another one's. */
    @Test
    void noSymbolReachesIntoTheRowAbove() {
        for (PartKind kind : PartKind.values()) {
            assertThat(Extent.of(Symbols.of(kind)).height()).as(kind.name()).isLessThan(15);
            assertThat(Symbols.reach(kind))
                    .isLessThanOrEqualTo(Math.max(0, Extent.of(Symbols.of(kind)).maxX()));
        }
    }

    /** The pickup: a tandem master, a proportioning valve in the rear line, discs before drums, no lines told. */
    @Test
    void aCarWithoutLinesIsDrawnInTheUsualWay() {
        String pickup = Examples.text("shop-pickup");
        List<Branch> trees =
                UsualNetwork.of(Examples.assessed(pickup).resolved()).trees();
        assertThat(trees.stream().map(SchematicSheetTest::tree))
                .containsExactly(
                        "front chamber(front tee(front left bracket(~front left caliper),"
                                + " front right bracket(~front right caliper)))",
                        "rear chamber(proportioning valve(rear tee(rear left bracket(~rear left wheel"
                                + " cylinder), rear right bracket(~rear right wheel cylinder))))");
        assertThat(Drawn.of(Examples.sheet(pickup, "schematic")).words())
                .anyMatch(words -> words.startsWith("Nobody has told how this car's lines run"));
    }

    /** A chamber feeds a front wheel and the rear one across; each rear wheel has its valve. */
    @Test
    void aDiagonalSplitCrosses() {
        String crossed = Examples.text("shop-pickup").replaceFirst("(?m)^apply:\n", "apply:\n  split: diagonal\n");
        List<Branch> trees =
                UsualNetwork.of(Examples.assessed(crossed).resolved()).trees();
        assertThat(tree(trees.getFirst()))
                .contains("front left caliper", "proportioning valve, right(", "rear right wheel cylinder");
        assertThat(tree(trees.getLast())).contains("front right caliper", "rear left wheel cylinder");
    }
}
