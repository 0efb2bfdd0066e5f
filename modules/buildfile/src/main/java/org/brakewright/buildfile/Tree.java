package org.brakewright.buildfile;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the parser made of a text.
 *
 * @param root the outermost piece; null when the file is empty or is no YAML
 * @param faults everything about the YAML itself that is refused
 */
record Tree(@Nullable Node root, List<LocatedProblem> faults) {}
