/** What friction heat works on, and what the car is put through. */
@NullMarked
package org.brakewright.model.heat;

import org.jspecify.annotations.NullMarked;
