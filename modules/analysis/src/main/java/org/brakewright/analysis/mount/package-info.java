/** The structure that carries the pedal: how far it gives way, and what its parts bear. */
@NullMarked
package org.brakewright.analysis.mount;

import org.jspecify.annotations.NullMarked;
