package org.brakewright.sheets.mount;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.findings.Assessment;
import org.brakewright.model.resolved.ResolvedMount.Lay;
import org.brakewright.model.resolved.ResolvedMount.Plate;
import org.brakewright.model.resolved.ResolvedMount.Structure;
import org.brakewright.sheets.Column;
import org.brakewright.sheets.Draft;
import org.brakewright.sheets.Measure;
import org.brakewright.sheets.mount.PanelPicture.Drilled;

/** The firewall's cut-out and drill pattern, and each patch and doubler. */
public final class PanelSheet {
    private static final List<Double> SHARES = List.of(2.6, 1.6, 1.6, 1.6);

    private PanelSheet() {}

    /** The sheets of a car whose mount is told. */
    public static List<Draft> of(Assessment assessment) {
        return assessment
                .resolved()
                .mount()
                .map(mount -> drafts(mount.structure()))
                .orElse(List.of());
    }

    private static List<Draft> drafts(Structure structure) {
        var drafts = new ArrayList<Draft>();
        drafts.add(panel(structure));
        structure.plates().forEach(plate -> drafts.add(plate(structure, plate)));
        return List.copyOf(drafts);
    }

    private static Draft panel(Structure structure) {
        Column column = new Column()
                .add(PanelPicture.panel(structure))
                .heading("Holes, from the zero on the panel")
                .table(SHARES, rows(PanelPicture.drilled(structure, spot -> true)))
                .words(List.of(
                        "Seen from the driver's seat: the car's left is on the left. Tape the sheets to the panel with the"
                                + " zero and a plumb line on yours; centre-punch through the crosses.",
                        "Dashed outlines are patches and doublers; their own sheets have their edges. A patch replaces what"
                                + " lies within its outline.",
                        "Before a firewall is cut: look behind it for wires, hoses and the heater; seal what stays open, it"
                                + " keeps fire and fumes out."));
        return new Draft("firewall", "firewall, cut and drill", Draft.Use.TEMPLATE, column, List.of("mount"));
    }

    private static Draft plate(Structure structure, Plate plate) {
        List<Drilled> holes = PanelPicture.drilled(structure, spot -> PanelPicture.inside(spot, plate.outline()));
        Column column = new Column().add(PanelPicture.plate(structure, plate));
        if (!holes.isEmpty()) {
            column.heading("Holes, from the zero on the panel").table(SHARES, rows(holes));
        }
        boolean patch = plate.lay() == Lay.REPLACES;
        column.words(List.of(
                plate.material().name().replace('_', ' ') + ", " + Measure.both(plate.thickness())
                        + ". Seen from the driver's seat.",
                patch
                        ? "The outline is the edge of the hole that it fills: add the lap that you weld or rivet on."
                        : "Round the corners and dress the edges: sheet cracks where a plate ends sharply."));
        String number = plate.path().replaceAll("\\D+", "");
        return new Draft(
                (patch ? "patch-" : "doubler-") + (Integer.parseInt(number) + 1),
                (patch ? "patch: " : "doubler: ") + plate.name(),
                Draft.Use.TEMPLATE,
                column,
                List.of(plate.path(), "mount.brackets"));
    }

    private static List<List<String>> rows(List<Drilled> holes) {
        var rows = new ArrayList<List<String>>();
        rows.add(List.of("hole", "to the left", "up", "diameter"));
        for (Drilled hole : holes) {
            rows.add(List.of(
                    hole.name(),
                    Measure.both(hole.middle().across()),
                    Measure.both(hole.middle().up()),
                    Measure.both(hole.diameter())));
        }
        return rows;
    }
}
