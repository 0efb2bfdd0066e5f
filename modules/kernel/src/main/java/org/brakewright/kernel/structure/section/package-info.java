/** Sections of bars by their dimensions: area, second moments, torsion, extreme fibres. */
@NullMarked
package org.brakewright.kernel.structure.section;

import org.jspecify.annotations.NullMarked;
