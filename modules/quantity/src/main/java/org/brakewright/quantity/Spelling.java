package org.brakewright.quantity;

/** How many slips of the finger lie between two words. */
final class Spelling {
    private Spelling() {}

    /**
     * Letters to add, drop, change or swap with their neighbour to turn one word into the other (optimal string
     * alignment distance).
     */
    static int distance(String from, String to) {
        int[][] cost = new int[from.length() + 1][to.length() + 1];
        for (int i = 0; i <= from.length(); i++) {
            for (int j = 0; j <= to.length(); j++) {
                cost[i][j] = i == 0 || j == 0 ? i + j : step(cost, from, to, i, j);
            }
        }
        return cost[from.length()][to.length()];
    }

    private static int step(int[][] cost, String from, String to, int i, int j) {
        int change = from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1;
        int best = Math.min(cost[i - 1][j - 1] + change, 1 + Math.min(cost[i - 1][j], cost[i][j - 1]));
        return swapped(from, to, i, j) ? Math.min(best, cost[i - 2][j - 2] + 1) : best;
    }

    private static boolean swapped(String from, String to, int i, int j) {
        return i > 1 && j > 1 && from.charAt(i - 1) == to.charAt(j - 2) && from.charAt(i - 2) == to.charAt(j - 1);
    }
}
