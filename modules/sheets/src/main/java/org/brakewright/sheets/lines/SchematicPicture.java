package org.brakewright.sheets.lines;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.brakewright.drawing.Align;
import org.brakewright.drawing.Circle;
import org.brakewright.drawing.Figure;
import org.brakewright.drawing.Line;
import org.brakewright.drawing.Placement;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Polyline;
import org.brakewright.drawing.Shape;
import org.brakewright.drawing.Stroke;
import org.brakewright.drawing.Text;
import org.brakewright.model.lines.Circuit;
import org.brakewright.model.lines.PartKind;
import org.brakewright.sheets.lines.Network.Branch;

/** The network from left to right, a tree a master, each end on a row of its own. */
final class SchematicPicture {
    private static final double LEFT = 34;
    private static final double RIGHT = 144;
    private static final double ROW = 15;
    private static final double TREE = 8;
    private static final double WORDS = 2;

    private final List<Shape> shapes = new ArrayList<>();
    private final Map<String, Point> places = new LinkedHashMap<>();
    private final double step;
    private double bottom;

    private SchematicPicture(List<Branch> trees) {
        int depth = trees.stream().mapToInt(Branch::depth).max().orElse(0);
        this.step = (RIGHT - LEFT) / Math.max(1, depth);
        for (Branch tree : trees) {
            place(tree, LEFT);
            bottom -= TREE;
        }
        trees.forEach(this::draw);
    }

    /** The diagram of some trees; with a balance bar between the rods of front and rear master. */
    static List<Shape> of(List<Branch> trees, boolean bar) {
        SchematicPicture picture = new SchematicPicture(trees);
        if (bar) {
            picture.bar(trees);
        }
        return List.copyOf(picture.shapes);
    }

    /** Where each part stands. */
    static Map<String, Point> places(List<Branch> trees) {
        return Collections.unmodifiableMap(new SchematicPicture(trees).places);
    }

    /** Ends from the top down, each other part in the middle of what it feeds. */
    private double place(Branch branch, double x) {
        double y;
        if (branch.next().isEmpty()) {
            y = bottom;
            bottom -= ROW;
        } else {
            List<Double> rows =
                    branch.next().stream().map(next -> place(next, x + step)).toList();
            y = (rows.getFirst() + rows.getLast()) / 2;
        }
        places.put(branch.part().name(), new Point(x, y));
        return y;
    }

    private void draw(Branch branch) {
        Point at = at(branch);
        PartKind kind = branch.part().kind();
        shapes.add(new Figure(Symbols.of(kind), Placement.at(at.x(), at.y())));
        if (branch.part().bleeder()) {
            shapes.add(new Figure(Symbols.bleeder(), Placement.at(at.x() + 2.5, at.y() + 3.5)));
        }
        boolean master = kind == PartKind.MASTER;
        shapes.add(Text.of(at.plus(master ? -14 : 0, -6.2), WORDS, branch.part().name())
                .within(Math.max(step - 1, 18)));
        for (Branch next : branch.next()) {
            link(at.plus(Symbols.reach(kind), 0), at(next), next.hose());
            draw(next);
        }
    }

    /** A working line turns once, halfway; a hose goes straight, bent. */
    private void link(Point from, Point to, boolean hose) {
        if (hose) {
            shapes.add(Symbols.flexible(from, to));
            return;
        }
        double turn = from.x() + (to.x() - from.x()) / 3;
        shapes.add(
                from.y() == to.y()
                        ? new Line(from, to, Stroke.OUTLINE)
                        : Polyline.open(Stroke.OUTLINE, from, new Point(turn, from.y()), new Point(turn, to.y()), to));
    }

    private Point at(Branch branch) {
        return places.getOrDefault(branch.part().name(), new Point(0, 0));
    }

    /** The bar across both rods, its bearing in the middle, pushed by the pedal. */
    private void bar(List<Branch> trees) {
        List<Point> rods = trees.stream()
                .filter(tree -> tree.part().circuit() != Circuit.CLUTCH)
                .map(tree -> at(tree).plus(-20, 0))
                .toList();
        if (rods.size() == 2) {
            Point front = rods.getFirst();
            Point rear = rods.getLast();
            Point middle = new Point(front.x(), (front.y() + rear.y()) / 2);
            shapes.add(new Line(front.plus(0, 2), rear.plus(0, -2), Stroke.OUTLINE));
            rods.forEach(rod -> shapes.add(new Circle(rod, 1, Stroke.OUTLINE)));
            shapes.add(new Circle(middle, 1.6, Stroke.OUTLINE));
            shapes.add(new Line(middle.plus(-12, 0), middle.plus(-1.6, 0), Stroke.OUTLINE));
            shapes.add(new Line(middle.plus(-3.6, 1), middle.plus(-1.6, 0), Stroke.OUTLINE));
            shapes.add(new Line(middle.plus(-3.6, -1), middle.plus(-1.6, 0), Stroke.OUTLINE));
            shapes.add(Text.of(middle.plus(-7, 1.6), WORDS, "pedal").aligned(Align.CENTER));
        }
    }
}
