package org.brakewright.findings.rules;

import java.util.List;
import org.brakewright.findings.Facts;
import org.brakewright.model.resolved.ResolvedLines;

/** Where in the build file tubes, hoses and parts stand. */
final class LinePaths {
    private LinePaths() {}

    /** Path of a tube or hose. */
    static String line(Facts facts, String name) {
        ResolvedLines lines = facts.build().lines().orElseThrow();
        int tube = lines.tubes().stream().map(ResolvedLines.Tube::name).toList().indexOf(name);
        return tube >= 0
                ? "plumbing.tubes[" + tube + "]"
                : "plumbing.hoses["
                        + place(
                                lines.hoses().stream()
                                        .map(ResolvedLines.Hose::name)
                                        .toList(),
                                name) + "]";
    }

    /** Path of a tube, hose or part. */
    static String any(Facts facts, String name) {
        int part = facts.build().lines().orElseThrow().parts().stream()
                .map(ResolvedLines.Part::name)
                .toList()
                .indexOf(name);
        return part >= 0 ? "plumbing.parts[" + part + "]" : line(facts, name);
    }

    private static int place(List<String> names, String name) {
        return names.indexOf(name);
    }
}
