/** Tubes, hoses and joints: how they are bent, whether they fit, hold, keep clear and can be bled. */
@NullMarked
package org.brakewright.analysis.lines;

import org.jspecify.annotations.NullMarked;
