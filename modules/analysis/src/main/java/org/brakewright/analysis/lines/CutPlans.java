package org.brakewright.analysis.lines;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.brakewright.analysis.lines.LinesState.Bar;
import org.brakewright.analysis.lines.LinesState.CutState;
import org.brakewright.kernel.tubing.CutList;
import org.brakewright.kernel.tubing.CutPlan;
import org.brakewright.model.resolved.ResolvedLines;

/** What is cut of which length of stock, for each kind of tube. */
final class CutPlans {
    private CutPlans() {}

    private record Section(String material, double outside, double wall) {}

    static List<CutState> of(ResolvedLines lines, List<TubeState> tubes) {
        Map<Section, List<TubeState>> kinds = tubes.stream()
                .collect(Collectors.groupingBy(
                        tube -> new Section(tube.material(), tube.outsideDiameterM(), tube.wallM()),
                        LinkedHashMap::new,
                        Collectors.toList()));
        return kinds.entrySet().stream()
                .map(kind -> cut(lines, kind.getKey(), kind.getValue()))
                .toList();
    }

    private static CutState cut(ResolvedLines lines, Section section, List<TubeState> tubes) {
        CutPlan plan = new CutList(tubes.stream().map(TubeState::cutM).toList(), lines.stocks(), lines.sawCut()).plan();
        List<Bar> bars = plan.bars().stream()
                .map(bar -> new Bar(
                        bar.stock(),
                        bar.pieces().stream()
                                .map(piece -> tubes.get(piece).name())
                                .toList(),
                        bar.left()))
                .toList();
        return new CutState(
                section.material(), section.outside(), section.wall(), bars, plan.stock(), plan.leastStock());
    }
}
