/** What somebody has looked at on the car. */
@NullMarked
package org.brakewright.model.proof;

import org.jspecify.annotations.NullMarked;
