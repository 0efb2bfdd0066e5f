/** Structures of beams, thin shells, springs and rigid links: model, direct solve, forces and stresses. */
@NullMarked
package org.brakewright.kernel.structure;

import org.jspecify.annotations.NullMarked;
