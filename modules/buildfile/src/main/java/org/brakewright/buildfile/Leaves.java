package org.brakewright.buildfile;

import java.util.HashMap;
import java.util.Map;

/** All single values of an outline by their key paths: what a file says, whatever its layout. */
final class Leaves {
    private Leaves() {}

    static Map<String, String> of(Node root) {
        Map<String, String> leaves = new HashMap<>();
        collect(root, "", leaves);
        return leaves;
    }

    /** The values that stay when a key or an entry of a list goes; later entries of that list move up. */
    static Map<String, String> without(Map<String, String> leaves, String path) {
        boolean item = path.endsWith("]");
        String list = item ? Paths.parent(path) : "";
        int index = item ? Integer.parseInt(path.substring(list.length() + 1, path.length() - 1)) : 0;
        Map<String, String> left = new HashMap<>();
        leaves.forEach((leaf, value) -> {
            if (!within(leaf, path)) {
                left.put(item && leaf.startsWith(list + "[") ? movedUp(leaf, list.length() + 1, index) : leaf, value);
            }
        });
        return left;
    }

    private static boolean within(String leaf, String path) {
        return leaf.equals(path) || leaf.startsWith(path + ".") || leaf.startsWith(path + "[");
    }

    private static String movedUp(String leaf, int at, int removed) {
        int end = leaf.indexOf(']', at);
        int index = Integer.parseInt(leaf.substring(at, end));
        return index < removed ? leaf : leaf.substring(0, at) + (index - 1) + leaf.substring(end);
    }

    private static void collect(Node node, String path, Map<String, String> leaves) {
        switch (node) {
            case Node.Text text -> {
                if (!text.absent()) {
                    leaves.putIfAbsent(path, text.value());
                }
            }
            case Node.Section section ->
                section.entries()
                        .forEach(entry -> collect(
                                entry.value(), Paths.child(path, entry.key().value()), leaves));
            case Node.Items items -> {
                for (int i = 0; i < items.items().size(); i++) {
                    collect(items.items().get(i), Paths.item(path, i), leaves);
                }
            }
            case Node.Unread _ -> {}
        }
    }
}
