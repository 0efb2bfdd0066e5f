/** The clutch: release from pedal to cover, new and worn, and what it carries. */
@NullMarked
package org.brakewright.analysis.clutch;

import org.jspecify.annotations.NullMarked;
