/** Resolved build to numbers: the one room where laws meet the build. Start at {@link org.brakewright.analysis.Analyse}. */
@NullMarked
package org.brakewright.analysis;

import org.jspecify.annotations.NullMarked;
