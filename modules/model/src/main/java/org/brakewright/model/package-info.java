/** The build as records: as written by the builder, and as resolved for computing. Start at {@link org.brakewright.model.Build}. */
@NullMarked
package org.brakewright.model;

import org.jspecify.annotations.NullMarked;
