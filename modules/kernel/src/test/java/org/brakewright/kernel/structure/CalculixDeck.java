package org.brakewright.kernel.structure;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * The mount for CalculiX: shells of eight nodes and beams of three, which it expands into solids of twenty nodes. Another
 * element, another order and another way of joining than ours.
 */
final class CalculixDeck {
    private static final int ACROSS = 60;
    private static final int UP = 40;
    private static final int PARTS = 32;

    private final StringBuilder nodes = new StringBuilder("*NODE,NSET=ALL\n");
    private final StringBuilder clamped = new StringBuilder();
    private final Map<String, StringBuilder> elements = new HashMap<>();
    private int lastNode;
    private int lastElement;
    private int pad;

    private final Map<Integer, double[]> places = new HashMap<>();
    private final Map<Integer, double[]> stresses = new HashMap<>();
    private Vector3 padShift = Vector3.ZERO;

    /** Writes the deck into a folder, runs the program there and reads what it found. */
    static CalculixDeck run(Path folder) {
        CalculixDeck deck = new CalculixDeck();
        try {
            deck.write(folder.resolve("mount.inp"));
            deck.solve(folder);
            deck.readShift(Files.readAllLines(folder.resolve("mount.dat")));
            deck.readStresses(Files.readAllLines(folder.resolve("mount.frd")));
        } catch (IOException e) {
            throw new UncheckedIOException("CalculiX (ccx, package calculix-ccx) could not be run", e);
        }
        return deck;
    }

    /** How the pad moves, m. */
    Vector3 padShift() {
        return padShift;
    }

    /** Von Mises stress (Pa) on the panel's face toward the pad. */
    double stress(double x, double y) {
        for (Map.Entry<Integer, double[]> place : places.entrySet()) {
            double[] at = place.getValue();
            double[] s = stresses.get(place.getKey());
            boolean here = Math.abs(at[0] - x) < 1e-5
                    && Math.abs(at[1] - y) < 1e-5
                    && Math.abs(at[2] - OutsideMount.PANEL / 2) < 1e-5;
            if (here && s != null) {
                double normal = (Math.pow(s[0] - s[1], 2) + Math.pow(s[1] - s[2], 2) + Math.pow(s[2] - s[0], 2)) / 2;
                return Math.sqrt(normal + 3 * (s[3] * s[3] + s[4] * s[4] + s[5] * s[5]));
            }
        }
        throw new IllegalArgumentException("no stress at " + x + ", " + y);
    }

    private void write(Path file) throws IOException {
        panel();
        OutsideMount.BARS.forEach(this::bar);
        StringBuilder deck = new StringBuilder(nodes);
        elements.forEach((kind, lines) -> deck.append("*ELEMENT,TYPE=")
                .append(kind.startsWith("BAR") ? "B32" : "S8R")
                .append(",ELSET=")
                .append(kind)
                .append('\n')
                .append(lines));
        material(deck, "STEEL", OutsideMount.YOUNG);
        material(deck, "STIFF", OutsideMount.BRACKET_YOUNG);
        shell(deck, "PANEL", "STEEL");
        shell(deck, "BRACKET", "STIFF");
        beam(deck, "BARARM", OutsideMount.ARM);
        beam(deck, "BARSTRINGER", OutsideMount.STRINGER);
        deck.append("*NSET,NSET=PAD\n%d\n*BOUNDARY\n%s".formatted(pad, clamped));
        deck.append("*STEP\n*STATIC\n*CLOAD\n");
        deck.append("%d,1,%s\n%d,3,%s\n".formatted(pad, OutsideMount.PUSH.x(), pad, OutsideMount.PUSH.z()));
        deck.append("*NODE PRINT,NSET=PAD\nU\n*EL FILE,OUTPUT=3D\nS\n*END STEP\n");
        Files.writeString(file, deck);
    }

    private static void material(StringBuilder deck, String name, double young) {
        deck.append("*MATERIAL,NAME=%s\n*ELASTIC\n%s,%s\n".formatted(name, young, OutsideMount.POISSON));
    }

    private static void shell(StringBuilder deck, String set, String material) {
        deck.append("*SHELL SECTION,ELSET=%s,MATERIAL=%s\n%s\n".formatted(set, material, OutsideMount.PANEL));
    }

    private static void beam(StringBuilder deck, String set, double side) {
        deck.append("*BEAM SECTION,ELSET=%s,MATERIAL=STEEL,SECTION=RECT\n%s,%s\n1.,0.,0.\n".formatted(set, side, side));
    }

    /** Half steps along the panel; the number of the node there. */
    private static int number(int i, int j) {
        return j * (2 * ACROSS + 1) + i + 1;
    }

    private void panel() {
        for (int j = 0; j <= 2 * UP; j++) {
            for (int i = 0; i <= 2 * ACROSS; i++) {
                if (i % 2 == 0 || j % 2 == 0) {
                    node(number(i, j), OutsideMount.WIDTH * i / 2 / ACROSS, OutsideMount.HEIGHT * j / 2 / UP, 0);
                    if (i == 0 || i == 2 * ACROSS || j == 0 || j == 2 * UP) {
                        clamped.append("%d,1,6\n".formatted(number(i, j)));
                    }
                }
            }
        }
        lastNode = number(2 * ACROSS, 2 * UP);
        for (int j = 0; j < 2 * UP; j += 2) {
            for (int i = 0; i < 2 * ACROSS; i += 2) {
                double x = OutsideMount.WIDTH * (i + 1) / 2 / ACROSS;
                double y = OutsideMount.HEIGHT * (j + 1) / 2 / UP;
                element(
                        OutsideMount.stiff(x, y) ? "BRACKET" : "PANEL",
                        number(i, j),
                        number(i + 2, j),
                        number(i + 2, j + 2),
                        number(i, j + 2),
                        number(i + 1, j),
                        number(i + 2, j + 1),
                        number(i + 1, j + 2),
                        number(i, j + 1));
            }
        }
    }

    private void bar(OutsideMount.Bar bar) {
        boolean arm = bar.side() == OutsideMount.ARM;
        int before = bar.goesOn() ? lastNode : onPanel(bar.from());
        for (int part = 0; part < PARTS; part++) {
            int middle = along(bar, (part + 0.5) / PARTS);
            int end = along(bar, (part + 1.0) / PARTS);
            element(arm ? "BARARM" : "BARSTRINGER", before, middle, end);
            before = end;
        }
        if (bar.goesOn()) {
            pad = before;
        } else if (!arm) {
            clamped.append("%d,1,6\n".formatted(before));
        }
    }

    private static int onPanel(Vector3 place) {
        return number((int) Math.rint(2 * ACROSS * place.x() / OutsideMount.WIDTH), (int)
                Math.rint(2 * UP * place.y() / OutsideMount.HEIGHT));
    }

    private int along(OutsideMount.Bar bar, double share) {
        Vector3 at = bar.from().plus(bar.to().minus(bar.from()).times(share));
        node(++lastNode, at.x(), at.y(), at.z());
        return lastNode;
    }

    private void node(int number, double x, double y, double z) {
        nodes.append(String.format(Locale.ROOT, "%d,%.9f,%.9f,%.9f\n", number, x, y, z));
    }

    private void element(String kind, int... of) {
        StringBuilder line = elements.computeIfAbsent(kind, none -> new StringBuilder());
        line.append(++lastElement);
        for (int node : of) {
            line.append(',').append(node);
        }
        line.append('\n');
    }

    private void solve(Path folder) throws IOException {
        Process process = new ProcessBuilder("ccx", "-i", "mount")
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("mount.log").toFile())
                .start();
        try {
            if (!process.waitFor(2, TimeUnit.MINUTES) || process.exitValue() != 0) {
                process.destroyForcibly();
                throw new IOException("it ended badly: " + Files.readString(folder.resolve("mount.log")));
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted", e);
        }
    }

    private void readShift(List<String> lines) {
        for (String line : lines) {
            String[] words = line.strip().split("\\s+", -1);
            if (words.length == 4 && words[0].equals(String.valueOf(pad))) {
                padShift = new Vector3(
                        Double.parseDouble(words[1]), Double.parseDouble(words[2]), Double.parseDouble(words[3]));
            }
        }
    }

    /** Blocks of the result file: nodes under "2C", stresses under "STRESS"; twelve columns a number. */
    private void readStresses(List<String> lines) {
        Map<Integer, double[]> block = null;
        for (String line : lines) {
            if (line.startsWith("    2C")) {
                block = places;
            } else if (line.startsWith(" -4  STRESS")) {
                block = stresses;
            } else if (line.startsWith(" -3") || line.startsWith(" -4")) {
                block = null;
            } else if (block != null && line.startsWith(" -1")) {
                block.put(Integer.parseInt(line.substring(3, 13).strip()), numbers(line.substring(13)));
            }
        }
    }

    private static double[] numbers(String columns) {
        List<Double> numbers = new ArrayList<>();
        for (int at = 0; at + 12 <= columns.length(); at += 12) {
            numbers.add(Double.parseDouble(columns.substring(at, at + 12).strip()));
        }
        return numbers.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
