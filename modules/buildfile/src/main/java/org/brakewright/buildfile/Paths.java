package org.brakewright.buildfile;

/** Key paths such as {@code car.load_cases[0].cg_height}; the empty path is the whole file. */
final class Paths {
    private Paths() {}

    static String child(String path, String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    static String item(String path, int index) {
        return path + "[" + index + "]";
    }

    /** The path one step further out. */
    static String parent(String path) {
        int cut = Math.max(path.lastIndexOf('.'), path.lastIndexOf('['));
        return cut < 0 ? "" : path.substring(0, cut);
    }
}
