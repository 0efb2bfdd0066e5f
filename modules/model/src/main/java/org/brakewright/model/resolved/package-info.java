/** The build complete and in SI, ready for computing. Start at {@link org.brakewright.model.resolved.ResolvedBuild}. */
@NullMarked
package org.brakewright.model.resolved;

import org.jspecify.annotations.NullMarked;
