package org.brakewright.analysis.mount;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.mount.MountState.ColumnState;
import org.brakewright.kernel.structure.column.ColumnEnds;
import org.brakewright.kernel.structure.column.EulerColumn;
import org.brakewright.kernel.structure.section.Section;
import org.brakewright.model.mount.EndJoint;
import org.brakewright.model.resolved.ResolvedMount.Stringer;

/** Stringers that are pressed. The near end can turn with panel or bracket, so it is taken as hinged. */
final class Columns {
    private Columns() {}

    static List<ColumnState> of(LoadedMount loaded) {
        List<ColumnState> states = new ArrayList<>();
        List<Stringer> stringers = loaded.mount().structure().stringers();
        for (int i = 0; i < stringers.size(); i++) {
            String path = "mount.stringers[" + i + "]";
            int bar = loaded.model().bars().getOrDefault(path, List.of()).getFirst();
            double press = loaded.greatest(result -> -result.beam(bar).tension());
            if (press > 0) {
                states.add(state(path, stringers.get(i), press, loaded, bar));
            }
        }
        return List.copyOf(states);
    }

    private static ColumnState state(String path, Stringer stringer, double press, LoadedMount loaded, int bar) {
        Section section = Profiles.section(stringer.profile());
        ColumnEnds ends = stringer.bodyEnd() == EndJoint.WELDED ? ColumnEnds.FIXED_AND_HINGED : ColumnEnds.BOTH_HINGED;
        double effective = ends.factor() * loaded.straight().beam(bar).length();
        double fails = new EulerColumn(
                        section.bending().least(),
                        section.area(),
                        effective,
                        stringer.material().young())
                .failureLoad(stringer.material().yieldStress());
        return new ColumnState(
                path, stringer.name(), press * loaded.mount().loads().strength(), effective, fails, fails / press);
    }
}
