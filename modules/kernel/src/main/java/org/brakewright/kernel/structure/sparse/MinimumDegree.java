package org.brakewright.kernel.structure.sparse;

import java.util.Arrays;
import java.util.TreeSet;

/**
 * The order in which the unknowns of a sparse symmetric matrix are eliminated so that few new entries arise: at each
 * step the vertex with the fewest neighbours, ties to the lowest number.
 *
 * <p>Maintainer's notes. Eliminated vertices are kept as cliques (the quotient graph); a clique is absorbed as soon as
 * a later one holds it. The count of neighbours is the upper bound of the approximate method [1]: own neighbours, plus
 * the new clique, plus what each other clique holds outside the new one. No supervertices: the caller hands over nodes,
 * not freedoms, which is most of their gain.
 *
 * <p>[1] P. Amestoy, T. Davis, I. Duff, An approximate minimum degree ordering algorithm, SIAM J. Matrix Anal. 17
 * (1996).
 */
public final class MinimumDegree {
    private final int[][] near;
    private final int[][] cliquesOf;
    private final int[][] members;
    private final int[] degree;
    private final int[] mark;
    private final int[] outside;
    private final int[] outsideStamp;
    private final TreeSet<Long> queue = new TreeSet<>();
    private int stamp;

    private MinimumDegree(Graph graph) {
        int n = graph.vertices();
        near = new int[n][];
        cliquesOf = new int[n][];
        members = new int[n][];
        degree = new int[n];
        mark = new int[n];
        outside = new int[n];
        outsideStamp = new int[n];
        for (int vertex = 0; vertex < n; vertex++) {
            near[vertex] = graph.neighbours(vertex);
            cliquesOf[vertex] = new int[0];
            members[vertex] = new int[0];
            degree[vertex] = near[vertex].length;
            queue.add(key(vertex));
        }
    }

    /** The vertices in the order of elimination. */
    public static int[] order(Graph graph) {
        MinimumDegree work = new MinimumDegree(graph);
        int[] order = new int[graph.vertices()];
        for (int step = 0; step < order.length; step++) {
            order[step] = work.eliminateNext();
        }
        return order;
    }

    private long key(int vertex) {
        return ((long) degree[vertex] << 32) | vertex;
    }

    private int eliminateNext() {
        int pivot = (int) (queue.removeFirst() & 0xFFFFFFFFL);
        int[] clique = cliqueOf(pivot);
        members[pivot] = clique;
        countOutside(clique);
        for (int vertex : clique) {
            update(vertex, pivot, clique.length);
        }
        for (int absorbed : cliquesOf[pivot]) {
            members[absorbed] = new int[0];
        }
        near[pivot] = new int[0];
        cliquesOf[pivot] = new int[0];
        return pivot;
    }

    /** All that the pivot touches; leaves them, the pivot and the pivot's cliques marked with the new stamp. */
    private int[] cliqueOf(int pivot) {
        stamp++;
        mark[pivot] = stamp;
        int[] found = new int[near.length - 1];
        int count = gather(near[pivot], found, 0);
        for (int clique : cliquesOf[pivot]) {
            count = gather(members[clique], found, count);
        }
        for (int clique : cliquesOf[pivot]) {
            mark[clique] = stamp;
        }
        return Arrays.copyOf(found, count);
    }

    private int gather(int[] vertices, int[] found, int start) {
        int count = start;
        for (int vertex : vertices) {
            if (mark[vertex] != stamp) {
                mark[vertex] = stamp;
                found[count++] = vertex;
            }
        }
        return count;
    }

    /** For every clique that the new one meets: how many of its members lie outside the new one. */
    private void countOutside(int[] clique) {
        for (int vertex : clique) {
            for (int other : cliquesOf[vertex]) {
                if (outsideStamp[other] != stamp) {
                    outsideStamp[other] = stamp;
                    outside[other] = members[other].length;
                }
                outside[other]--;
            }
        }
    }

    private void update(int vertex, int pivot, int size) {
        queue.remove(key(vertex));
        near[vertex] = unmarked(near[vertex]);
        int[] kept = cliquesLeft(cliquesOf[vertex]);
        int total = near[vertex].length + size - 1;
        for (int clique : kept) {
            total += outside[clique];
        }
        cliquesOf[vertex] = Arrays.copyOf(kept, kept.length + 1);
        cliquesOf[vertex][kept.length] = pivot;
        degree[vertex] = Math.min(total, near.length - 1);
        queue.add(key(vertex));
    }

    private int[] unmarked(int[] list) {
        int[] kept = new int[list.length];
        int count = 0;
        for (int entry : list) {
            if (mark[entry] != stamp) {
                kept[count++] = entry;
            }
        }
        return Arrays.copyOf(kept, count);
    }

    /** Drops the cliques that the new one has absorbed, and those that lie inside it. */
    private int[] cliquesLeft(int[] list) {
        int[] kept = new int[list.length];
        int count = 0;
        for (int clique : list) {
            if (mark[clique] != stamp && outside[clique] > 0) {
                kept[count++] = clique;
            }
        }
        return Arrays.copyOf(kept, count);
    }
}
