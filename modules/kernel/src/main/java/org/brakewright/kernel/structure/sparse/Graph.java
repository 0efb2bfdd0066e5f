package org.brakewright.kernel.structure.sparse;

import java.util.Arrays;

/** Which vertices touch which: the neighbours of each vertex, rising and without repeats. */
public final class Graph {
    private final int[][] neighbours;

    private Graph(int[][] neighbours) {
        this.neighbours = neighbours;
    }

    /**
     * The graph in which the vertices of one clique all touch one another, as the nodes of one element do.
     *
     * @param vertices how many there are
     * @param cliques each a list of vertices; a vertex may repeat
     */
    public static Graph ofCliques(int vertices, int[][] cliques) {
        int[] room = new int[vertices];
        for (int[] clique : cliques) {
            for (int vertex : clique) {
                room[vertex] += clique.length - 1;
            }
        }
        int[][] lists = new int[vertices][];
        Arrays.setAll(lists, vertex -> new int[room[vertex]]);
        int[] filled = new int[vertices];
        for (int[] clique : cliques) {
            join(clique, lists, filled);
        }
        for (int vertex = 0; vertex < vertices; vertex++) {
            lists[vertex] = distinct(lists[vertex], filled[vertex]);
        }
        return new Graph(lists);
    }

    private static void join(int[] clique, int[][] lists, int[] filled) {
        for (int one : clique) {
            for (int other : clique) {
                if (one != other) {
                    lists[one][filled[one]++] = other;
                }
            }
        }
    }

    private static int[] distinct(int[] list, int length) {
        Arrays.sort(list, 0, length);
        int kept = 0;
        for (int i = 0; i < length; i++) {
            if (i == 0 || list[i] != list[i - 1]) {
                list[kept++] = list[i];
            }
        }
        return Arrays.copyOf(list, kept);
    }

    public int vertices() {
        return neighbours.length;
    }

    int[] neighbours(int vertex) {
        return neighbours[vertex].clone();
    }
}
