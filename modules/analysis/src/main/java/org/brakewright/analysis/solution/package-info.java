/** How well the coupled solution closes: every push that is told, put back into its equations. */
@NullMarked
package org.brakewright.analysis.solution;

import org.jspecify.annotations.NullMarked;
