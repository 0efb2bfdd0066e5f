/** The setting with the largest margin over all cases, and the same car with other layouts. */
@NullMarked
package org.brakewright.analysis.setting;

import org.jspecify.annotations.NullMarked;
