/** How many times a detail stands a stress range before it cracks, and how far such lives spread. */
@NullMarked
package org.brakewright.kernel.fatigue;

import org.jspecify.annotations.NullMarked;
