package org.brakewright.analysis.mount;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.kernel.mesh.PanelMesh;
import org.brakewright.kernel.mesh.Triangle;
import org.brakewright.kernel.structure.Shell;
import org.brakewright.kernel.structure.StructureModel;
import org.brakewright.kernel.structure.shell.Sheet;
import org.brakewright.model.resolved.ResolvedMount.Lay;
import org.brakewright.model.resolved.ResolvedMount.Material;
import org.brakewright.model.resolved.ResolvedMount.Plate;
import org.brakewright.model.resolved.ResolvedMount.Structure;

/**
 * Lays the sheets of a panel on its triangles. Sheets that bend side by side share the triangle's nodes: their
 * stiffnesses add up, and the gain of lying off the middle is left out.
 */
final class PanelSheets {
    private static final String PANEL = "mount.panel";

    private final Structure structure;
    private final PanelMesh mesh;

    PanelSheets(Structure structure, PanelMesh mesh) {
        this.structure = structure;
        this.mesh = mesh;
    }

    List<MountModel.SheetPiece> add(StructureModel.Builder model) {
        List<MountModel.SheetPiece> pieces = new ArrayList<>();
        for (Triangle triangle : mesh.triangles()) {
            boolean judged = triangle.regions().stream().noneMatch(name -> name.endsWith(PanelPlans.DISC));
            for (Layer layer : layers(triangle)) {
                Material material = layer.material();
                Sheet sheet = new Sheet(layer.thickness(), material.young(), material.poisson());
                int element = model.add(new Shell(layer.part(), triangle.a(), triangle.b(), triangle.c(), sheet));
                pieces.add(new MountModel.SheetPiece(element, layer.part(), material, judged));
            }
        }
        return pieces;
    }

    /** One sheet of a triangle; thickness in m. */
    private record Layer(String part, double thickness, Material material) {}

    private List<Layer> layers(Triangle triangle) {
        Layer base = new Layer(
                PANEL, structure.panel().thickness(), structure.panel().material());
        List<Layer> beside = new ArrayList<>();
        for (Plate plate : structure.plates()) {
            if (triangle.regions().contains(plate.path())) {
                Layer layer = new Layer(plate.path(), plate.thickness(), plate.material());
                switch (plate.lay()) {
                    case REPLACES -> base = layer;
                    case AS_ONE -> base = new Layer(base.part(), base.thickness() + layer.thickness(), base.material());
                    case SIDE_BY_SIDE -> beside.add(layer);
                }
            }
        }
        beside.addFirst(base);
        return beside;
    }

    /** Of all sheets of a triangle, m. */
    double thickness(Triangle triangle) {
        return layers(triangle).stream().mapToDouble(Layer::thickness).sum();
    }

    /** Yield stress of the softest sheet of a triangle, Pa. */
    double yieldStress(Triangle triangle) {
        return layers(triangle).stream()
                .mapToDouble(layer -> layer.material().yieldStress())
                .min()
                .orElseThrow();
    }

    /** Kilograms of a plate beyond what it replaces. */
    static double mass(Plate plate, PanelMesh mesh, Structure structure) {
        double area = mesh.triangles().stream()
                .filter(triangle -> triangle.regions().contains(plate.path()))
                .mapToDouble(mesh::area)
                .sum();
        double replaced = plate.lay() == Lay.REPLACES
                ? structure.panel().thickness() * structure.panel().material().density()
                : 0;
        return area * (plate.thickness() * plate.material().density() - replaced);
    }
}
