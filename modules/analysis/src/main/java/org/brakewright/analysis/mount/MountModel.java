package org.brakewright.analysis.mount;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.brakewright.kernel.structure.StructureModel;
import org.brakewright.model.resolved.ResolvedMount.Bracket;
import org.brakewright.model.resolved.ResolvedMount.Material;

/**
 * A mount as a structure, with what is needed to read its results.
 *
 * @param frame of the panel, whose nodes come first
 * @param panelNodes how many
 * @param brackets node of each, in their order
 * @param sheets stress is asked of these
 * @param fasteners springs of bolts and welds, by path
 * @param bars beams by path; a bar may be of several
 * @param grounded nodes that the body holds, by what holds them
 * @param pad node of the pad; -1 without a pedal
 */
record MountModel(
        StructureModel structure,
        PanelFrame frame,
        int panelNodes,
        List<Integer> brackets,
        List<SheetPiece> sheets,
        Map<String, List<Integer>> fasteners,
        Map<String, List<Integer>> bars,
        Map<String, Set<Integer>> grounded,
        int pad) {

    /**
     * A triangle of sheet.
     *
     * @param element its number
     * @param part path of the part
     * @param judged false under washers and feet, where it is held rigid
     */
    record SheetPiece(int element, String part, Material material, boolean judged) {}

    /** Which bracket carries the pivot. */
    static int pivotBracket(List<Bracket> brackets) {
        return which(brackets.stream().map(Bracket::pivot).toList());
    }

    /** Which bracket carries the masters. */
    static int mastersBracket(List<Bracket> brackets) {
        return which(brackets.stream().map(Bracket::masters).toList());
    }

    private static int which(List<Boolean> carries) {
        return carries.indexOf(true);
    }

    static <T> void note(Map<String, List<T>> map, String key, T value) {
        map.computeIfAbsent(key, ignored -> new ArrayList<>()).add(value);
    }

    static <T> Map<String, T> ordered() {
        return new LinkedHashMap<>();
    }
}
